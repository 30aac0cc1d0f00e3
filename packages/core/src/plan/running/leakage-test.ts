/** Leakage of every cylinder, read against the largest that the sheet allows. */
import { atMost, LEAK_PATHS, leakage, type Verdict } from '../../calc/metrology/index.js';
import type { CylinderNumber, Engine } from '../../engine/model.js';
import { byBank, percentOf } from './banks.js';
import { factsOf, type HeardPlace, type RunningFact, type RunningFactOf } from './facts.js';

type Leaked = RunningFactOf<'leakage-read'>;

/** Two supplies differ when they are farther apart than this share. Common practice, no source. */
const SAME_SUPPLY = 0.03;

export interface LeakageOfCylinder {
  readonly cylinder: CylinderNumber;
  readonly bank: string;
  readonly read?: Leaked;
  readonly leak?: number;
  readonly verdict: Verdict;
  readonly means?: string;
}
export interface LeakageTest {
  readonly rule: { readonly words: string; readonly origin: string };
  readonly verdict: Verdict;
  readonly words: string;
  readonly cylinders: readonly LeakageOfCylinder[];
  readonly missing: readonly CylinderNumber[];
  readonly doubts: readonly string[];
}

/** Where the air is heard, and what that means. Common practice, no source. */
export const HEARD: Readonly<Record<HeardPlace, { readonly words: string; readonly means: string }>> = {
  intake: { words: 'in the intake', means: LEAK_PATHS.intake },
  exhaust: { words: 'in the exhaust', means: LEAK_PATHS.exhaust },
  crankcase: { words: 'at the oil filler', means: LEAK_PATHS['oil-filler'] },
  coolant: { words: 'bubbles in the coolant', means: LEAK_PATHS.coolant },
  neighbour: { words: 'in the cylinder beside it', means: LEAK_PATHS.neighbour },
  plug: { words: 'at the adapter in the plug hole', means: 'the adapter leaks: tighten it and read again' },
};

/**
 * Leakage of each cylinder, (supply − held)/supply, against the largest that the sheet allows (inclusive). Without a limit there is no verdict. A
 * leak at the tester's own adapter is no leak of the engine: no data. Source: service manual (read), reference row O-41.
 */
export function leakageTest(engine: Engine, facts: readonly RunningFact[]): LeakageTest {
  const most = engine.running?.leakageMost;
  const all = factsOf(facts, 'leakage-read');
  const cylinders = byBank(engine)
    .flat()
    .map(({ number, bank }) => leakageOf(number, bank, all, most?.value));
  const missing = cylinders.filter(({ read }) => read === undefined).map(({ cylinder }) => cylinder);
  const is = (verdict: Verdict) => cylinders.filter((one) => one.verdict === verdict);
  const verdict: Verdict =
    is('out').length > 0 ? 'out' : is('in').length === cylinders.length && cylinders.length > 0 ? 'in' : 'no data';
  const worst = cylinders.filter((one) => one.leak !== undefined).sort((a, b) => b.leak! - a.leak!)[0];
  return {
    rule: {
      words: most === undefined ? 'the sheet gives no limit' : `no more than ${most.text} in any cylinder`,
      origin: most?.from.text ?? '',
    },
    verdict,
    words: [
      ...(worst === undefined ? [] : [`worst is cylinder ${worst.cylinder} with ${percentOf(worst.leak!)}`]),
      ...(missing.length === 0 ? [] : [`not read yet: ${missing.join(', ')}`]),
    ].join('; '),
    cylinders,
    missing,
    doubts: leakageDoubts(cylinders.flatMap(({ read }) => read ?? [])),
  };
}

function leakageOf(
  number: CylinderNumber,
  bank: string,
  all: readonly Leaked[],
  most: number | undefined,
): LeakageOfCylinder {
  const read = all.findLast(({ data }) => data.cylinder === number);
  if (read === undefined) return { cylinder: number, bank, verdict: 'no data' };
  const { supply, held, heard } = read.data;
  const leak = leakage(supply.value, held.value);
  const unknown = most === undefined || heard === 'plug';
  return {
    cylinder: number,
    bank,
    read,
    leak,
    verdict: unknown ? 'no data' : atMost(leak, most) ? 'in' : 'out',
    ...(heard && { means: HEARD[heard].means }),
  };
}
function leakageDoubts(read: readonly Leaked[]): readonly string[] {
  const testers = new Set(read.map(({ data }) => data.tester ?? ''));
  const supplies = read.map(({ data }) => data.supply.value);
  const apart =
    supplies.length > 0 && Math.max(...supplies) - Math.min(...supplies) > SAME_SUPPLY * Math.max(...supplies);
  return [
    ...(testers.size > 1
      ? ['Read with more than one tester: their openings differ, so their figures cannot be compared.']
      : []),
    ...(apart ? ['The supply was not the same for all cylinders: set it once, then read them all.'] : []),
  ];
}
