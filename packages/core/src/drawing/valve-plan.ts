import { type Bank, type CylinderNumber, type Engine, type ValveId, valvesOf } from '../engine/index.js';

/** Every valve of the engine in plan, front at the top, as slots of a grid: what lies before what, and on which side. */
export interface ValveSlot {
  readonly valve: ValveId;
  /** From the front of its bank, from 0; a half where a shorter line stands beside a longer one. */
  readonly row: number;
  readonly column: number;
}
export interface BankPlan {
  readonly bank: Bank;
  readonly slots: readonly ValveSlot[];
  readonly cylinders: readonly {
    readonly number: CylinderNumber;
    readonly firstRow: number;
    readonly lastRow: number;
  }[];
  readonly rows: number;
  readonly columns: number;
}
export interface ValvePlan {
  /** From the left side of the page to the right: the engine's own left bank lies left. */
  readonly banks: readonly BankPlan[];
  readonly note: string;
}
interface Lying {
  readonly valve: ValveId;
  readonly along: number;
  readonly across: number;
}

/**
 * Slots from the valve places of the heads. Valves whose places are not given are drawn in line when a cylinder has two,
 * else intake and exhaust side by side, and the note says so.
 */
export function valvePlan(engine: Engine): ValvePlan {
  const valves = valvesOf(engine);
  const places = new Map(engine.heads.flatMap((head) => head.valves.map((valve) => [keyOf(valve), valve.at] as const)));
  const known = valves.every((valve) => places.has(keyOf(valve)));
  const lying = valves.map((valve): Lying => {
    const place = known ? places.get(keyOf(valve)) : undefined;
    return place === undefined ? assumedPlace(valve) : { valve, along: place.x, across: place.y };
  });
  const inLine = known ? liesInLine(lying) : valves.length <= 2 * engine.layout.cylinders.length;
  const banks = [...engine.layout.banks]
    .sort((a, b) => b.angle - a.angle)
    .map((bank) => bankPlan(engine, bank, lying, inLine))
    .filter((plan) => plan.cylinders.length > 0);
  return {
    banks,
    note:
      known || valves.length === 0
        ? ''
        : 'The sheet does not give the places of all valves: their order along the head is assumed.',
  };
}
const keyOf = ({ cylinder, kind, index }: ValveId): string => `${cylinder} ${kind} ${index}`;
const assumedPlace = (valve: ValveId): Lying => ({
  valve,
  along: valve.index + (valve.kind === 'exhaust' ? 0.5 : 0),
  across: valve.kind === 'exhaust' ? 1 : -1,
});
/** One row of valves along the head: within each cylinder they spread more along it than across it. */
function liesInLine(lying: readonly Lying[]): boolean {
  const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values);
  return (
    [...new Set(lying.map((each) => each.valve.cylinder))].every((cylinder) => {
      const own = lying.filter((each) => each.valve.cylinder === cylinder);
      return spread(own.map((each) => each.across)) < spread(own.map((each) => each.along));
    }) && lying.length <= 2 * new Set(lying.map((each) => each.valve.cylinder)).size
  );
}
function bankPlan(engine: Engine, bank: Bank, lying: readonly Lying[], inLine: boolean): BankPlan {
  const numbers = engine.layout.cylinders
    .filter((each) => each.bank === bank.id)
    .sort((a, b) => a.place - b.place)
    .map((each) => each.number);
  // Same rule as the plan of a head: the exhaust lies on the outer side of its bank.
  const exhaustColumn = bank.angle < -1e-6 ? 1 : 0;
  const slots: ValveSlot[] = [];
  const cylinders: BankPlan['cylinders'][number][] = [];
  let row = 0;
  for (const number of numbers) {
    const own = lying.filter((each) => each.valve.cylinder === number).sort((a, b) => a.along - b.along);
    const lines = inLine ? [own] : [own.filter(isKind('exhaust')), own.filter(isKind('intake'))];
    const rows = Math.max(1, ...lines.map((line) => line.length));
    lines.forEach((line, i) => {
      const column = inLine ? 0 : i === 0 ? exhaustColumn : 1 - exhaustColumn;
      // A shorter line stands in the middle beside the longer one.
      const start = row + (rows - line.length) / 2;
      for (const [k, { valve }] of line.entries()) slots.push({ valve, row: start + k, column });
    });
    cylinders.push({ number, firstRow: row, lastRow: row + rows - 1 });
    row += rows;
  }
  return {
    bank,
    slots: slots.sort((a, b) => a.row - b.row || a.column - b.column),
    cylinders,
    rows: row,
    columns: inLine ? 1 : 2,
  };
}
const isKind = (kind: ValveId['kind']) => (each: Lying) => each.valve.kind === kind;
