/** What "set this valve" means on this engine, with the working of the computed part. */
import {
  type Adjuster,
  lashPerTurn,
  plungerTravel,
  type ScrewPlace,
  turnsForTravel,
} from '../calc/valvetrain/index.js';
import type { Engine, LashFigures, ValveGear } from '../engine/index.js';
import { type Angle, degrees, formatQuantity, type Length, turns } from '../quantity/index.js';
import type { SettingRule } from './views.js';

const NOT_STATED = 'not stated in the sheet';

function isScrew(place: string): place is ScrewPlace {
  return place === 'stud-nut' || place === 'pushrod-end-screw' || place === 'valve-end-screw';
}

/** The adjuster as a lever with a thread, where the sheet gives pitch and ratio; undefined otherwise. */
export function adjusterOf(gear: ValveGear): Adjuster | undefined {
  const { place, pitch } = gear.adjuster;
  if (!isScrew(place) || pitch === undefined || gear.ratio === undefined) return undefined;
  return { place, pitch: pitch.value, ratio: gear.ratio.value };
}

const inInch = (length: Length) => formatQuantity('length', length, 'in', 4);
const inMm = (length: Length) => formatQuantity('length', length, 'mm', 2);
/** Both systems at once: builders read one, the sheet may print the other. */
export const bothLengths = (length: Length): string => `${inInch(length)} (${inMm(length)})`;
export const turnsText = (angle: Angle): string => `${Math.round((angle / turns(1)) * 100) / 100} turn`;

const screwNames: Readonly<Record<ScrewPlace, string>> = {
  'stud-nut': 'nut on the stud under the rocker’s pivot',
  'pushrod-end-screw': 'screw at the pushrod end',
  'valve-end-screw': 'screw at the valve end',
};

/** Plunger travel for turns past zero lash, a line each; empty when pitch, ratio or screw are unknown. */
export function preloadWorking(gear: ValveGear): readonly string[] {
  const adjuster = adjusterOf(gear);
  if (adjuster === undefined) return [];
  const factor = plungerTravel(adjuster, turns(1)) / adjuster.pitch;
  const quarter = [0.25, 0.5, 0.75, 1].map(
    (share) => `${share} turn past zero lash moves the plunger ${bothLengths(plungerTravel(adjuster, turns(share)))}`,
  );
  return [
    `One turn of the ${screwNames[adjuster.place]} advances ${bothLengths(adjuster.pitch)}; at ratio ${adjuster.ratio} the plunger moves ${Math.round(factor * 1000) / 1000} times that.`,
    ...quarter,
  ];
}

function preloadOf(gear: ValveGear): {
  readonly asked: string;
  readonly origin: string;
  readonly extra: readonly string[];
} {
  const { preload } = gear;
  const adjuster = adjusterOf(gear);
  const asked = preload?.turns;
  const window = preload?.plungerTravel;
  const extra: string[] = [];
  if (asked !== undefined && adjuster !== undefined)
    extra.push(
      `${asked.text} past zero lash is ${bothLengths(plungerTravel(adjuster, asked.value))} of plunger travel here.`,
    );
  if (window !== undefined && adjuster !== undefined) {
    const ends = [window.window.low, window.window.high].flatMap((end) =>
      end === undefined ? [] : [turnsText(turnsForTravel(adjuster, end))],
    );
    extra.push(`The asked travel ${window.text} is ${ends.join(' to ')} past zero lash here.`);
  }
  if (asked !== undefined) return { asked: `${asked.text} past zero lash`, origin: asked.from.text, extra };
  if (window !== undefined) return { asked: `plunger down ${window.text}`, origin: window.from.text, extra };
  return {
    asked: 'half a turn past zero lash is usual',
    origin: 'common practice, no source: the sheet gives no preload; the lifter maker’s figure decides',
    extra,
  };
}

function preloadRule(gear: ValveGear): SettingRule {
  const { asked, origin, extra } = preloadOf(gear);
  return {
    adjustment: 'preload',
    words:
      'Find zero lash first: turn the adjuster down while rolling and lifting the pushrod, until its up-and-down play is just gone. A lifter that has run must bleed down before you count turns.',
    working: [...extra, ...preloadWorking(gear)],
    origin,
    intake: asked,
    exhaust: asked,
  };
}

function lashText(figures: LashFigures | undefined): string {
  if (figures === undefined) return NOT_STATED;
  const cold = figures.cold === undefined ? [] : [`${figures.cold.text} cold`];
  const hot = figures.hot === undefined ? [] : [`${figures.hot.text} hot`];
  return [...cold, ...hot].join(', ') || NOT_STATED;
}

function lashOrigin(gear: ValveGear): string {
  const stated = [gear.lash?.intake, gear.lash?.exhaust]
    .flatMap((side) => [side?.cold, side?.hot])
    .filter((one) => one !== undefined);
  return [...new Set(stated.map((one) => one.from.text))].join('; ') || NOT_STATED;
}

function lashWorking(gear: ValveGear): readonly string[] {
  const adjuster = adjusterOf(gear);
  const onlyHot = gear.lash?.intake.cold === undefined && gear.lash?.intake.hot !== undefined;
  const turnsLine =
    adjuster === undefined
      ? []
      : [
          `One turn of the ${screwNames[adjuster.place]} changes the lash by ${bothLengths(lashPerTurn(adjuster))}; a sixth of a turn (one flat) by ${bothLengths((lashPerTurn(adjuster) / 6) as Length)}.`,
        ];
  const hotLine = onlyHot
    ? [
        'The sheet gives a hot figure only: a cold setting is a first one, to be checked once with the engine hot. What it should be cold is unknown here.',
      ]
    : [];
  return [
    ...turnsLine,
    'Tightening the locknut can move the setting; measure again after it. (common practice, no source)',
    ...hotLine,
  ];
}

function lashRule(gear: ValveGear): SettingRule {
  return {
    adjustment: 'lash',
    words:
      'Set the gap so that the feeler of the asked thickness slides with a light drag and the next thicker one does not go in.',
    working: lashWorking(gear),
    origin: lashOrigin(gear),
    intake: lashText(gear.lash?.intake),
    exhaust: lashText(gear.lash?.exhaust),
  };
}

function shimRule(gear: ValveGear): SettingRule {
  const { shims } = gear;
  const stock =
    shims === undefined
      ? 'The sheet names no row of shims.'
      : `Shims from ${shims.thinnest.text} to ${shims.thickest.text} in steps of ${shims.step.text}; between two sizes take the ${shims.rounding === 'nearest' ? 'nearest' : shims.rounding === 'next-thinner' ? 'next thinner' : 'next thicker'}.`;
  return {
    adjustment: 'shim',
    words:
      'Measure every gap and every shim first, then choose all shims together: a shim that comes out of one place may serve in another.',
    working: ['new shim = old shim + measured gap − wanted gap', stock],
    origin: lashOrigin(gear),
    intake: lashText(gear.lash?.intake),
    exhaust: lashText(gear.lash?.exhaust),
  };
}

const unknownRule: SettingRule = {
  adjustment: 'fixed',
  words: 'The sheet does not say how the valves are set.',
  working: [],
  origin: NOT_STATED,
  intake: NOT_STATED,
  exhaust: NOT_STATED,
};

function fixedRule(gear: ValveGear): SettingRule {
  return {
    adjustment: 'fixed',
    words:
      gear.adjustment === 'hydraulic'
        ? 'Nothing to set: the hydraulic adjuster takes up the gap. Tighten each rocker only while its valve is on the base circle.'
        : 'The sheet names no adjuster: check the gap against the sheet.',
    working: [],
    origin: 'the sheet',
    intake: lashText(gear.lash?.intake),
    exhaust: lashText(gear.lash?.exhaust),
  };
}

/** How the valves of this engine are set, what the sheet asks for, and the working of turns and travel. */
export function settingRule(engine: Engine): SettingRule {
  const gear = engine.valveGear;
  if (gear === undefined) return unknownRule;
  if (gear.adjuster.place === 'shim-over-bucket' || gear.adjuster.place === 'shim-under-bucket') return shimRule(gear);
  if (gear.adjuster.place === 'none') return fixedRule(gear);
  return gear.adjustment === 'hydraulic' ? preloadRule(gear) : lashRule(gear);
}

/** Degrees of a crank angle, rounded for showing. */
export const shownDegrees = (angle: Angle): number => Math.round((angle / degrees(1)) * 10) / 10;
