/** Valve springs of the combination: each measured one by itself, else one answer for intake and one for exhaust. */
import { commonHeight } from '../../calc/selection/index.js';
import { loadShares } from '../../calc/valvetrain/index.js';
import { figureParts, type ValveId, type ValveKind, valveOfKey } from '../../engine/index.js';
import type { Force, Length, Stiffness } from '../../quantity/index.js';
import { answered, type Naming, type Of, type Part, together, told, toldSurely } from './answering.js';
import type { MeasuredLobes } from './lobe.js';
import { type Computed, computed, difference, type Known } from './look.js';
import { figure, type Spot, valvesWith } from './makeup.js';
import type { Answered, Makeup } from './model.js';
import { VALVE_KINDS } from './sizes-as-figures.js';
import { springNumbers } from './spring-numbers.js';

const NUMBERS: readonly Naming[] = [
  { key: 'seat-load', name: 'load closed', quantity: 'force', low: 'seat-load-least', high: 'seat-load-most' },
  { key: 'open-load', name: 'load at full lift', quantity: 'force', high: 'open-load-most' },
  { key: 'rate', name: 'rate', quantity: 'stiffness' },
  { key: 'height', name: 'installed height', quantity: 'length' },
  { key: 'lift', name: 'valve lift', quantity: 'length' },
  {
    key: 'bind-margin',
    name: 'room to coil bind',
    quantity: 'length',
    low: 'bind-margin-least',
    high: 'bind-margin-most',
  },
  { key: 'retainer-margin', name: 'room under the retainer', quantity: 'length', low: 'retainer-room-least' },
  { key: 'moving-mass', name: 'moving mass at the valve', quantity: 'mass' },
  { key: 'nose-acceleration', name: 'sharpest acceleration over the lobe', quantity: 'acceleration' },
  { key: 'load-needed', name: 'load that the lobe needs at most', quantity: 'force' },
  {
    key: 'follow-margin',
    name: 'spring load over the load needed, least over the lobe',
    quantity: 'ratio',
    low: 'follow-margin-least',
  },
  {
    key: 'separation-speed',
    name: 'speed at which the gear would part',
    quantity: 'angular-speed',
    low: 'highest-speed',
  },
  { key: 'surge', name: 'surge of the spring', quantity: 'frequency' },
  { key: 'surge-multiple', name: 'surge over the speed of the cam', quantity: 'ratio' },
];
const SOURCES = [
  'valvetrain.spring-loads',
  'valvetrain.spring-rate-from-loads',
  'valvetrain.moving-mass',
  'valvetrain.follow-force',
  'valvetrain.separation-speed',
  'valvetrain.spring-surge',
];
/** Figures of which one for each valve makes an answer for each. */
const OWN = ['spring-installed-height', 'spring-load-closed', 'spring-load-open'] as const;

/**
 * Loads, rooms, surge and the speed to which each spring holds its gear. `lobes` are measured lifts over the crank; without them the
 * lobe is modelled from the card, and the answer says so.
 */
export function springsOf(makeup: Makeup, lobes?: MeasuredLobes): Answered {
  const parts = VALVE_KINDS.flatMap((kind) => {
    const spots: readonly Spot[] = ownValves(makeup, kind);
    const each = (spots.length === 0 ? [kind] : spots).map((spot) => springPart(makeup, kind, spot, lobes));
    return [...each.map(({ part }) => part), betweenSprings(makeup, kind, each), nested(makeup, kind)];
  });
  return together(parts, SOURCES);
}

/** One spring alone, without what holds between several of them. */
export const springOf = (makeup: Makeup, kind: ValveKind, spot: Spot, lobes?: MeasuredLobes): Answered =>
  together([springPart(makeup, kind, spot, lobes).part, nested(makeup, kind)], SOURCES);

/** Valves of a kind whose spring has figures of its own, in the order of the engine. */
export function ownValves(makeup: Makeup, kind: ValveKind): readonly ValveId[] {
  const keys = new Set(
    OWN.flatMap((key) => valvesWith(makeup, key, kind).map((one) => figureParts(one.key).place ?? '')),
  );
  return [...keys]
    .flatMap((key) => {
      const read = valveOfKey(key);
      return read.ok ? [read.value] : [];
    })
    .sort((a, b) => a.cylinder - b.cylinder || a.index - b.index);
}

const placeOf = (kind: ValveKind, spot: Spot): Of =>
  typeof spot === 'object'
    ? { kind, cylinder: spot.cylinder, valve: `${spot.cylinder}-${spot.kind}-${spot.index}` }
    : { kind };

interface OfSpring {
  readonly spot: Spot;
  readonly part: Part;
  readonly found: Computed;
}

function springPart(makeup: Makeup, kind: ValveKind, spot: Spot, lobes?: MeasuredLobes): OfSpring {
  const gear = makeup.engine.valveGear?.kind;
  const found = computed(makeup, spot, (look) => springNumbers(look, kind, gear, lobes));
  const of = placeOf(kind, spot);
  const figures = NUMBERS.flatMap((naming) => {
    const known = found.values.get(naming.key);
    return known === undefined ? [] : [answered(makeup, naming, known, of, spot)];
  });
  const modelled = found.values.has('nose-acceleration') && lobes?.[kind] === undefined;
  return {
    spot,
    found,
    part: {
      figures,
      computed: [found],
      working: workingOf(of.valve ?? kind, found),
      cautions: modelled ? [MODELLED, RIGID] : found.values.has('separation-speed') ? [RIGID] : [],
    },
  };
}
const MODELLED = 'the lobe is modelled from the card: measured lifts may ask for more load';
const RIGID = 'rigid gear: real gear bends and parts at a lower speed';

function workingOf(name: string, { values }: Computed): readonly string[] {
  const [seat, rate, lift, open] = ['seat-load', 'rate', 'lift', 'open-load'].map((key) => values.get(key));
  const loads =
    seat === undefined || rate === undefined || lift === undefined || open === undefined
      ? []
      : [
          `${name}: ${told('force', seat.value)} + ${told('stiffness', rate.value)} × ${told('length', lift.value)} = ${toldSurely('force', open)}`,
        ];
  const [height, bind] = [values.get('height'), values.get('bind-margin')];
  if (height === undefined || lift === undefined || bind === undefined) return loads;
  const solid = height.value - lift.value - bind.value;
  return [
    ...loads,
    `${name}: ${told('length', height.value)} - ${told('length', lift.value)} - ${told('length', solid)} = ${toldSurely('length', bind)} to coil bind`,
  ];
}

const SPREAD: Naming = { key: 'height-spread', name: 'spread of the installed heights', quantity: 'length' };
const COMMON: Naming = { key: 'common-height-spread', name: 'spread with the best shims', quantity: 'length' };
const MOST_SHIMS = 2;

/** How far the installed heights lie apart, and how near shims of the sheet's stock bring them together. */
function betweenSprings(makeup: Makeup, kind: ValveKind, each: readonly OfSpring[]): Part {
  const known = each.flatMap(({ found, spot }) => {
    const height = found.values.get('height');
    return height === undefined ? [] : [{ height, spot }];
  });
  if (known.length < 2 || known.length < each.length) return { figures: [], computed: [] };
  const sorted = known.map(({ height }) => height).toSorted((a, b) => a.value - b.value);
  const spread = answered(makeup, SPREAD, difference(sorted.at(-1) as Known, sorted[0] as Known), { kind });
  const sizes = (makeup.engine.stock?.springShims ?? []).map(({ thickness }) => thickness);
  const best = commonHeight({
    heights: known.map(({ height }) => height.value as Length),
    sizes,
    most: sizes.length === 0 ? 0 : MOST_SHIMS,
    window: {},
  });
  if (sizes.length === 0 || !best.ok || best.value === undefined) return { figures: [spread], computed: [] };
  const { stacks, spread: left } = best.value;
  const words = known.map(({ spot }, at) => {
    const shims = stacks[at]!.height;
    return `${placeOf(kind, spot).valve ?? kind} ${shims === 0 ? 'none' : told('length', shims)}`;
  });
  return {
    figures: [spread, answered(makeup, COMMON, { value: left, effects: new Map() }, { kind })],
    computed: [],
    working: [`${kind} springs to one height with shims: ${words.join(', ')}`],
  };
}

const INNER: Naming = { key: 'inner-share', name: 'share of the load on the inner spring', quantity: 'ratio' };

/** Two springs that are compressed together carry in proportion to their rates. */
function nested(makeup: Makeup, kind: ValveKind): Part {
  const [outer, inner] = [figure(makeup, 'spring-rate', kind), figure(makeup, 'inner-spring-rate', kind)];
  if (outer === undefined || inner === undefined) return { figures: [], computed: [] };
  const found = computed(makeup, kind, (look) => {
    const rates = [look.read('spring-rate'), look.read('inner-spring-rate')] as unknown as readonly Stiffness[];
    return { share: loadShares(rates, 1 as Force)[1]?.share };
  });
  const share = found.values.get('share');
  return { figures: share === undefined ? [] : [answered(makeup, INNER, share, { kind })], computed: [found] };
}
