/** What shakes the engine at its highest speed: forces and couples of first and second order, and the whole from the exact slider-crank. */
import {
  type Ellipse,
  ellipseOf,
  exactPeaks,
  type Harmonic,
  harmonicAt,
  type Shaking,
  scalesOf,
  shakeAt,
  shakingOf,
} from '../../calc/balance/index.js';
import { answered, type Naming, type Part, told } from './answering.js';
import { type Shaken, shakenOf } from './crank-throws.js';
import { type Computed, computed, type Known, Look, type Values } from './look.js';
import type { AnsweredFigure, Makeup } from './model.js';

const FORCE = { quantity: 'force' } as const;
const COUPLE = { quantity: 'torque' } as const;
const HARMONICS: readonly (Naming & { readonly of: keyof Shaking; readonly scale: 'force' | 'couple' })[] = [
  { key: 'primary-force', name: 'primary force', ...FORCE, of: 'primaryForce', scale: 'force' },
  { key: 'secondary-force', name: 'secondary force', ...FORCE, of: 'secondaryForce', scale: 'force' },
  { key: 'primary-couple', name: 'primary couple', ...COUPLE, of: 'primaryCouple', scale: 'couple' },
  { key: 'secondary-couple', name: 'secondary couple', ...COUPLE, of: 'secondaryCouple', scale: 'couple' },
];
const WHOLE_FORCE: Naming = { key: 'whole-force', name: 'whole force, exact', ...FORCE };
const WHOLE_COUPLE: Naming = { key: 'whole-couple', name: 'whole couple, exact', ...COUPLE };
const NO_DOUBT = { effects: new Map<string, number>() };

/** A force smaller than this share of what one cylinder gives is rounding. */
const BALANCED = 1e-12;

/** Forces and couples as answers. Couples need the places along the crank. */
export function shakingPart(makeup: Makeup): Part {
  const found = computed(makeup, undefined, (look) => components(look, makeup));
  const shaken = shakenOf(new Look(makeup), makeup.engine);
  if (shaken === undefined) return { figures: [], computed: [found] };
  const { throws, sizes, about, placed } = shaken;
  const scales = scalesOf(throws, sizes, about);
  const shaking = shakingOf(throws, sizes, about);
  const each = HARMONICS.filter(({ scale }) => placed || scale === 'force');
  const shapes = each.map((one) => ({ one, shape: ellipseOf(shaking[one.of], scales[one.scale]) }));
  const figures = shapes.map(({ one, shape }) => answered(makeup, one, largest(found, one.of, shape)));
  return {
    figures: [...figures, ...whole(makeup, shaken, scales)],
    computed: [found],
    working: shapes.flatMap(({ one, shape }) => lineOf(one, shape, shaken.zero)),
    cautions: [
      'rigid parts and steady speed; all that rotates is taken as balanced by the counterweights',
      ...(makeup.figures.has('balance-factor')
        ? []
        : ['no balance factor is given: the counterweights are taken to carry nothing of what reciprocates']),
    ],
  };
}

/** Vectors of the harmonics as numbers, so that their doubt can be carried: the length of a vector that is nothing has no slope. */
function components(look: Look, { engine }: Makeup): Values {
  const shaken = shakenOf(look, engine);
  if (shaken === undefined) return {};
  const shaking = shakingOf(shaken.throws, shaken.sizes, shaken.about);
  return Object.fromEntries(
    HARMONICS.flatMap(({ of }) =>
      (['ahead', 'back'] as const).flatMap((side) =>
        (['re', 'im'] as const).map((axis) => [`${of}/${side}/${axis}`, shaking[of][side][axis]]),
      ),
    ),
  );
}

/** Largest of a harmonic with a doubt that is not too small: that of both vectors, each as far as it may turn and grow. */
function largest({ values }: Computed, of: string, { most }: Ellipse): Known {
  const doubts = (['ahead', 'back'] as const).map((side) => {
    const [re, im] = [values.get(`${of}/${side}/re`)?.u, values.get(`${of}/${side}/im`)?.u];
    return re === undefined || im === undefined ? undefined : Math.hypot(re, im);
  });
  const [ahead, back] = doubts;
  if (ahead === undefined || back === undefined) return { value: most, ...NO_DOUBT };
  return { value: most, u: ahead + back, ...NO_DOUBT };
}

/** Forces and couples that vanish have no place. Angles count from cylinder 1 at dead centre. */
function lineOf({ name, quantity }: Naming, { most, least, crankAngle }: Ellipse, zero: number): readonly string[] {
  if (crankAngle === undefined) return [`${name}: balanced by the layout`];
  const turn = 2 * Math.PI;
  const after = (((crankAngle - zero) % turn) + turn) % turn;
  return [
    `${name}: ${told(quantity, most)} at most, ${told(quantity, least)} at least; first at ${told('angle', after)} after the top of cylinder 1`,
  ];
}

function whole(
  makeup: Makeup,
  shaken: Shaken,
  scales: { readonly force: number; readonly couple: number },
): readonly AnsweredFigure[] {
  const peaks = exactPeaks(shaken.throws, shaken.sizes, shaken.about);
  if (!peaks.ok) return [];
  const clean = (most: number, scale: number): Known => ({ value: most > BALANCED * scale ? most : 0, ...NO_DOUBT });
  return [
    answered(makeup, WHOLE_FORCE, clean(peaks.value.force.most, scales.force)),
    ...(shaken.placed ? [answered(makeup, WHOLE_COUPLE, clean(peaks.value.couple.most, scales.couple))] : []),
  ];
}

/** A force or couple over a turn as a vector: up and sideways, toward the running sense. */
export interface TurningVector {
  readonly key: string;
  readonly name: string;
  readonly quantity: 'force' | 'torque';
  readonly up: readonly number[];
  readonly across: readonly number[];
}
export interface ShakingTurn {
  /** Crank angle after the top of cylinder 1 [rad], 0 to one turn. */
  readonly angles: readonly number[];
  readonly vectors: readonly TurningVector[];
}
/** So many places of a turn follow a second order closely. */
const TURN_STEPS = 120;

/**
 * Every force and couple over one turn, for plots over the crank and in the round; undefined where figures are lacking. `steps`: places
 * of the turn.
 */
export function shakingTurn(makeup: Makeup, steps = TURN_STEPS): ShakingTurn | undefined {
  const shaken = shakenOf(new Look(makeup), makeup.engine);
  if (shaken === undefined) return undefined;
  const { throws, sizes, about, zero, placed } = shaken;
  const shaking = shakingOf(throws, sizes, about);
  const angles = Array.from({ length: steps + 1 }, (_, step) => (2 * Math.PI * step) / steps);
  const exact = angles.flatMap((angle) => {
    const at = shakeAt(throws, sizes, about, angle + zero);
    return at.ok ? [at.value] : [];
  });
  const harmonics = HARMONICS.filter(({ scale }) => placed || scale === 'force').map(({ key, name, of, scale }) =>
    vector(
      key,
      name,
      scale,
      angles.map((angle) => harmonicAt(shaking[of] as Harmonic, angle + zero)),
    ),
  );
  const wholes = [
    vector(
      'whole-force',
      'whole force',
      'force',
      exact.map(({ force }) => force),
    ),
    ...(placed
      ? [
          vector(
            'whole-couple',
            'whole couple',
            'couple',
            exact.map(({ couple }) => couple),
          ),
        ]
      : []),
  ];
  return { angles, vectors: [...harmonics, ...wholes] };
}

const vector = (
  key: string,
  name: string,
  scale: 'force' | 'couple',
  points: readonly { readonly re: number; readonly im: number }[],
): TurningVector => ({
  key,
  name,
  quantity: scale === 'force' ? 'force' : 'torque',
  up: points.map(({ re }) => re),
  across: points.map(({ im }) => im),
});
