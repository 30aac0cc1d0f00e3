/** Lists of options from what is on offer. */
import { done, type Outcome, refused } from '../../../quantity/index.js';
import type {
  Choice,
  ChoiceKind,
  CutOffered,
  FinderFault,
  FinderInput,
  GasketOffered,
  Option,
  PistonOffered,
  Size,
  Values,
} from './model.js';

/** More steps than this in one range are a slip of the pen. */
const MOST_STEPS = 2000;
/** A range ends on its end, whatever rounding says. */
const ROUNDING = 1e-9;

/** What a size counts for in the formulas: SI, of the choice it stands under [m, m³, rad, or 1 for a ratio]. */
export const sizeValue = (size: Size): number => (typeof size === 'number' ? size : size.value);

export const TITLES: Readonly<Record<ChoiceKind, string>> = {
  gasket: 'head gasket',
  piston: 'piston',
  chamber: 'chamber volume',
  'deck-cut': 'deck cut',
  'head-cut': 'head cut',
  'cam-advance': 'cam advance',
  'rocker-ratio': 'rocker ratio',
  pushrod: 'pushrod length',
};

const gasketOption = ({ thickness, bore, name, price }: GasketOffered): Option => ({
  name: name ?? '',
  sizes: { thickness, bore },
  ...(price !== undefined && { price }),
});
const pistonOption = ({ name, price, compressionHeight, crownVolume, pocketDeeper }: PistonOffered): Option => ({
  name: name ?? '',
  sizes: { compressionHeight, crownVolume, ...(pocketDeeper !== undefined && { pocketDeeper }) },
  ...(price !== undefined && { price }),
});

/** Without sizes of its own each cylinder keeps what it has. */
const AS_THEY_ARE: Option = { name: '', sizes: {}, asIs: true };

/** Values of an even row; undefined when it cannot be made. */
function row(from: number, to: number, step: number): readonly number[] | undefined {
  const steps = Math.floor((to - from) / step + ROUNDING);
  if (!(step > 0) || !(steps >= 0) || steps > MOST_STEPS) return undefined;
  return Array.from({ length: steps + 1 }, (_, at) => from + at * step);
}
const withDoubt = (value: number, u: number | undefined): Size => (u === undefined ? value : { value, u });

function valueOptions(offered: Values): readonly Option[] | undefined {
  if ('values' in offered)
    return offered.values.map(({ value, name, price }) => ({
      name: name ?? '',
      sizes: { value },
      ...(price !== undefined && { price }),
    }));
  const { from, to, step, price, u } = offered;
  return row(from, to, step)?.map((value) => ({
    name: '',
    sizes: { value: withDoubt(value, u) },
    ...(price !== undefined && { price }),
  }));
}

/** Nothing cut costs nothing and is as sure as what is there. */
const cutOptions = ({ limit, step, price, u }: CutOffered): readonly Option[] | undefined =>
  row(0, limit, step)?.map((cut) => ({
    name: '',
    sizes: { value: cut === 0 ? { value: 0, u: 0 } : withDoubt(cut, u) },
    ...(cut === 0 ? { asIs: true } : price !== undefined && { price }),
  }));

interface Raw {
  readonly kind: ChoiceKind;
  readonly each: boolean;
  readonly options: readonly Option[] | undefined;
}

/** Every choice with its options, in a fixed order; refuses an empty list and steps that cannot be made, by name. */
export function choicesOf({ fixed, offer }: FinderInput): Outcome<readonly Choice[], FinderFault> {
  const banks = [...new Set(fixed.cylinders.map(({ bank }) => bank))];
  const choices: Choice[] = [];
  for (const { kind, each, options } of rawChoices(offer)) {
    if (options === undefined) return refused({ code: 'steps-unusable', choice: TITLES[kind], most: MOST_STEPS });
    if (options.length === 0) return refused({ code: 'no-options', choice: TITLES[kind] });
    if (each && banks.length > 1)
      choices.push(
        ...banks.map((bank) => ({
          key: `${kind}@${bank}`,
          kind,
          title: `${TITLES[kind]}, bank ${bank}`,
          options,
          faces: 1,
        })),
      );
    else choices.push({ key: kind, kind, title: TITLES[kind], options, faces: banks.length });
  }
  return done(choices);
}

function rawChoices(offer: FinderInput['offer']): readonly Raw[] {
  const found: Raw[] = [];
  const add = <T>(kind: ChoiceKind, given: T | undefined, make: (one: T) => readonly Option[] | undefined) => {
    if (given === undefined) return;
    const each = typeof given === 'object' && given !== null && 'each' in given && given.each === true;
    found.push({ kind, each, options: make(given) });
  };
  add('gasket', offer.gaskets, ({ options }) => options.map(gasketOption));
  add('piston', offer.pistons, ({ options, keep }) => [...(keep ? [AS_THEY_ARE] : []), ...options.map(pistonOption)]);
  add('chamber', offer.chambers, valueOptions);
  add('deck-cut', offer.deckCut, cutOptions);
  add('head-cut', offer.headCut, cutOptions);
  add('cam-advance', offer.camAdvance, valueOptions);
  add('rocker-ratio', offer.rockerRatio, valueOptions);
  add('pushrod', offer.pushrods, valueOptions);
  return found;
}
