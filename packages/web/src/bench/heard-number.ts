const WORDS: Readonly<Record<string, string>> = {
  zero: '0',
  oh: '0',
  nought: '0',
  one: '1',
  two: '2',
  three: '3',
  four: '4',
  five: '5',
  six: '6',
  seven: '7',
  eight: '8',
  nine: '9',
  point: '.',
  dot: '.',
  comma: '.',
  minus: '-',
};
const isDigits = (word: string): boolean => /^[-−]?(\d+[.,]?\d*|[.,]\d+)$/.test(word);

/**
 * The figure in what was heard, as digits: "zero point zero two five" and "0.025" are both 0.025. Digits are to be said one by one; words such as
 * "fifteen" are too easily "fifty" in a loud room, so they are no figure here. Undefined where anything else stands among the digits, or there is
 * no digit at all: a half-understood figure is none.
 */
export function heardNumber(heard: string): string | undefined {
  const pieces = heard
    .trim()
    .toLowerCase()
    .split(/\s+/)
    .map((word) => (isDigits(word) ? word.replace(',', '.').replace('−', '-') : WORDS[word]));
  const figure = pieces.some((piece) => piece === undefined) ? '' : pieces.join('');
  return /^-?\d*\.?\d+$/.test(figure) ? figure : undefined;
}
