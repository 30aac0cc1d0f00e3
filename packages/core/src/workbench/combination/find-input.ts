/** From the form of a search to what the finder takes; the first thing that cannot be read is said in one line. */

import {
  type CutOffered,
  type FinderInput,
  fixedFrom,
  type GasketOffered,
  type Offer,
  type PistonOffered,
  type Values,
  type Wanted,
  wantedFrom,
} from '../../assess/combination/finder/index.js';
import { figure } from '../../assess/index.js';
import { done, type Outcome, refused } from '../../quantity/index.js';
import type { ShownIn } from '../measure-views.js';
import { type CutForm, type FindForm, type PistonForm, type RangeForm, stockGaskets } from './find-form.js';
import { pistonOffered, pistonsOfStock } from './stock-pistons.js';
import type { Tried } from './tried.js';
import { typedFigure } from './typed-figure.js';

/** Combinations kept of each ranking. */
const KEPT = 5;

/** Carries the first fault out of the reading of many fields. */
class NotReadable extends Error {}

/** The search as data for a worker. What cannot be computed for want of a figure is left out of it, and the answer says so. */
export function findInput(tried: Tried, form: FindForm, shownIn: ShownIn): Outcome<FinderInput, string> {
  try {
    const offer = offerOf(tried, form, shownIn);
    if (Object.keys(offer).length === 0) return refused('Open at least one choice: a gasket, a cut, a piston.');
    const wanted = wantedOf(tried, form, shownIn);
    if (Object.keys(wanted).length === 0)
      return refused('Say what must hold: a ratio or quench wanted, a least valve room.');
    return done({ fixed: fixedFrom(tried), offer, wanted, keep: KEPT, lacking: 'leave-out' });
  } catch (fault) {
    if (fault instanceof NotReadable) return refused(fault.message);
    throw fault;
  }
}

function offerOf(tried: Tried, form: FindForm, shownIn: ShownIn): Offer {
  const read = reader(shownIn);
  return {
    ...(form.gaskets.on && { gaskets: { options: gasketsOf(tried, form, read) } }),
    ...(form.pistons.on && { pistons: pistonsOf(tried, form, read) }),
    ...(form.chambers.on && { chambers: rangeOf('chamber-volume', form.chambers, read) }),
    ...(form.deckCut.on && { deckCut: cutOf('deck-cut', form.deckCut, read) }),
    ...(form.headCut.on && { headCut: cutOf('head-cut', form.headCut, read) }),
    ...(form.camAdvance.on && { camAdvance: rangeOf('cam-advance', form.camAdvance, read) }),
    ...(form.rockerRatio.on && {
      rockerRatio: { values: listOf('rocker-ratio', form.rockerRatio.values, read).map((value) => ({ value })) },
    }),
    ...(form.pushrods.on && { pushrods: rangeOf('pushrod-length', form.pushrods, read) }),
  };
}

type Read = (key: string, text: string, what: string) => number;
/** Reads a field as the figure that it stands for. */
const reader =
  (shownIn: ShownIn): Read =>
  (key, text, what) => {
    const typed = typedFigure(key, text, shownIn);
    if (!typed.ok) throw new NotReadable(`${what}: ${typed.fault}`);
    return typed.value.value;
  };

/** Several figures with a comma or semicolon between two of them. */
function listOf(key: string, text: string, read: Read): readonly number[] {
  const parts = text
    .split(/[;,]\s|;/)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  return parts.map((part) => read(key, part, key.replaceAll('-', ' ')));
}

function gasketsOf(tried: Tried, { gaskets }: FindForm, read: Read): readonly GasketOffered[] {
  const first = tried.engine.layout.cylinders[0]?.number;
  const own = figure(tried, 'gasket-bore', first) ?? figure(tried, 'bore', first);
  if (own === undefined) throw new NotReadable('head gasket: its bore is not known; state it first');
  const bore = own.u === undefined ? own.value : { value: own.value, u: own.u };
  const bought = stockGaskets(tried).flatMap((one): GasketOffered | readonly GasketOffered[] => {
    if (!gaskets.stock.includes(one.id)) return [];
    const { name, partNumber, thickness, count } = one;
    // What lies on the bench costs nothing more.
    const price = count === undefined ? one.price : 0;
    const words = partNumber === undefined ? name : `${name} ${partNumber}`;
    return [{ name: words, thickness, bore: one.bore ?? bore, ...(price !== undefined && { price }) }];
  });
  const others = listOf('gasket-thickness', gaskets.others, read).map((thickness) => ({ thickness, bore }));
  if (bought.length + others.length === 0)
    throw new NotReadable('head gasket: choose one, type a thickness, or close the choice');
  return [...bought, ...others];
}

function pistonsOf(tried: Tried, { pistons }: FindForm, read: Read): Offer['pistons'] & object {
  const bought = pistonsOfStock(tried).offered.filter(({ id }) => pistons.stock.includes(id));
  const options = [...bought.map(pistonOffered), ...pistons.rows.map((row) => pistonOf(row, read))];
  if (options.length === 0) throw new NotReadable('piston: choose one, type one, or close the choice');
  return { options, keep: pistons.keep };
}

function pistonOf({ name, height, crown, price }: PistonForm, read: Read): PistonOffered {
  return {
    ...(name.trim() !== '' && { name: name.trim() }),
    compressionHeight: read('compression-height', height, 'piston'),
    crownVolume: read('piston-volume', crown, 'piston'),
    ...priceOf(price, 'piston'),
  };
}

function rangeOf(key: string, { from, to, step, price }: RangeForm, read: Read): Values {
  const title = key.replaceAll('-', ' ');
  return {
    from: read(key, from, `${title}, from`),
    to: read(key, to, `${title}, to`),
    step: read(key, step, `${title}, step`),
    ...priceOf(price, title),
  };
}

function cutOf(
  key: string,
  { limit, step, price, each }: CutForm,
  read: Read,
): CutOffered & { readonly each?: boolean } {
  const title = key.replaceAll('-', ' ');
  return {
    limit: read(key, limit, `${title}, at most`),
    step: read(key, step, `${title}, step`),
    ...priceOf(price, title),
    ...(each && { each }),
  };
}

/** Nothing typed: the price is not known, which is not 0. */
function priceOf(text: string, what: string): { readonly price?: number } {
  if (text.trim() === '') return {};
  const price = Number(text.trim().replace(',', '.'));
  if (!Number.isFinite(price) || price < 0) throw new NotReadable(`${what}: a price is a number, 0 or more.`);
  return { price };
}

function wantedOf(tried: Tried, { waived, intakeShift }: FindForm, shownIn: ShownIn): Wanted {
  const shift = intakeShift.trim();
  const all: Wanted = {
    ...wantedFrom(tried),
    ...(shift !== '' && { intakeShift: reader(shownIn)('gasket-thickness', shift, 'intake face off its fit') }),
  };
  return Object.fromEntries(Object.entries(all).filter(([name]) => !waived.includes(name))) as Wanted;
}
