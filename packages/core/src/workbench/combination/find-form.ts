/** What a person fills in for a search: which choices are open, between which ends, and which limits must hold. Texts, as typed. */
import { figure } from '../../assess/index.js';
import type { HeadGasketStock } from '../../engine/index.js';
import { fromUnit } from '../../quantity/index.js';
import type { ShownIn } from '../measure-views.js';
import { shownNumber, shownQuantity, shownWay } from './shown.js';
import { pistonsOfStock } from './stock-pistons.js';
import type { Tried } from './tried.js';

export interface RangeForm {
  readonly on: boolean;
  readonly from: string;
  readonly to: string;
  readonly step: string;
  readonly price: string;
}
export interface CutForm {
  readonly on: boolean;
  readonly limit: string;
  readonly step: string;
  readonly price: string;
  /** Every bank has a cut of its own. */
  readonly each: boolean;
}
export interface PistonForm {
  readonly name: string;
  readonly height: string;
  readonly crown: string;
  readonly price: string;
}
/** Plain data: it is kept in the window between two visits. */
export interface FindForm {
  readonly gaskets: { readonly on: boolean; readonly stock: readonly string[]; readonly others: string };
  readonly pistons: {
    readonly on: boolean;
    /** Those that are there may stay. */
    readonly keep: boolean;
    readonly stock: readonly string[];
    readonly rows: readonly PistonForm[];
  };
  readonly chambers: RangeForm;
  readonly deckCut: CutForm;
  readonly headCut: CutForm;
  readonly camAdvance: RangeForm;
  readonly rockerRatio: { readonly on: boolean; readonly values: string };
  readonly pushrods: RangeForm;
  /** Limits that need not hold this time, by the finder's word: `ratio`, `quench`. */
  readonly waived: readonly string[];
  readonly intakeShift: string;
}
export const NO_PISTON: PistonForm = { name: '', height: '', crown: '', price: '' };

/** Gaskets of the sheet's stock that there are enough of: one for each bank, bought unless a count lies on the bench. */
export const stockGaskets = ({ engine }: Tried): readonly HeadGasketStock[] =>
  (engine.stock?.headGaskets ?? []).filter(
    ({ count }) => count === undefined || count >= Math.max(1, engine.layout.banks.length),
  );

/** "head gasket, 1.150 mm, price 18": thickness in the unit that the device shows; without a price none is named. */
export const gasketWords = ({ name, thickness, price }: HeadGasketStock, shownIn: ShownIn): string =>
  `${name}, ${shownQuantity('length', thickness, shownIn)}${price === undefined ? '' : `, price ${price}`}`;

const CHAMBER_ASIDE = 0.05;
const ADVANCE = 4;
const LEAST_CUT = { mm: 0.3, in: 0.012 } as const;
const CUT_STEP = { mm: '0.05', in: '0.002' } as const;
const PUSHROD_ASIDE = { mm: 2, in: 0.08 } as const;
const PUSHROD_STEP = { mm: '0.25', in: '0.010' } as const;

/** A form that asks for what the sheet offers: its gaskets, and cuts down to what may be left. */
export function firstForm(tried: Tried, shownIn: ShownIn): FindForm {
  const first = tried.engine.layout.cylinders[0]?.number;
  const number = (key: string, aside: number, spot?: Parameters<typeof figure>[2]) => {
    const found = figure(tried, key, spot);
    return found === undefined
      ? ''
      : shownNumber(key === 'chamber-volume' ? 'volume' : 'length', found.value + aside, shownIn);
  };
  const chamber = figure(tried, 'chamber-volume', first)?.value ?? 0;
  const aside = fromUnit('length', PUSHROD_ASIDE[shownIn.length], shownIn.length);
  const cut = (room: number | undefined, most: number | undefined): CutForm => ({
    on: room !== undefined,
    limit: shownNumber('length', Math.max(0, Math.min(room ?? 0, most ?? Number.POSITIVE_INFINITY)), shownIn),
    step: CUT_STEP[shownIn.length],
    price: '',
    each: false,
  });
  const usual = fromUnit('length', LEAST_CUT[shownIn.length], shownIn.length);
  const gaskets = stockGaskets(tried);
  const pistons = pistonsOfStock(tried).offered.map(({ id }) => id);
  return {
    gaskets: { on: gaskets.length > 0, stock: gaskets.map(({ id }) => id), others: '' },
    pistons: { on: false, keep: true, stock: pistons, rows: pistons.length === 0 ? [NO_PISTON] : [] },
    chambers: {
      on: false,
      from: number('chamber-volume', -chamber * CHAMBER_ASIDE, first),
      to: number('chamber-volume', chamber * CHAMBER_ASIDE, first),
      step: '0.5',
      price: '',
    },
    deckCut: cut(usual, roomTo(tried, 'deck-height', 'deck-height-least')),
    headCut: cut(usual, roomTo(tried, 'head-thickness', 'head-thickness-least')),
    camAdvance: {
      on: figure(tried, 'valve-drop', 'intake') !== undefined,
      from: `${-ADVANCE}`,
      to: `${ADVANCE}`,
      step: '1',
      price: '',
    },
    rockerRatio: { on: false, values: rockerRatioText(tried) },
    pushrods: {
      on: false,
      from: number('pushrod-zero-lash', -aside, 'intake'),
      to: number('pushrod-zero-lash', aside, 'intake'),
      step: PUSHROD_STEP[shownIn.length],
      price: '',
    },
    waived: [],
    intakeShift: '',
  };
}
const rockerRatioText = (tried: Tried): string => {
  const ratio = figure(tried, 'rocker-ratio', 'intake');
  return ratio === undefined ? '' : ratio.value.toFixed(2);
};

/** Metal over what must be left; undefined where either is not known. */
function roomTo(tried: Tried, key: string, least: string): number | undefined {
  const limit = figure(tried, least)?.value;
  const heights = tried.engine.layout.cylinders.flatMap(({ number }) => figure(tried, key, number)?.value ?? []);
  return limit === undefined || heights.length === 0 ? undefined : Math.min(...heights) - limit;
}

/** Unit that stands beside a length of the form. */
export const formUnit = (quantity: 'length' | 'volume' | 'angle', shownIn: ShownIn): string =>
  shownWay(quantity, shownIn).unit;
