/** How to bring the crank to a stop from where it stands now, in words and as a drawing; always forward. */
import { type Shown, stopFigure } from '../drawing/index.js';
import { degrees } from '../quantity/index.js';
import type { Bench } from './bench.js';
import { amount } from './crank-words.js';
import { forwardTurn } from './valve-task.js';
import type { CrankApproach, CrankStopView } from './views.js';

const NEVER_BACK = 'Past the mark? Go on two turns, never back.';

function words(bench: Bench, stop: CrankStopView, from: number | undefined, turn: number): string {
  const { firingOrder, rotation } = bench.engine.layout;
  const sense = `${rotation} seen from the front`;
  const firing = `the firing dead centre of cylinder ${firingOrder[0]}`;
  if (from === undefined) {
    const past = stop.crankDegrees === 0 ? '' : `, then ${amount(stop.crankDegrees)} further`;
    return `Bring the crank to ${firing}${past}, turning only forward (${sense}).`;
  }
  if (turn === 0) return 'The crank is here already. See that it still is.';
  return `Turn ${amount(turn)} forward from where the crank stands (${sense}). ${NEVER_BACK}`;
}

/** The figure to be read from the far side of the block. */
function large(
  bench: Bench,
  stop: CrankStopView,
  from: number | undefined,
  turn: number,
): Pick<CrankApproach, 'number' | 'beside'> {
  if (turn > 0) return { number: `${turn}°`, beside: from === undefined ? 'past firing dead centre' : 'forward' };
  if (from !== undefined) return { number: '0°', beside: 'it stands there already' };
  return {
    number: `${stop.crankDegrees}°`,
    beside: `firing dead centre, cylinder ${bench.engine.layout.firingOrder[0]}`,
  };
}

/**
 * The way to a stop. `from` in degrees from the first cylinder's firing dead centre, absent where nobody knows where the crank
 * stands: the way is then told from that dead centre. `twoTurns` asks for the two whole turns before valves are looked at again.
 */
export function crankApproach(
  bench: Bench,
  stop: CrankStopView,
  from: number | undefined,
  twoTurns: boolean,
  shown: Shown = {},
): CrankApproach {
  const least = forwardTurn(from ?? 0, stop.crankDegrees);
  const turnDegrees = twoTurns ? (from === undefined ? 720 : least + 720) : least;
  const previous = degrees(stop.crankAngle / degrees(1) - turnDegrees);
  const known = from !== undefined;
  return {
    words: twoTurns
      ? 'Turn the crank two whole turns forward by hand, and on to this stop; stop at once if anything catches.'
      : words(bench, stop, from, turnDegrees),
    ...large(bench, stop, twoTurns ? stop.crankDegrees : from, turnDegrees),
    turnDegrees,
    from: previous,
    to: stop.crankAngle,
    figure: stopFigure(
      bench.engine,
      known ? { crankAngle: stop.crankAngle, previous } : { crankAngle: stop.crankAngle },
      shown,
    ),
  };
}
