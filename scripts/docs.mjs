/**
 * Writes what can be read off the code: the catalogue of calculations, the JSON Schema of the sheet, the help of every
 * command. `--check` writes nothing and fails where a page is not what the code says now.
 */
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { commandHelp } from '@gudgeon/cli';
import { catalogue, decisions, pageOf } from '@gudgeon/core/calc';
import { sheetJsonSchema } from '@gudgeon/core/engine/load';
import { mutationText } from './parts/mutation-page.mjs';
import { inRoot } from './parts/root.mjs';

const checks = checksByCalculation();
const pages = {
  'docs/catalogue.md': catalogueText(),
  'docs/commands.md': commandsText(),
  'docs/mutation.md': mutationText(JSON.parse(readFileSync(inRoot('docs/mutation.json'), 'utf8'))),
  'docs/schema/sheet.schema.json': `${JSON.stringify(sheetJsonSchema(), null, 2)}\n`,
};
const check = process.argv.includes('--check');
const stale = Object.entries(pages).filter(([path, text]) => current(path) !== text);

for (const [path, text] of stale) {
  if (check) console.error(`docs: ${path} is not what the code says; run npm run docs`);
  else write(path, text);
}
console.log(`docs: ${Object.keys(pages).length} pages, ${stale.length} ${check ? 'stale' : 'written'}`);
process.exit(check && stale.length > 0 ? 1 : 0);

function current(path) {
  try {
    return readFileSync(inRoot(path), 'utf8');
  } catch {
    return undefined;
  }
}

function write(path, text) {
  mkdirSync(dirname(inRoot(path)), { recursive: true });
  writeFileSync(inRoot(path), text);
}

function catalogueText() {
  const all = catalogue.map(pageOf);
  const subjects = [...new Set(all.map((page) => page.subject))];
  const contents = subjects.map((subject) => {
    const its = all.filter((page) => page.subject === subject);
    return `- **${subject}** (${its.length}): ${its.map((page) => `[${page.id}](#${anchor(page.id)})`).join(', ')}`;
  });
  return [
    '# Catalogue of calculations',
    '',
    'Made from the declarations in `packages/core/src/calc`; do not edit. Every example below is computed by a test to the digits stated.',
    '',
    `${all.length} calculations.`,
    '',
    ...contents,
    '',
    ...decisionsText(),
    ...all.flatMap(calculationText),
  ].join('\n');
}

/** The published rows that each calculation passes, from the case files that the tests run. */
function checksByCalculation() {
  const byId = new Map();
  const files = readdirSync(inRoot('cases')).filter((name) => name.endsWith('.json'));
  for (const name of files.sort()) {
    const { cases = [] } = JSON.parse(readFileSync(inRoot('cases', name), 'utf8'));
    for (const row of Array.isArray(cases) ? cases : []) {
      if (typeof row.calculation !== 'string') continue;
      byId.set(row.calculation, [...(byId.get(row.calculation) ?? []), row]);
    }
  }
  return byId;
}

function checkLines(id) {
  const rows = checks.get(id) ?? [];
  if (rows.length === 0)
    return ['Checked by its example and by tests beside the code; no published row is kept for it.', ''];
  const lines = rows.map(
    (row) => `- ${row.case}${row.disagrees === undefined ? '' : ' (the print disagrees; ours is kept, see the case)'}`,
  );
  return ['Passes these rows of `cases/`:', '', ...lines, ''];
}

function decisionsText() {
  return [
    '## Which decision rests on which calculation',
    '',
    '| decision | question | calculations |',
    '|---|---|---|',
    ...Object.entries(decisions).map(
      ([key, { question, calculations, note }]) =>
        `| ${key} | ${cell(question)} | ${calculations.map((id) => `[${id}](#${anchor(id)})`).join(', ')}${note === undefined ? '' : ` ${cell(note)}`} |`,
    ),
    '',
  ];
}

function anchor(id) {
  return id.toLowerCase().replace(/[^a-z0-9 -]/g, '');
}

function cell(text) {
  return String(text).replaceAll('|', '\\|').replaceAll('\n', ' ');
}

function calculationText(page) {
  return [
    `## ${page.id}`,
    '',
    `**${page.title}.** ${page.summary}`,
    '',
    `    ${page.formula}`,
    '',
    '| input | symbol | meaning | takes |',
    '|---|---|---|---|',
    ...page.inputs.map(
      (input) =>
        `| \`${input.name}\`${input.required ? '' : ' (optional)'} | ${cell(input.symbol)} | ${cell(input.meaning)} | ${cell(input.takes)} |`,
    ),
    '',
    '| output | symbol | meaning | unit |',
    '|---|---|---|---|',
    ...page.outputs.map(
      (output) => `| \`${output.name}\` | ${cell(output.symbol)} | ${cell(output.meaning)} | ${cell(output.unit)} |`,
    ),
    '',
    ...page.assumptions.map((text) => `- Assumes: ${text}`),
    ...page.sources.map((text) => `- Source: ${text}`),
    '',
    ...checkLines(page.id),
    `Example (${page.example.from}):`,
    '',
    '```json',
    JSON.stringify({ inputs: page.example.inputs, outputs: page.example.outputs }),
    '```',
    '',
  ];
}

function commandsText() {
  return [
    '# Commands',
    '',
    'Made from the command line’s own help; do not edit.',
    '',
    ...commandHelp().flatMap(({ name, help }) => [`## ${name}`, '', '```', help.trimEnd(), '```', '']),
  ].join('\n');
}
