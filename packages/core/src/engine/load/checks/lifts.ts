import type { Engine } from '../../model.js';
import type { BuiltLimit } from '../build/limits.js';
import type { SheetReader } from '../reader.js';
import { middleOf } from './ranges.js';
import { textOf } from './row-words.js';

/** Lifts at the valve, printed as such or lobe lift by ratio; less the lash at the least. */
export function valveLifts(
  engine: Engine,
  limits: readonly BuiltLimit[],
): readonly { readonly least: number; readonly most: number }[] {
  const printed = sizes(limits, /valve.*\blift\b|\blift at the valve/);
  if (printed.length > 0) return printed.map((lift) => ({ least: lift, most: lift }));
  const { cam, valveGear } = engine;
  const direct = valveGear?.kind === 'overhead-bucket' ? 1 : undefined;
  const ratio = valveGear?.ratio?.value ?? direct ?? sizes(limits, /rocker ratio/, 'ratio')[0];
  if (ratio === undefined) return [];
  const card = [cam?.lobeLift?.intake?.value, cam?.lobeLift?.exhaust?.value].filter((each) => each !== undefined);
  const lobes = card.length > 0 ? card : sizes(limits, /lobe lift/);
  const lash = Math.max(
    0,
    ...[valveGear?.lash?.intake, valveGear?.lash?.exhaust].flatMap((each) => [
      each?.cold?.window.high ?? 0,
      each?.hot?.window.high ?? 0,
    ]),
  );
  return lobes.map((lobe) => ({ least: lobe * ratio - lash, most: lobe * ratio }));
}

function sizes(limits: readonly BuiltLimit[], words: RegExp, quantity = 'length'): readonly number[] {
  return limits
    .filter((each) => each.limit.quantity === quantity && words.test(textOf(each.limit)))
    .map(middleOf)
    .filter((each) => each !== undefined);
}

/** Highest lobe lift for its bore that is not questioned. From memory: lobes lift about a tenth of the bore. */
const HIGHEST_LOBE = 0.2;

/** A "lobe lift" of a third of the bore is the height of the whole cam. */
export function checkLobeLift(engine: Engine, limits: readonly BuiltLimit[], reader: SheetReader): void {
  const bore = engine.crankTrain.bore?.value;
  if (bore === undefined) return;
  for (const row of limits) {
    const lift = middleOf(row);
    if (!/lobe.*\blift\b/.test(textOf(row.limit)) || lift === undefined || lift <= HIGHEST_LOBE * bore) continue;
    const share = Math.round((100 * lift) / bore);
    const what = `${row.limit.whenNew?.text} is ${share} % of the bore: no lobe lifts so far; is it the height of the whole cam?`;
    reader.caution('lift-or-height', row.path, `${row.limit.part}, ${row.limit.what}: ${what}`);
  }
}
