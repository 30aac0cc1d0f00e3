/** What a person sees and feels at a crank position, in plain words. */
import type { CrankSigns, NeighbourStep, PlannedStop } from '../calc/valve-setting/index.js';
import type { Engine, ValveKind } from '../engine/index.js';

const list = (numbers: readonly number[]): string =>
  numbers.length < 2 ? numbers.join('') : `${numbers.slice(0, -1).join(', ')} and ${numbers.at(-1)}`;
const cylinders = (numbers: readonly number[]): string =>
  `${numbers.length === 1 ? 'cylinder' : 'cylinders'} ${list(numbers)}`;

/** Signs by which the position is told from its double one turn later. */
export function signWords(signs: CrankSigns): readonly string[] {
  const words: string[] = [];
  for (const cylinder of signs.firing)
    words.push(
      `Cylinder ${cylinder} is at its firing dead centre: piston up, both its rockers free. A thumb on the plug hole felt pressure on the way up.`,
    );
  if (signs.rocking.length > 0)
    words.push(
      `The valves of ${cylinders(signs.rocking)} rock: move the crank a little to and fro and one closes as the other opens. If another cylinder rocks you are one turn out: turn once more.`,
    );
  if (signs.exhaustDeadCentre.length > 0)
    words.push(
      `${cylinders(signs.exhaustDeadCentre)}: piston up at the end of the exhaust stroke; this cam has no overlap there, so nothing rocks.`,
    );
  const free = signs.bothFree.filter((cylinder) => !signs.firing.includes(cylinder));
  if (free.length > 0) words.push(`Both rockers are free on ${cylinders(free)}.`);
  const held = signs.heldOpen.map((valve) => `${valve.cylinder} ${valve.valve}`);
  if (held.length > 0) words.push(`The cam holds these open, leave them alone: ${held.join(', ')}.`);
  return words;
}

const markWords: Readonly<Record<PlannedStop['mark'], string>> = {
  'dead-centre': 'at a dead-centre mark',
  'quarter-turn': 'a quarter-turn mark from the first cylinder’s dead centre',
  'damper-degrees': 'by the degree scale of the damper',
  given: 'the stop that you gave',
};
/** A turn of the crank in words. */
export function amount(degreesTurned: number): string {
  const parts = [
    [360, 'one whole turn'],
    [180, 'half a turn'],
    [90, 'a quarter turn'],
    [720, 'two whole turns'],
  ] as const;
  const named = parts.find(([size]) => size === degreesTurned);
  return named === undefined ? `${degreesTurned}°` : `${degreesTurned}° (${named[1]})`;
}

/** How to get to a stop: always forward, in the running direction. */
export function turnWords(engine: Engine, stop: PlannedStop, place: number): string {
  const first = engine.layout.firingOrder[0];
  const sense = `${engine.layout.rotation} seen from the front`;
  if (place === 0 && stop.turnDegrees === 0)
    return `Bring cylinder ${first} to its firing dead centre, turning only forward (${sense}).`;
  const from = place === 0 ? `from the firing dead centre of cylinder ${first}` : 'from the last stop';
  return `Turn ${amount(stop.turnDegrees)} forward ${from} (${sense}), ${markWords[stop.mark]}. Past the mark? Go on two turns, never back.`;
}

/** Which valve of the same cylinder is watched, and what it does when the other may be set. Common practice, no source. */
export const neighbourOf = (kind: ValveKind): Pick<NeighbourStep, 'watch' | 'until'> =>
  kind === 'intake' ? { watch: 'exhaust', until: 'begins-to-open' } : { watch: 'intake', until: 'nearly-closed' };

/** One step of the per-cylinder method. */
export function neighbourWords(
  step: Pick<NeighbourStep, 'watch' | 'until' | 'cylinder' | 'valve' | 'permitted'>,
): string {
  const watch = `the ${step.watch} valve of cylinder ${step.cylinder}`;
  const until =
    step.until === 'begins-to-open'
      ? `${watch} just begins to open`
      : `${watch} has gone past full lift and is nearly closed`;
  const word = step.permitted
    ? `Then set its ${step.valve} valve`
    : `Its ${step.valve} valve may not be set there with this cam`;
  return `Turn forward until ${until}. ${word}.`;
}
