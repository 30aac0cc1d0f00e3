/** The page of mutation scores, from the figures that scripts/mutation.mjs keeps in docs/mutation.json. */

/** Share of the changes that a test noticed; a change that made a test run for ever is noticed too. */
export const scoreOf = ({ killed, timeout, survived, uncovered }) =>
  (100 * (killed + timeout)) / (killed + timeout + survived + uncovered);

const sum = (rows, name) => rows.reduce((total, row) => total + row[name], 0);

const rowText = (name, row) =>
  `| ${name} | ${scoreOf(row).toFixed(1)} % | ${row.killed + row.timeout} | ${row.survived} | ${row.uncovered} | ${row.tests ?? 'its own'} | ${row.measured} |`;

export function mutationText(figures) {
  const rooms = Object.entries(figures);
  const ofCalc = rooms.filter(([room]) => room.startsWith('calc/')).map(([, row]) => row);
  const whole = Object.fromEntries(
    ['killed', 'timeout', 'survived', 'uncovered'].map((name) => [name, sum(ofCalc, name)]),
  );
  const last = ofCalc
    .map(({ measured }) => measured)
    .sort()
    .at(-1);
  return [
    '# Mutation score',
    '',
    'Made from docs/mutation.json; do not edit. `npm run mutation` changes the code of `quantity` and `calc` in small ways and counts how many of the',
    'changes a test notices; it takes hours on two cores, so `npm run mutation -- calc/crank calc/cam` measures some rooms and keeps the figures of the others.',
    '',
    'A room answers for itself: its changes are tried with its own tests, the reference rows of its entries among them.',
    'Left out: entries of the catalogue (data sheets, whose examples a test computes), index files, and values made once when a file is',
    'loaded. The fuzzers and the walk that compares derivatives with random draws do not take part, so the true score is a little higher.',
    '',
    '| Room | Score | Noticed | Not noticed | Never run | Tests | Measured |',
    '|---|---|---|---|---|---|---|',
    ...rooms.map(([room, row]) => rowText(`\`${room}\``, row)),
    rowText('**all of `calc`**', { ...whole, tests: '', measured: last }),
    '',
  ].join('\n');
}
