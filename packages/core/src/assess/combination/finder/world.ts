/** An engine with one option of each choice: what the figures are computed from. */
import type { Area, Length, Volume } from '../../../quantity/index.js';
import { sizeValue } from './choices.js';
import type { ChoiceKind, FinderCylinder, FixedFigures, Option, Size } from './model.js';

export interface World {
  readonly fixed: FixedFigures;
  readonly picked: ReadonlyMap<string, Option>;
}

/** A size that must be there: what can be missing was asked for before anything is computed. */
export const known = (size: Size | undefined): number => (size === undefined ? Number.NaN : sizeValue(size));
export const or = (size: Size | undefined, otherwise: number): number =>
  size === undefined ? otherwise : sizeValue(size);

/** The option picked for a bank: its own, or the one for all. */
export const pickedFor = ({ picked }: World, kind: ChoiceKind, bank: string): Option | undefined =>
  picked.get(`${kind}@${bank}`) ?? picked.get(kind);

const sizeOf = (world: World, kind: ChoiceKind, bank: string, size = 'value'): Size | undefined =>
  pickedFor(world, kind, bank)?.sizes[size];

export const gasketThickness = (world: World, bank: string): Length =>
  known(sizeOf(world, 'gasket', bank, 'thickness') ?? world.fixed.gasket?.thickness) as Length;
/** The bore of the cylinder where nobody names the gasket's. */
export const gasketBore = (world: World, bank: string, bore: number): Length =>
  or(sizeOf(world, 'gasket', bank, 'bore') ?? world.fixed.gasket?.bore, bore) as Length;
type OwnPiston = Pick<FinderCylinder, 'compressionHeight' | 'crownVolume' | 'pockets'>;
const heightNow = ({ fixed }: World, own: OwnPiston): Size | undefined =>
  own.compressionHeight ?? fixed.piston?.compressionHeight;
export const compressionHeight = (world: World, own: OwnPiston): Length =>
  known(sizeOf(world, 'piston', '', 'compressionHeight') ?? heightNow(world, own)) as Length;
/** With the valve pockets: those of a piston that is bought are in its crown volume. */
export const crownVolume = (world: World, own: OwnPiston): Volume => {
  const bought = sizeOf(world, 'piston', '', 'crownVolume');
  if (bought !== undefined) return known(bought) as Volume;
  return (known(own.crownVolume ?? world.fixed.piston?.crownVolume) + or(own.pockets, 0)) as Volume;
};
export const pocketDeeper = (world: World): number => or(sizeOf(world, 'piston', '', 'pocketDeeper'), 0);
export const deckCut = (world: World, bank: string): Length =>
  or(sizeOf(world, 'deck-cut', bank) ?? world.fixed.cuts?.[bank]?.deck, 0) as Length;
export const headCut = (world: World, bank: string): Length =>
  or(sizeOf(world, 'head-cut', bank) ?? world.fixed.cuts?.[bank]?.head, 0) as Length;
export const camAdvance = (world: World): number => or(sizeOf(world, 'cam-advance', '') ?? world.fixed.camAdvance, 0);
export const rockerRatio = (world: World): number =>
  known(sizeOf(world, 'rocker-ratio', '') ?? world.fixed.rockerRatio);
export const pushrod = (world: World, bank: string): number =>
  known(sizeOf(world, 'pushrod', bank) ?? world.fixed.pushrod);
export const chamber = (world: World, own: Size | undefined): Volume =>
  known(sizeOf(world, 'chamber', '') ?? own) as Volume;

/** What was measured with a gasket that may not be the one that is fitted. */
export type Since = 'room' | 'pushrod' | 'intakeFit';
/** Head closer to the crank than when something was measured. */
export const headCloser = (world: World, bank: string, since: Since): Length => {
  const then = world.fixed.measuredWith?.[since] ?? world.fixed.gasket?.thickness;
  return (headCut(world, bank) + deckCut(world, bank) - (gasketThickness(world, bank) - known(then))) as Length;
};
const isBought = ({ picked }: World): boolean => picked.get('piston')?.sizes.compressionHeight !== undefined;
/** Piston higher than the one with which the valve room was measured; 0 where no other piston is picked. */
export const pistonHigher = (world: World): number => {
  if (!isBought(world)) return 0;
  const then = world.fixed.measuredWith?.compressionHeight ?? world.fixed.piston?.compressionHeight;
  return compressionHeight(world, {}) - known(then);
};
/** Piston higher than the one with which the deck clearance was measured. */
export const pistonHigherThanNow = (world: World, own: OwnPiston): number =>
  isBought(world) ? compressionHeight(world, own) - known(heightNow(world, own)) : 0;
export const chamberArea = ({ fixed }: World): Area => or(fixed.chamberArea, 0) as Area;
