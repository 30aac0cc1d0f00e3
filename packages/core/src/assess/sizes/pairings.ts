/** Sizes that two or more parts make together: which figures, and by which formula of `calc`. */
import { oilClearance } from '../../calc/bearings/index.js';
import { sideClearance } from '../../calc/cylinder/index.js';
import { wearFigure } from '../../calc/metrology/index.js';
import type { Length } from '../../quantity/index.js';
import type { Station } from '../model.js';
import type { Form } from './forms.js';

export interface PairInput {
  readonly feature: string;
  readonly form: Form;
  /** "housing": how it is called in the formula. */
  readonly name: string;
  /** Which stations form it; all when left out, or when none is so. */
  readonly only?: (station: Station) => boolean;
  /** A rod sits on the crankpin of its cylinder; all else has a place of the same name. */
  readonly at?: 'crankpin';
}
export interface PairWay {
  readonly inputs: readonly PairInput[];
  readonly value: (figures: readonly number[]) => number;
  readonly formula: string;
  readonly sources: readonly string[];
  readonly cautions?: readonly string[];
  readonly negative?: string;
  readonly ends?: boolean;
}
export interface Pairing {
  readonly property: string;
  readonly title: string;
  readonly sense: 'hole';
  /** Features whose places it has: the first that the engine has. */
  readonly per: readonly string[];
  /** Ways to form it, the best first. */
  readonly ways: readonly PairWay[];
}

const vertical = ({ id }: Station): boolean => id.includes('vertical');
const of = (feature: string, form: Form, name: string, more: Pick<PairInput, 'only' | 'at'> = {}): PairInput => ({
  feature,
  form,
  name,
  ...more,
});
const holeLessShaft = ([hole, shaft]: readonly number[]): number =>
  wearFigure({ form: 'clearance', measured: hole!, mate: shaft!, whenNew: 0, part: 'hole' });

/** A shaft in a hole, both by their mean diameter unless said otherwise. */
function inHole(property: string, title: string, hole: PairInput, shaft: PairInput, source: string): Pairing {
  const way = {
    inputs: [hole, shaft],
    value: holeLessShaft,
    formula: `${hole.name} less ${shaft.name}`,
    sources: [source],
  };
  return { property, title, sense: 'hole', per: [hole.feature], ways: [way] };
}

/**
 * Oil clearance from the bore with its shells in, else from housing and walls, else by strip. The journal counts by its largest
 * diameter, housing and shells square to the parting line (reference row O-17; bibliography `journal-form`).
 */
function plainBearing(
  property: string,
  title: string,
  names: {
    readonly bore: string;
    readonly housing: string;
    readonly shell: string;
    readonly strip: string;
    readonly journal: PairInput;
  },
): Pairing {
  const { journal } = names;
  const wall = (half: 'upper' | 'lower') =>
    of(names.shell, 'single', `${half} wall`, { only: ({ id }) => id === half });
  return {
    property,
    title,
    sense: 'hole',
    per: [names.housing, names.bore],
    ways: [
      {
        inputs: [of(names.bore, 'mean', 'bore with its shells in', { only: vertical }), journal],
        value: holeLessShaft,
        formula: 'bore with its shells in, less journal at its largest',
        sources: ['bearings.installed-clearance'],
      },
      {
        inputs: [of(names.housing, 'mean', 'housing', { only: vertical }), wall('upper'), wall('lower'), journal],
        value: ([housing, upper, lower, shaft]) =>
          oilClearance(housing as Length, { upper: upper as Length, lower: lower as Length }, shaft as Length),
        formula: 'housing less upper wall less lower wall less journal at its largest',
        sources: ['bearings.oil-clearance'],
        negative: 'no journal turns in less than nothing: read the walls again with a ball anvil',
      },
      {
        inputs: [of(names.strip, 'mean', 'strip')],
        value: ([strip]) => strip!,
        formula: 'gauging strip alone',
        sources: ['bearings.thread-gauge'],
        cautions: ['by gauging strip alone: no finer than half a thou'],
        ends: true,
      },
    ],
  };
}

const along = (...names: readonly string[]) => ({
  only: ({ id }: Station) => names.some((name) => id.startsWith(name)),
});

/** One row for each pair of parts that the trade holds against a limit. */
export const PAIRINGS: readonly Pairing[] = [
  inHole(
    'piston.clearance',
    'piston clearance',
    of('cylinder-bore', 'smallest', 'bore at its smallest'),
    of('piston-skirt', 'mean', 'piston'),
    'cylinder.piston-clearance',
  ),
  plainBearing('main-bearing.clearance', 'main bearing clearance', {
    bore: 'main-bearing-bore',
    housing: 'main-housing',
    shell: 'main-shell',
    strip: 'main-strip',
    journal: of('main-journal', 'largest', 'journal at its largest'),
  }),
  plainBearing('rod-bearing.clearance', 'rod bearing clearance', {
    bore: 'rod-bearing-bore',
    housing: 'big-end-bore',
    shell: 'rod-shell',
    strip: 'rod-strip',
    journal: of('crankpin', 'largest', 'crankpin at its largest', { at: 'crankpin' }),
  }),
  inHole(
    'cam-bearing.clearance',
    'cam bearing clearance',
    of('cam-bearing', 'mean', 'bearing'),
    of('cam-journal', 'largest', 'journal at its largest'),
    'fits.clearance',
  ),
  inHole(
    'lifter.clearance',
    'lifter clearance',
    of('lifter-bore', 'mean', 'lifter bore'),
    of('lifter', 'mean', 'lifter'),
    'fits.clearance',
  ),
  inHole(
    'bucket.clearance',
    'bucket clearance',
    of('bucket-bore', 'mean', 'bucket bore'),
    of('bucket', 'mean', 'bucket'),
    'fits.clearance',
  ),
  inHole(
    'stem.clearance',
    'stem clearance',
    of('valve-guide', 'mean', 'guide'),
    of('valve-stem', 'mean', 'stem'),
    'fits.clearance',
  ),
  inHole(
    'pin.clearance-in-rod',
    'pin clearance in the rod',
    of('small-end-bore', 'mean', 'small end'),
    of('piston-pin', 'mean', 'pin', along('middle')),
    'fits.clearance',
  ),
  inHole(
    'pin.clearance-in-piston',
    'pin clearance in the piston',
    of('pin-bore', 'mean', 'pin bore'),
    of('piston-pin', 'mean', 'pin', along('front', 'rear')),
    'fits.clearance',
  ),
  inHole(
    'rocker.clearance',
    'rocker clearance',
    of('rocker-bore', 'mean', 'rocker bore'),
    of('rocker-shaft', 'mean', 'shaft'),
    'fits.clearance',
  ),
  inHole(
    'liner.clearance-flange',
    'liner clearance at the flange',
    of('counterbore', 'mean', 'counterbore'),
    of('liner-flange-outside', 'mean', 'flange'),
    'fits.clearance',
  ),
  inHole(
    'liner.clearance-upper',
    'liner clearance below the flange',
    of('liner-upper-seat', 'mean', 'seat'),
    of('liner-upper-outside', 'mean', 'liner'),
    'fits.clearance',
  ),
  inHole(
    'liner.clearance-lower',
    'liner clearance at the lower seals',
    of('liner-lower-seat', 'mean', 'seat'),
    of('liner-lower-outside', 'mean', 'liner'),
    'fits.clearance',
  ),
  ...(['top', 'second', 'third', 'oil'] as const).map(
    (ring): Pairing => ({
      property: `ring-groove-${ring}.clearance`,
      title: `${ring} ring side clearance`,
      sense: 'hole',
      per: [`groove-width-${ring}`],
      ways: [
        {
          inputs: [of(`groove-width-${ring}`, 'mean', 'groove'), of(`ring-width-${ring}`, 'mean', 'ring')],
          value: ([groove, ring_]) => sideClearance(groove as Length, ring_ as Length),
          formula: 'groove less ring',
          sources: ['cylinder.ring-side-clearance'],
        },
      ],
    }),
  ),
];
