/** A found combination as figures for the scratch copy. */

import {
  type FixedFigures,
  type FoundCombination,
  fixedFrom,
  type Option,
  type Size,
  sizeValue,
} from '../../assess/combination/finder/index.js';
import { figure, type Spot } from '../../assess/index.js';
import { gapChange } from '../../calc/valvetrain/index.js';
import { figureKey } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { PLANNED } from './planned.js';
import { massOfFound } from './stock-pistons.js';
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
  const spots: readonly Spot[] =
    place === undefined
      ? tried.engine.layout.cylinders.map(({ number }) => number)
      : [place === 'intake' || place === 'exhaust' ? place : Number(place)];
  return spots.some((spot) => !(Math.abs((figure(tried, bare, spot)?.value ?? nothing(bare)) - value) <= ALIKE));
}
/** Where no work is planned there is none; of a part that is not known every size is another. */
const nothing = (key: string): number => (PLANNED.has(key) ? 0 : Number.NaN);

function figuresOf(tried: Tried, choice: string, option: Option): Figures {
  const { sizes } = option;
  const [kind, bank] = choice.split('@');
  const size = (name: string) => (sizes[name] === undefined ? [] : [sizeValue(sizes[name])]);
  const put = (key: string, values: readonly number[]): Figures =>
    values.flatMap((value) => keysOf(tried, key, bank).map((one) => [one, value] as const));
  switch (kind) {
    case 'gasket':
      return [
        ...put('gasket-thickness', size('thickness')),
        ...put('gasket-bore', size('bore')),
        ...measuredWith(tried, size('thickness')),
      ];
    case 'piston':
      return option.asIs === true ? [] : pistonOf(tried, option);
    case 'chamber':
      return put('chamber-volume', size('value'));
    case 'pushrod':
      return size('value').map((value) => ['pushrod-length', value]);
    default:
      return put(kind ?? '', size('value'));
  }
}

/** What was measured and does not say with which gasket was measured with the one before: said once another takes its place. */
function measuredWith(tried: Tried, thicknesses: readonly number[]): Figures {
  const first = tried.engine.layout.cylinders[0]?.number;
  const before = figure(tried, 'gasket-thickness', first)?.value;
  if (before === undefined || thicknesses.every((one) => Math.abs(one - before) <= ALIKE)) return [];
  const measured = MEASURED.flatMap(([what, gasket]) =>
    (['intake', 'exhaust'] as const).flatMap((kind) => {
      const told = figure(tried, what, kind) === undefined || figure(tried, gasket, kind) !== undefined;
      return told ? [] : [[`${gasket}@${kind}`, before] as const];
    }),
  );
  const faces = figure(tried, 'intake-face-angle', first) !== undefined;
  const fitted = faces && figure(tried, 'gasket-thickness-before', first) === undefined;
  return [...measured, ...(fitted ? [['gasket-thickness-before', before] as const] : [])];
}
const MEASURED = [
  ['valve-drop', 'valve-drop-gasket'],
  ['pushrod-zero-lash', 'pushrod-gasket'],
] as const;

/** For one bank a figure for each of its cylinders; else one for all. */
const keysOf = ({ engine }: Tried, key: string, bank: string | undefined): readonly string[] =>
  bank === undefined
    ? [key]
    : engine.layout.cylinders.filter((one) => one.bank === bank).map(({ number }) => figureKey(key, number));

/**
 * What was measured with another piston and still counts moves with it: deck clearance, and the room between valve and crown. Pockets
 * that the crown volume did not hold go with the old piston.
 */
function pistonOf(tried: Tried, option: Option): Figures {
  const { sizes } = option;
  const height = sizeValue(sizes.compressionHeight!);
  const fixed = fixedFrom(tried);
  const clearances = fixed.cylinders.flatMap(({ number, deckClearance, compressionHeight }) => {
    if (deckClearance === undefined || compressionHeight === undefined) return [];
    const higher = height - sizeValue(compressionHeight);
    return [[figureKey('deck-clearance', number), sizeValue(deckClearance) - higher] as const];
  });
  const pockets = fixed.cylinders.some((one) => one.pockets !== undefined);
  const mass = massOfFound(tried, option);
  return [
    ['compression-height', height],
    ['piston-volume', sizeValue(sizes.crownVolume!)],
    ...(pockets ? [['pocket-volume', 0] as const] : []),
    ...(mass === undefined ? [] : [['piston-mass', mass] as const]),
    ...clearances,
    ...valveDrops(fixed, height, sizes.pocketDeeper),
  ];
}

function valveDrops(fixed: FixedFigures, height: number, pocketDeeper: Size | undefined): Figures {
  const then = fixed.measuredWith?.compressionHeight;
  if (then === undefined) return [];
  return (['intake', 'exhaust'] as const).flatMap((kind) => {
    const { angle, crown, gapAtTop } = fixed[kind] ?? {};
    if (angle === undefined || gapAtTop === undefined) return [];
    const moved = gapChange(crown ?? 'parallel-pocket', sizeValue(angle) as Angle, {
      alongBore: (sizeValue(then) - height) as Length,
      pocketDeeper: (pocketDeeper === undefined ? 0 : sizeValue(pocketDeeper)) as Length,
      valveSunk: 0 as Length,
      liftMore: 0 as Length,
    });
    return [[`valve-drop@${kind}`, sizeValue(gapAtTop) + moved] as const];
  });
}
