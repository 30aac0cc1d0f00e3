/**
 * The whole invented V8 judged anew from about 1,500 readings, against LibreOffice Calc recalculating a sheet that holds the same readings and
 * a formula for the value, the doubt and the verdict of every size, in the same run. Prints one line. Needs a built core
 * (`npm run build`) and Debian's libreoffice-calc-nogui and python3-uno.
 */
import { readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { assess, inspectionPlan, USUAL_HABITS } from '../packages/core/dist/assess/index.js';
import { loadSheet } from '../packages/core/dist/engine/load/index.js';
import { askTwin, byTurns, mustAgree, need, report, timed } from './twins/compare.mjs';

const NAME = 'recalculation';
const LIMIT = 1;
const RUNS = 50;
const here = dirname(fileURLToPath(import.meta.url));

const sheet = loadSheet(readFileSync(join(here, '..', 'sheets', 'quernside-51-v8.yaml'), 'utf8'));
const engine = sheet.value;
const readings = readingsFor(inspectionPlan(engine));
// Equal habits that are another object each time: nothing of the moment before is kept, so that all the work is done.
const habits = [{ ...USUAL_HABITS }, { ...USUAL_HABITS }];
let turn = 0;
const ours = () => {
  turn = 1 - turn;
  return assess(engine, readings, habits[turn]);
};

need(
  NAME,
  ['libreoffice-calc-nogui', 'python3-uno'],
  '/usr/bin/python3',
  '-c',
  'import uno; import shutil; assert shutil.which("soffice")',
);
const judged = ours();
const twin = sheetOf(judged);
const ask = () => askTwin('/usr/bin/python3', [join(here, 'twins', 'spreadsheet.py')], { runs: RUNS, ...twin });

mustAgree(NAME, twin.total, ask().total, 1e-9);
timed(4 * RUNS, ours); // warm
const times = byTurns(
  () => timed(RUNS, ours),
  () => ask().ms,
);
report(
  NAME,
  `${readings.bySlot.size} readings, ${judged.sizes.size} sizes, ${twin.formulas} formulas`,
  times,
  'LibreOffice Calc',
  LIMIT,
);

/** One reading for each slot about the figure that the sheet expects, the same on every run. */
function readingsFor(plan) {
  let word = 1;
  const noise = () => {
    word = (Math.imul(word, 1664525) + 1013904223) >>> 0;
    return word / 2 ** 32 - 0.5;
  };
  const bySlot = new Map();
  for (const { kind, places } of plan.features)
    for (const { id, stations, expected } of places)
      for (const station of stations) {
        const slot = `${kind.id}/${id}/${station.id}`;
        const value = (expected?.nominal ?? kind.resolution * 20) + noise() * kind.resolution * 2;
        bySlot.set(slot, [
          {
            slot,
            entry: slot,
            text: String(value),
            value,
            occasion: 1,
            at: '2026-03-01T10:00:00+01:00',
            by: 'a fitter',
          },
        ]);
      }
  return { bySlot, before: new Map(), instruments: new Map(), checks: [], choices: [], occasions: new Map() };
}

/** The sheet: a reading and its doubt in the first two columns, value, doubt and verdict of the sizes in the next three. */
function sheetOf({ sizes, findings }) {
  const rowOf = new Map([...readings.bySlot.keys()].map((slot, at) => [slot, at + 1]));
  const held = new Map(findings.map((finding) => [finding.key, finding.held]));
  const made = [...sizes.values()].map((size) => {
    const parts = size.parts.filter(({ key }) => rowOf.has(key));
    const value = parts.map(({ key, sensitivity }) => `${sensitivity}*A${rowOf.get(key)}`).join('+');
    const square = parts.map(({ key, sensitivity }) => `(${sensitivity}*B${rowOf.get(key)})^2`).join('+');
    return { size, value: parts.length === 0 ? '0' : value, square: parts.length === 0 ? '0' : square };
  });
  const count = Math.max(rowOf.size, made.length);
  const all = [...readings.bySlot.values()];
  const cells = Array.from({ length: count }, (_, at) => [
    all[at] ? all[at][0].value : '',
    all[at] ? 1e-6 : '',
    made[at] ? `=${made[at].value}` : '',
    made[at] ? `=SQRT(${made[at].square})` : '',
    made[at] ? verdictOf(held.get(made[at].size.key) ?? [], at + 1) : '',
  ]);
  const measuredBy = ({ size }) =>
    size.parts.reduce((sum, { key, sensitivity }) => sum + sensitivity * (readings.bySlot.get(key)?.[0].value ?? 0), 0);
  const total = made.reduce((sum, one) => sum + measuredBy(one), 0);
  return { cells, sum: `C1:C${made.length}`, total, formulas: 3 * made.length };
}

/** Worst of the verdicts against each window: out, near within twice the doubt, in. */
function verdictOf(all, row) {
  const words = all.map(({ window: { low, high } }) => {
    const room = [low === undefined ? [] : [`C${row}-${low}`], high === undefined ? [] : [`${high}-C${row}`]].flat();
    const least = `MIN(${room.join(';')})`;
    return room.length === 0 ? '"no data"' : `IF(${least}<0;"out";IF(${least}<2*D${row};"near";"in"))`;
  });
  return words.length === 0 ? '="no data"' : `=${words.join('&" "&')}`;
}
