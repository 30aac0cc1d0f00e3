/** What one valve asks for: lead, the very large figure, unit, and where the figure comes from. */
import { turnsForTravel } from '../calc/valvetrain/index.js';
import type { Engine, LashFigures, ValveId, ValveKind, Window } from '../engine/index.js';
import { valveKey } from '../engine/index.js';
import { type Angle, type Length, turns, windowInUnit } from '../quantity/index.js';
import { numberAndUnit } from './act-words.js';
import { adjusterOf, settingRule } from './setting-rule.js';
import type { ShimsView, ValveAsk } from './views.js';

type Condition = 'cold' | 'hot';
const NOT_STATED = 'The sheet gives no figure for this: find it in the engine maker’s manual before you set anything.';

/** Conditions for which the sheet prints a gap, cold first; empty where it prints none. */
export function gapConditions(engine: Engine, kind: ValveKind): readonly Condition[] {
  const figures = engine.valveGear?.lash?.[kind];
  return (['cold', 'hot'] as const).filter((condition) => figures?.[condition] !== undefined);
}

/** The printed gap of one condition; undefined where the sheet has none. */
export const printedGap = (engine: Engine, kind: ValveKind, condition: Condition): LashFigures['cold'] =>
  engine.valveGear?.lash?.[kind][condition];

const middle = ({ low, high }: Window<Length>): Length | undefined =>
  low === undefined || high === undefined ? (low ?? high) : (((low + high) / 2) as Length);

/** Turns past zero lash that the sheet asks for, or that its window of plunger travel comes to on this engine. */
function askedTurns(engine: Engine): { readonly angle: Angle; readonly text: string } | undefined {
  const gear = engine.valveGear;
  const stated = gear?.preload?.turns;
  if (stated !== undefined) return { angle: stated.value, text: stated.text };
  const adjuster = gear && adjusterOf(gear);
  const travel = gear?.preload?.plungerTravel && middle(gear.preload.plungerTravel.window);
  if (adjuster === undefined || travel === undefined) return undefined;
  const angle = turnsForTravel(adjuster, travel);
  return { angle, text: `${inTurns(angle)} turn` };
}

const inTurns = (angle: Angle): number => Math.round((angle / turns(1)) * 1000) / 1000;
const USUAL = { angle: turns(0.5), text: '1/2 turn' };

function preloadAsk(engine: Engine): ValveAsk {
  const rule = settingRule(engine);
  const asked = askedTurns(engine);
  const { angle, text } = asked ?? USUAL;
  const { number, unit } = numberAndUnit(text);
  const travel = rule.working.find((line) => line.includes('plunger travel here'));
  return {
    adjustment: 'preload',
    lead: 'Down past zero lash',
    number,
    unit,
    note: [...(asked === undefined ? [`${rule.intake}.`] : []), ...(travel === undefined ? [] : [travel])].join(' '),
    origin: rule.origin,
    spoken: `turn down ${text}`,
    turns: inTurns(angle),
  };
}

function gapAsk(engine: Engine, valve: ValveId, condition: Condition): ValveAsk {
  const printed = printedGap(engine, valve.kind, condition);
  const { number, unit } = printed === undefined ? { number: '', unit: '' } : numberAndUnit(printed.text);
  return {
    adjustment: 'lash',
    lead: `Gap, engine ${condition}`,
    number,
    unit,
    note: printed === undefined ? NOT_STATED : '',
    origin: printed?.from.text ?? 'not stated in the sheet',
    spoken: printed === undefined ? '' : `gap ${number} ${unit}`,
  };
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

function shimAsk(engine: Engine, valve: ValveId, shims: ShimsView | undefined): ValveAsk {
  const choice = shims?.choices.find((one) => one.key === valveKey(valve));
  const { number, unit } = choice === undefined ? { number: '', unit: '' } : numberAndUnit(choice.shim);
  const none = 'No shim is chosen for this valve; the page of shims says why.';
  return {
    adjustment: 'shim',
    lead: 'Fit a shim of',
    number,
    unit,
    note: choice === undefined ? none : `${capital(choice.from)}. The gap should come to ${choice.gap}.`,
    origin: settingRule(engine).origin,
    spoken: choice === undefined ? '' : `shim ${choice.shim}`,
  };
}

/** The ask for one valve of this engine. `condition` counts for gaps only; `shims` carries the choice already made. */
export function valveAsk(engine: Engine, valve: ValveId, condition: Condition, shims?: ShimsView): ValveAsk {
  const { adjustment, words, origin } = settingRule(engine);
  switch (adjustment) {
    case 'preload':
      return preloadAsk(engine);
    case 'lash':
      return gapAsk(engine, valve, condition);
    case 'shim':
      return shimAsk(engine, valve, shims);
    case 'fixed':
      return {
        adjustment,
        lead: 'Tighten the rocker, valve on its base circle',
        number: '',
        unit: '',
        note: words,
        origin,
        spoken: 'tighten the rocker',
      };
  }
}

/** Unit and places in which a gap of this engine is read: as the sheet prints it, else millimetres to a hundredth. */
export function gapGauge(engine: Engine): { readonly unit: 'mm' | 'in'; readonly places: number } {
  const lash = engine.valveGear?.lash;
  const texts = [lash?.intake, lash?.exhaust].flatMap((side) => [side?.cold?.text, side?.hot?.text]);
  const inches = texts.some((text) => text !== undefined && numberAndUnit(text).unit === 'in');
  return inches ? { unit: 'in', places: 3 } : { unit: 'mm', places: 2 };
}

/** A window of lengths in one unit with the places that a gauge in that unit reads. */
export const gapWords = (window: Window<Length>, unit: 'mm' | 'in'): string =>
  windowInUnit('length', { ...window, unit, places: unit === 'mm' ? 2 : 3 }, unit).replace('..', ' to ');
