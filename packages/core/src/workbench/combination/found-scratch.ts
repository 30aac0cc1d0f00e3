/** A found combination as figures for the scratch copy. */

import { type FoundCombination, fixedFrom, type Option, sizeValue } from '../../assess/combination/finder/index.js';
import { figure } from '../../assess/index.js';
import { figureKey } from '../../engine/index.js';
import { PLANNED } from './planned.js';
import type { Tried } from './tried.js';

type Figures = readonly (readonly [key: string, value: number])[];

/** Figures that differ from those that count now. */
export function foundAsScratch(tried: Tried, { options }: FoundCombination): Figures {
  return options
    .flatMap(({ choice, option }) => figuresOf(tried, choice, option))
    .filter(([key, value]) => differs(tried, key, value));
}

const ALIKE = 1e-12;
/** A figure for all cylinders differs where any one of them has another. */
function differs(tried: Tried, key: string, value: number): boolean {
  const [bare = key, place] = key.split('@');
  const spots = place === undefined ? tried.engine.layout.cylinders.map(({ number }) => number) : [Number(place)];
  return spots.some((spot) => Math.abs((figure(tried, bare, spot)?.value ?? nothing(bare)) - value) > ALIKE);
}
/** Where no work is planned there is none; of a part that is not known every size is another. */
const nothing = (key: string): number => (PLANNED.has(key) ? 0 : Number.NaN);

function figuresOf(tried: Tried, choice: string, { sizes }: Option): Figures {
  const [kind, bank] = choice.split('@');
  const size = (name: string) => (sizes[name] === undefined ? [] : [sizeValue(sizes[name])]);
  const put = (key: string, values: readonly number[]): Figures =>
    values.flatMap((value) => keysOf(tried, key, bank).map((one) => [one, value] as const));
  switch (kind) {
    case 'gasket':
      return [...put('gasket-thickness', size('thickness')), ...put('gasket-bore', size('bore'))];
    case 'piston':
      return pistonOf(tried, size('compressionHeight'), size('crownVolume'));
    case 'chamber':
      return put('chamber-volume', size('value'));
    case 'pushrod':
      return size('value').map((value) => ['pushrod-length', value]);
    default:
      return put(kind ?? '', size('value'));
  }
}

/** For one bank a figure for each of its cylinders; else one for all. */
const keysOf = ({ engine }: Tried, key: string, bank: string | undefined): readonly string[] =>
  bank === undefined
    ? [key]
    : engine.layout.cylinders.filter((one) => one.bank === bank).map(({ number }) => figureKey(key, number));

/** A measured deck clearance that still counts moves with the piston: it was measured with another one. */
function pistonOf(tried: Tried, heights: readonly number[], crowns: readonly number[]): Figures {
  const clearances = fixedFrom(tried).cylinders.flatMap(({ number, deckClearance, compressionHeight }) =>
    heights.flatMap((height) => {
      if (deckClearance === undefined || compressionHeight === undefined) return [];
      const higher = height - sizeValue(compressionHeight);
      return [[figureKey('deck-clearance', number), sizeValue(deckClearance) - higher] as const];
    }),
  );
  return [
    ...heights.map((height) => ['compression-height', height] as const),
    ...crowns.map((crown) => ['piston-volume', crown] as const),
    ...clearances,
  ];
}
