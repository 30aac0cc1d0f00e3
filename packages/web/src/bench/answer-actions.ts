import type { Answer } from '@gudgeon/core/workbench';
import type { Action } from '../keys/index.js';

/** Turns the answers that the core offers into actions; the usual one also takes Enter and Space, so a pedal works. */
export function answerActions(answers: readonly Answer[], give: (answer: Answer) => void): readonly Action[] {
  const usual = answers.find((answer) => !answer.unlike);
  return answers.map((answer) => ({
    name: answer.id,
    label: answer.label,
    keys: [...new Set([...(answer === usual ? ['Enter', ' '] : []), answer.key])].filter((key) => key !== ''),
    available: true,
    run: () => give(answer),
  }));
}
