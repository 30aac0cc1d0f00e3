import { done, type Outcome, refused } from '../../quantity/outcome.js';

type Raw = string | number | readonly (string | number)[];

/**
 * Ids that a selection names, in the order written: `1-10` counts up or down, `A-H` runs through the letters, commas and
 * blanks part the pieces. Refuses with the piece that cannot be read.
 */
export function readSelection(raw: Raw): Outcome<readonly string[], { readonly piece: string }> {
  const pieces = (Array.isArray(raw) ? raw : [raw]).flatMap((each) =>
    String(each)
      .split(/[\s,;]+/)
      .filter((piece) => piece !== ''),
  );
  const ids: string[] = [];
  for (const piece of pieces) {
    const some = idsOfPiece(piece);
    if (some === undefined || ids.length + some.length > 500) return refused({ piece });
    ids.push(...some);
  }
  return ids.length === 0 ? refused({ piece: String(raw) }) : done(ids);
}

function idsOfPiece(piece: string): readonly string[] | undefined {
  if (/^[A-Za-z]{0,3}\d{0,4}$/.test(piece) && piece !== '') return [piece];
  const numbers = /^([A-Za-z]{0,3})(\d{1,4})-([A-Za-z]{0,3})(\d{1,4})$/.exec(piece);
  if (numbers !== null && (numbers[3] === '' || numbers[3] === numbers[1])) {
    return steps(Number(numbers[2]), Number(numbers[4]))?.map((n) => `${numbers[1]}${n}`);
  }
  const letters = /^([A-Z])-([A-Z])$/.exec(piece) ?? /^([a-z])-([a-z])$/.exec(piece);
  if (letters === null) return undefined;
  const code = (text: string | undefined) => (text ?? '').charCodeAt(0);
  return steps(code(letters[1]), code(letters[2]))?.map((n) => String.fromCharCode(n));
}

function steps(first: number, last: number): readonly number[] | undefined {
  const count = Math.abs(last - first) + 1;
  if (count > 300) return undefined;
  return Array.from({ length: count }, (_, i) => (last >= first ? first + i : first - i));
}
