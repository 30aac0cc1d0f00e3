import type { Alternative, Assessment, Decision } from '@gudgeon/core/assess';

const counted = (count: number, one: string): string => `${count} ${count === 1 ? one : `${one}s`}`;
const headOf = ({ id, scope, title }: Decision): string => `${title} (${id}/${scope})`;

/** Decisions as data; lengths in figures as they are shown, windows of orders in SI units. */
export const decisionsAsJson = (
  { engine, readings }: Assessment,
  decisions: readonly Decision[],
  questions: readonly string[],
) => ({ engine: engine.name, readings: readings.bySlot.size, questions, decisions });

/** "BLOCKED" for what cannot be taken, else the verdict; a star before the recommended one. */
function lineOf({ id, words, verdict, possible }: Alternative, recommended: string | undefined): string {
  const state = possible ? verdict.toUpperCase() : 'BLOCKED';
  return `  ${id === recommended ? '*' : ' '} ${state.padEnd(11)} ${id}: ${words}`;
}

function inFull(alternative: Alternative, recommended: string | undefined): readonly string[] {
  const { figures, against, orders, buys } = alternative;
  return [
    lineOf(alternative, recommended),
    ...figures.map(({ name, text }) => `      ${name}: ${text}`),
    ...against.map((text) => `      but: ${text}`),
    ...orders.map(({ operation, part }) => `      order: ${operation}, ${part}`),
    ...buys.map(({ part, size, count, for: use }) => `      buy: ${count} x ${part}, ${size}, for ${use}`),
  ];
}

const section = (name: string, lines: readonly string[]): readonly string[] =>
  lines.length === 0 ? [] : [`  ${name}:`, ...lines.map((line) => `      ${line}`)];

/** One decision in full. */
export function decisionAsText(decision: Decision): string {
  const { question, missing, alternatives, recommended, proof, working, cautions } = decision;
  return [
    headOf(decision),
    `  ${question}`,
    ...section('waits for', missing),
    ...alternatives.flatMap((one) => inFull(one, recommended)),
    ...section('proof', proof === '' ? [] : [proof]),
    ...section('working', working),
    ...section('cautions', cautions),
  ].join('\n');
}

/** All decisions, one line an alternative; those that wait for readings come last, with what they wait for. */
export function decisionsAsText(
  { engine, readings }: Assessment,
  decisions: readonly Decision[],
  questions: readonly string[],
): string {
  const open = decisions.filter(({ missing }) => missing.length === 0);
  const waiting = decisions.filter(({ missing }) => missing.length > 0);
  return [
    `${engine.name}: ${counted(readings.bySlot.size, 'reading')}`,
    `${counted(open.length, 'decision')} can be taken, ${waiting.length} wait`,
    ...open.flatMap((one) => [
      '',
      headOf(one),
      ...one.alternatives.map((alternative) => lineOf(alternative, one.recommended)),
      ...(one.proof === '' ? [] : [`    ${one.proof}`]),
    ]),
    ...(waiting.length === 0 ? [] : ['', 'waiting:']),
    ...waiting.map((one) => `  ${headOf(one)}: ${one.missing.join('; ')}`),
    ...(questions.length === 0 ? [] : ['', 'to look at again:', ...questions.map((question) => `  ${question}`)]),
  ].join('\n');
}
