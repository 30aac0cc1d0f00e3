import type { Figure } from '../figure.js';

/** A figure in plain lines for a terminal: title, description, then every place that can be chosen, in order. */
export function figureToText(figure: Figure, columns = 100): string {
  const places = figure.touches.map((touch) => `  - ${touch.name}`);
  return [figure.title, ...wrapped(figure.description, columns), ...places].join('\n');
}
function wrapped(text: string, columns: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines[lines.length - 1];
    if (last !== undefined && last.length + 1 + word.length <= columns) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
