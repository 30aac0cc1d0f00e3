/** Ratio, quench and deck height of every cylinder. */
import { clearanceVolume, compressionRatio, deckClearance, discVolume, quench } from '../../../calc/cylinder/index.js';
import type { Length, Ratio, Volume } from '../../../quantity/index.js';
import type { FinderCylinder, FinderInput } from './model.js';
import { lacking, type Need, placed, takenScale } from './need.js';
import {
  chamber,
  chamberArea,
  compressionHeight,
  crownVolume,
  deckCut,
  gasketBore,
  gasketThickness,
  headCut,
  known,
  or,
  pistonHigherThanNow,
  type World,
} from './world.js';

/** The cylinder of a number: looked up, because a doubt may move its sizes. */
const cylinderOf = ({ fixed }: World, number: number): FinderCylinder =>
  fixed.cylinders.find((one) => one.number === number)!;

function deckOf(world: World, number: number): Length {
  const cylinder = cylinderOf(world, number);
  const { bank, deckHeight, deckClearance: measured } = cylinder;
  const { stroke, rodLength } = world.fixed;
  const now =
    measured === undefined
      ? deckClearance({
          deckHeight: known(deckHeight) as Length,
          stroke: known(stroke) as Length,
          rodLength: known(rodLength) as Length,
          compressionHeight: compressionHeight(world, cylinder),
        })
      : known(measured) - pistonHigherThanNow(world, cylinder);
  return (now - deckCut(world, bank)) as Length;
}

function clearanceOf(world: World, number: number): Volume {
  const cylinder = cylinderOf(world, number);
  const bore = known(cylinder.bore) as Length;
  const { bank } = cylinder;
  const head = chamber(world, cylinder.chamber) - chamberArea(world) * headCut(world, bank);
  return clearanceVolume({
    chamber: head as Volume,
    gasket: discVolume(gasketBore(world, bank, bore), gasketThickness(world, bank)),
    deck: discVolume(bore, deckOf(world, number)),
    piston: crownVolume(world, cylinder),
    other: or(cylinder.other, 0) as Volume,
  });
}

/** Without room at the top there is no ratio: it grows beyond every limit. */
function ratioOf(clearance: number, world: World, number: number): Ratio {
  if (clearance <= 0) return Number.POSITIVE_INFINITY as Ratio;
  const swept = discVolume(known(cylinderOf(world, number).bore) as Length, known(world.fixed.stroke) as Length);
  return compressionRatio(swept, clearance as Volume);
}

const STACK = [['gasket'], ['piston'], ['deck-cut']] as const;

export function cylinderNeeds(input: FinderInput): readonly Need[] {
  const { fixed, wanted } = input;
  return fixed.cylinders.flatMap((cylinder) => {
    const { number, bank } = cylinder;
    const named = (title: string) => placed(title, 'cylinder', `${number}`, fixed.cylinders.length > 1);
    const found: Need[] = [];
    if (wanted.ratio !== undefined)
      found.push({
        key: `ratio@${number}`,
        ...named('compression ratio'),
        quantity: 'ratio',
        ...wanted.ratio,
        by: [...STACK, ['head-cut'], ['chamber']],
        amount: (world) => clearanceOf(world, number),
        shown: { of: (amount, world) => ratioOf(amount, world, number), falling: true },
        missing: lacking({ ...stackSizes(input, cylinder), ...roomSizes(input, cylinder) }),
      });
    if (wanted.quench !== undefined)
      found.push({
        key: `quench@${number}`,
        ...named('quench'),
        quantity: 'length',
        ...wanted.quench,
        by: STACK,
        amount: (world) => quench(deckOf(world, number), gasketThickness(world, bank)),
        missing: lacking(stackSizes(input, cylinder)),
      });
    if (wanted.deckHeight !== undefined)
      found.push({
        key: `deck-height@${number}`,
        ...named('deck height'),
        quantity: 'length',
        low: wanted.deckHeight,
        scale: takenScale(cylinder.deckHeight, wanted.deckHeight),
        by: [['deck-cut']],
        amount: (world) => known(cylinderOf(world, number).deckHeight) - deckCut(world, bank),
        missing: lacking({ [`deck height of cylinder ${number}`]: cylinder.deckHeight }),
      });
    return found;
  });
}

/** Where the present pistons may stay their sizes are needed too. */
const onlyBought = ({ pistons }: FinderInput['offer']): boolean => pistons !== undefined && pistons.keep !== true;

function stackSizes({ fixed, offer }: FinderInput, cylinder: FinderCylinder) {
  const { number, deckHeight, deckClearance: measured } = cylinder;
  const gasket = { 'gasket thickness': fixed.gasket !== undefined || offer.gaskets !== undefined };
  const now = cylinder.compressionHeight ?? fixed.piston?.compressionHeight;
  if (measured !== undefined)
    return { ...gasket, ...(offer.pistons && { 'compression height of the piston that was measured': now }) };
  return {
    ...gasket,
    [`deck height of cylinder ${number}`]: deckHeight,
    'rod length': fixed.rodLength,
    'compression height': now !== undefined || onlyBought(offer),
  };
}
const roomSizes = (
  { fixed, offer }: FinderInput,
  { number, bank, chamber: own, crownVolume: crown }: FinderCylinder,
) => ({
  [`chamber volume of cylinder ${number}`]: own !== undefined || offer.chambers !== undefined,
  'crown volume': (crown ?? fixed.piston?.crownVolume) !== undefined || onlyBought(offer),
  'chamber area':
    fixed.chamberArea !== undefined || (offer.headCut === undefined && fixed.cuts?.[bank]?.head === undefined),
});
