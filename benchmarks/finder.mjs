/**
 * A million combinations of parts for an invented vee eight: the exact search, with its three rankings, against loops that try
 * every one with the same formulas, in the same run, and against numpy where it can be had. Prints a line for each. Needs a built
 * core (`npm run build`).
 */
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { advance, answerOf, beginSearch } from '../packages/core/dist/assess/combination/finder/index.js';
import { askTwin, byTurns, mustAgree, need, report, timed } from './twins/compare.mjs';
import { enumerate } from './twins/every-combination.mjs';

const NAME = 'finder';
const LIMIT = 0.5;
const RUNS = 3;
const mm = (n) => n / 1000;
const cm3 = (n) => n / 1e6;
const degrees = (n) => (n * Math.PI) / 180;
const row = (from, to, step) => Array.from({ length: Math.round((to - from) / step) + 1 }, (_, at) => from + at * step);

const valve = (centreline) => ({
  angle: degrees(18),
  crown: 'parallel-pocket',
  gapAtTop: mm(4.6),
  lash: 0,
  lobe: {
    kind: 'modelled',
    peakLift: mm(7.9),
    halfDuration: degrees(138),
    exponents: [6, 8, 10],
    centreline: degrees(centreline),
  },
  springHeight: mm(44),
  bindHeight: mm(28),
  retainerRoom: mm(15),
});
/** Invented sizes, as in the tests. */
const input = {
  fixed: {
    stroke: mm(88),
    rodLength: mm(145),
    cylinders: row(1, 8, 1).map((number) => ({
      number,
      bank: number % 2 === 1 ? 'left' : 'right',
      bore: mm(102),
      deckHeight: mm(number % 2 === 1 ? 229.4 : 229.5),
      chamber: cm3(68),
      other: cm3(1),
    })),
    piston: { compressionHeight: mm(39.5), crownVolume: cm3(5) },
    gasket: { thickness: mm(1.2), bore: mm(104) },
    chamberArea: 6800e-6,
    headThickness: mm(120),
    bankAngle: degrees(45),
    faceAngle: degrees(55),
    zeroLashPushrod: mm(198),
    intake: valve(108),
    exhaust: valve(112),
  },
  offer: {
    gaskets: {
      options: [0.7, 1, 1.3].map((one, at) => ({ thickness: mm(one), bore: mm(104), price: 90 - 20 * at })),
    },
    pistons: {
      options: [
        { compressionHeight: mm(39.5), crownVolume: cm3(8), price: 600 },
        { compressionHeight: mm(39.9), crownVolume: cm3(3), price: 640 },
      ],
    },
    deckCut: { limit: mm(0.4), step: mm(0.1), each: true, price: 80 },
    headCut: { limit: mm(0.6), step: mm(0.2), each: true, price: 70 },
    camAdvance: { from: degrees(-8), to: degrees(8), step: degrees(1), price: 20 },
    rockerRatio: {
      values: [
        { value: 1.5, price: 0 },
        { value: 1.6, price: 250 },
      ],
    },
    pushrods: { from: mm(196), to: mm(200), step: mm(0.2), price: 110 },
  },
  wanted: {
    ratio: { low: 9.8, high: 10.2 },
    quench: { low: mm(0.9), high: mm(1.2) },
    valveRoom: { intake: mm(2), exhaust: mm(2.5) },
    deckHeight: mm(229),
    headThickness: mm(119.2),
    intakeShift: mm(1),
    bindRoom: { intake: mm(1.5), exhaust: mm(1.5) },
    retainerRoom: { intake: mm(1.2), exhaust: mm(1.2) },
    preload: { low: mm(0.5), high: mm(1.5) },
  },
  keep: 5,
};

function search() {
  const begun = beginSearch(structuredClone(input));
  if (!begun.ok) throw new Error(JSON.stringify(begun.fault));
  while (!advance(begun.value, 100_000).done);
  return answerOf(begun.value);
}
const every = () => enumerate(structuredClone(input));

const [found, tried] = [search(), every()];
mustAgree(NAME, found.raw, tried.raw, 0);
mustAgree(NAME, found.feasible, tried.feasible, 0);
mustAgree(NAME, found.best['least-metal'][0].metal, tried.metal, 1e-6);
mustAgree(NAME, found.best['least-cost'][0].cost, tried.cost, 1e-9);
mustAgree(NAME, found.best['most-margin'][0].worst, tried.worst, 1e-6);
const times = byTurns(
  () => timed(RUNS, search),
  () => timed(RUNS, every),
);
const what = `${found.raw} combinations, ${found.feasible} keep everything, three rankings`;
report(NAME, what, times, 'every one by loops', LIMIT);

need(NAME, ['python3-numpy'], 'python3', '-c', 'import numpy');
const script = join(dirname(fileURLToPath(import.meta.url)), 'twins', 'every_combination.py');
const ask = () => askTwin('python3', [script], { runs: RUNS, ...tried.tables });
mustAgree(NAME, found.feasible, ask().feasible, 0);
report(
  `${NAME}-numpy`,
  `${what}; numpy counts only, from tables ready made`,
  byTurns(
    () => timed(RUNS, search),
    () => ask().ms,
  ),
  'numpy',
  2,
);
