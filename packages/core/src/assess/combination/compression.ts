/** Compression built up part by part for every cylinder, with its doubt and the chance that the wanted window holds. */
import { type Spread, spreadOf } from '../../calc/cylinder/index.js';
import type { CylinderNumber } from '../../engine/index.js';
import { answered, type Naming, type Part, together, told, toldSurely } from './answering.js';
import { closingOf, cylinderNumbers, partValue } from './cylinder-numbers.js';
import { PART_NAMES, ROOM_PARTS, type RoomPart } from './cylinder-room.js';
import { type Computed, computed, difference, type Known, Look, sumOf } from './look.js';
import { figure } from './makeup.js';
import type { Answered, AnsweredFigure, Makeup } from './model.js';

/** One part of the stack over a piston. */
export interface StackPart {
  readonly part: RoomPart;
  readonly name: string;
  readonly volume: number;
  readonly u?: number;
  /** Of the whole room; absent while a part is missing. A piston proud of the deck and a dome have a negative one. */
  readonly share?: number;
}
export interface CylinderStack {
  readonly cylinder: CylinderNumber;
  /** Parts that are known, from the head down. */
  readonly parts: readonly StackPart[];
  readonly clearance?: number;
  readonly swept?: number;
}
export interface CompressionAnswer extends Answered {
  /** For the drawn stack of each cylinder. */
  readonly stacks: readonly CylinderStack[];
}

const NUMBERS: readonly Naming[] = [
  { key: 'ratio', name: 'compression ratio', quantity: 'ratio', low: 'ratio-least', high: 'ratio-most' },
  { key: 'quench', name: 'quench', quantity: 'length', low: 'quench-least', high: 'quench-most' },
  {
    key: 'effective-ratio',
    name: 'effective ratio',
    quantity: 'ratio',
    low: 'effective-ratio-least',
    high: 'effective-ratio-most',
  },
  { key: 'cranking-pressure', name: 'cranking pressure, estimated', quantity: 'pressure' },
  { key: 'deck-clearance', name: 'deck clearance', quantity: 'length' },
  { key: 'clearance', name: 'clearance volume', quantity: 'volume' },
  { key: 'swept', name: 'swept volume', quantity: 'volume' },
  { key: 'closing-rise', name: 'piston above its lowest place at intake closing', quantity: 'length' },
  { key: 'deck-height-left', name: 'deck height left', quantity: 'length', low: 'deck-height-least' },
  { key: 'head-thickness-left', name: 'head thickness left', quantity: 'length', low: 'head-thickness-least' },
];
const SPREAD: Naming = {
  key: 'ratio-spread',
  name: 'spread of the ratio',
  quantity: 'ratio',
  high: 'ratio-spread-most',
};
const DISPLACEMENT: Naming = { key: 'displacement', name: 'displacement', quantity: 'volume' };
const SOURCES = [
  'cylinder.compression-ratio',
  'cylinder.quench',
  'cylinder.effective-ratio',
  'cylinder.cranking-pressure',
  'cylinder.ratio-spread',
];

/**
 * Ratio, quench, effective ratio and what is left of the faces, for each cylinder, and the spread between them. What lacks figures is
 * left out and says which; a part that is small and not given (crevice, pockets) is named as not counted.
 */
export function compressionOf(makeup: Makeup): CompressionAnswer {
  const cylinders = makeup.engine.layout.cylinders.map(({ number }) => number).sort((a, b) => a - b);
  const each = cylinders.map((cylinder) => ({
    cylinder,
    found: computed(makeup, cylinder, (look) => cylinderNumbers(look, cylinder)),
  }));
  const own = each.map(({ cylinder, found }) => cylinderPart(makeup, cylinder, found));
  return { ...together([...own, betweenCylinders(makeup, each)], SOURCES), stacks: each.map(stackOf) };
}

interface OfCylinder {
  readonly cylinder: CylinderNumber;
  readonly found: Computed;
}

function cylinderPart(makeup: Makeup, cylinder: CylinderNumber, found: Computed): Part {
  const figures = NUMBERS.flatMap((naming) => {
    const known = found.values.get(naming.key);
    return known === undefined ? [] : [answered(makeup, naming, known, { cylinder })];
  });
  return {
    figures,
    computed: [found],
    working: workingOf(makeup, cylinder, found),
    cautions: cautionsOf(makeup, cylinder, figures),
  };
}

function workingOf(makeup: Makeup, cylinder: CylinderNumber, { values }: Computed): readonly string[] {
  const parts = ROOM_PARTS.flatMap((part) => {
    const known = values.get(partValue(part));
    return known === undefined ? [] : [`${PART_NAMES[part]} ${told('volume', known.value)}`];
  });
  const [ratio, clearance, swept, effective] = ['ratio', 'clearance', 'swept', 'effective-ratio'].map((key) =>
    values.get(key),
  );
  const built = parts.length === 0 ? [] : [`cylinder ${cylinder}: ${parts.join(' + ')}`];
  if (ratio === undefined || clearance === undefined || swept === undefined) return built;
  const whole = `${built[0]} = ${told('volume', clearance.value)}; (${told('volume', swept.value)} + ${told('volume', clearance.value)}) / ${told('volume', clearance.value)} = ${toldSurely('ratio', ratio)}`;
  if (effective === undefined) return [whole];
  const closing = closingOf(new Look(makeup, cylinder)) ?? 0;
  const from = figure(makeup, 'intake-closes', cylinder)?.from ?? '';
  return [
    whole,
    `cylinder ${cylinder}: intake closes ${told('angle', closing)} after bottom dead centre (${from}); effective ratio ${toldSurely('ratio', effective)}`,
  ];
}

function cautionsOf(makeup: Makeup, cylinder: CylinderNumber, figures: readonly AnsweredFigure[]): readonly string[] {
  const [gasket, bore] = [figure(makeup, 'gasket-bore', cylinder), figure(makeup, 'bore', cylinder)];
  const touches = figures.some(({ key, value }) => key === 'quench' && value <= 0);
  return [
    ...(gasket && bore && gasket.value < bore.value
      ? [`cylinder ${cylinder}: the gasket bore is smaller than the cylinder bore`]
      : []),
    ...(touches ? [`cylinder ${cylinder}: the piston would touch the head`] : []),
    ...(figures.some(({ key }) => key === 'effective-ratio')
      ? ['which lift the intake closing belongs to moves the effective ratio by up to a whole point']
      : []),
    ...(figure(makeup, 'head-cut', cylinder) && figure(makeup, 'chamber-area', cylinder) === undefined
      ? ['a circle of the chamber’s perimeter is the largest area that it can have: the true cut is deeper']
      : []),
  ];
}

function stackOf({ cylinder, found: { values } }: OfCylinder): CylinderStack {
  const clearance = values.get('clearance')?.value;
  const swept = values.get('swept')?.value;
  const parts = ROOM_PARTS.flatMap((part): StackPart | readonly StackPart[] => {
    const known = values.get(partValue(part));
    if (known === undefined) return [];
    const share = clearance !== undefined && clearance > 0 ? { share: known.value / clearance } : {};
    return [
      { part, name: PART_NAMES[part], volume: known.value, ...(known.u !== undefined && { u: known.u }), ...share },
    ];
  });
  return {
    cylinder,
    parts,
    ...(clearance !== undefined && { clearance }),
    ...(swept !== undefined && { swept }),
  };
}

/** Spread and displacement, once every cylinder has its number. */
function betweenCylinders(makeup: Makeup, each: readonly OfCylinder[]): Part {
  const all = (key: string): readonly Known[] => each.flatMap(({ found }) => found.values.get(key) ?? []);
  const [ratios, swept] = [all('ratio'), all('swept')];
  const whole = ratios.length === each.length && each.length > 1;
  const { leastAt, mostAt } = farthest(whole ? ratios.map(({ value }) => value) : [0]);
  const spread = whole ? [answered(makeup, SPREAD, difference(ratios[mostAt - 1]!, ratios[leastAt - 1]!))] : [];
  const total = swept.length === each.length ? [answered(makeup, DISPLACEMENT, sumOf(swept))] : [];
  const [most, least] = [each[mostAt - 1]?.cylinder, each[leastAt - 1]?.cylinder];
  return {
    figures: [...spread, ...total],
    computed: [],
    working: spread.map(
      ({ value }) => `highest ratio: cylinder ${most}, lowest: cylinder ${least}, ${told('ratio', value)} apart`,
    ),
  };
}

/** Places of lowest and highest; of cylinders that are all alike two different ones, so that the doubt of both counts. */
function farthest(values: readonly number[]): Pick<Spread, 'leastAt' | 'mostAt'> {
  const { leastAt, mostAt } = spreadOf(values);
  return leastAt === mostAt && values.length > 1 ? { leastAt: 1, mostAt: 2 } : { leastAt, mostAt };
}
