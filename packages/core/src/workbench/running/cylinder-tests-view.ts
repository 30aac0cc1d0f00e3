/** Compression and leakage of all cylinders side by side, with the rule that holds and what the picture points to. */
import {
  CLEAR_RISE,
  type CompressionOfCylinder,
  type CompressionTest,
  type CylinderFinding,
  compressionTest,
  HEARD,
  HEARD_PLACES,
  type LeakageOfCylinder,
  leakageTest,
  percentOf,
} from '../../plan/index.js';
import type { Bench } from '../bench.js';
import type { CitedWords, CompressionRowView, CylinderTestsView, LeakageRowView } from '../running-views.js';
import { ofBuilt } from '../work/built-engine.js';
import { planAt } from '../work/work-plan.js';
import { cautionsOf, factsAt, givenOf } from './facts-at.js';

const UNITS = ['bar', 'psi', 'kPa', 'kgf/cm2'] as const;

/** Both tests of the engine as it was found, and once it was built of that one alone: nothing of the old engine stands beside it. */
export function cylinderTestsView(bench: Bench): CylinderTestsView {
  const built = ofBuilt(bench, planAt(bench));
  const facts = factsAt(bench).filter(({ entry }) => built?.(entry) ?? true);
  const compression = compressionTest(bench.engine, facts);
  const leakage = leakageTest(bench.engine, facts);
  const ask = askOf(compression);
  const share = bench.engine.running?.compression?.share?.value;
  return {
    title: 'Compression and leakage',
    compression: {
      rule: withPrinted(compression),
      ...(share !== undefined && { share }),
      verdict: compression.verdict,
      words: compression.words,
      rows: compression.cylinders.map(compressionRow),
      findings: compression.findings.map(findingView),
      next: nextWords(compression, ask),
      ...(ask && { ask }),
      units: UNITS,
    },
    leakage: {
      rule: leakage.rule,
      verdict: leakage.verdict,
      words: leakage.words,
      rows: leakage.cylinders.map(leakageRow),
      units: UNITS,
      heard: HEARD_PLACES.map((id) => ({ id, ...HEARD[id] })),
    },
    doubts: [...compression.doubts, ...leakage.doubts],
    cautions: cautionsOf(bench, ['leak-down']),
  };
}

/** The rule, and beside it what the maker prints for a sound engine. */
const withPrinted = ({ rule, printed }: CompressionTest): CitedWords =>
  printed === undefined ? rule : { ...rule, words: `${rule.words}; printed for a sound engine: ${printed}` };

/** The next reading that is wanted: dry of those unread, then wet of those that are low. */
function askOf({ missing, findings }: CompressionTest): CylinderTestsView['compression']['ask'] {
  const [unread] = missing;
  if (unread !== undefined) return { cylinder: unread, wet: false };
  const wanted = findings.find(({ cause }) => cause === 'wet test wanted')?.cylinders[0];
  return wanted === undefined ? undefined : { cylinder: wanted, wet: true };
}

function nextWords({ cylinders }: CompressionTest, ask: CylinderTestsView['compression']['ask']): string {
  if (ask === undefined) return '';
  if (ask.wet)
    return `Cylinder ${ask.cylinder} wet: about 15 mL of oil through the plug hole, a few turns, then read it again.`;
  const begun = cylinders.some(({ dry }) => dry !== undefined);
  const how = begun ? '' : ' Warm engine, all plugs out, throttle open, battery strong, the same strokes for each.';
  return `Read cylinder ${ask.cylinder} dry.${how}`;
}

function compressionRow({ cylinder, bank, dry, wet, share, verdict }: CompressionOfCylinder): CompressionRowView {
  const rise =
    dry && wet && dry.data.reading.value > 0 ? wet.data.reading.value / dry.data.reading.value - 1 : undefined;
  const says = [...(verdict === 'out' ? ['low'] : []), ...(rise === undefined ? [] : [`wet ${riseWords(rise)}`])].join(
    '; ',
  );
  return {
    cylinder,
    bank,
    ...(dry && { dry: { ...givenOf(dry), text: dry.data.reading.text } }),
    ...(wet && { wet: { ...givenOf(wet), text: wet.data.reading.text } }),
    share: share === undefined ? '' : percentOf(share),
    ...(share !== undefined && { bar: share }),
    verdict,
    says,
  };
}
const riseWords = (rise: number): string =>
  rise >= CLEAR_RISE ? `rises by ${percentOf(rise)}` : `does not rise clearly (${percentOf(Math.max(0, rise))})`;

const CAUSES: Readonly<Record<CylinderFinding['cause'], string>> = {
  'rings or bore': 'Oil sealed it: rings, piston or bore.',
  'valve or gasket': 'Oil changed nothing: a valve, else the head gasket or a crack.',
  'gasket between neighbours': 'Two low neighbours, and oil changed nothing: the head gasket between them.',
  'wet test wanted': 'Low: a wet test tells rings from valves.',
};
const findingView = ({ cylinders, cause }: CylinderFinding) => ({
  cylinders,
  words: `${cylinders.length > 1 ? 'Cylinders' : 'Cylinder'} ${cylinders.join(' and ')}: ${CAUSES[cause]}`,
  cause,
});

function leakageRow({ cylinder, bank, read, leak, verdict, means }: LeakageOfCylinder): LeakageRowView {
  const heard = read?.data.heard;
  return {
    cylinder,
    bank,
    ...(read && { read: { ...givenOf(read), text: `${read.data.held.text} of ${read.data.supply.text}` } }),
    leak: leak === undefined ? '' : percentOf(leak),
    verdict,
    says: heard === undefined ? '' : `heard ${HEARD[heard].words}: ${means}`,
  };
}
