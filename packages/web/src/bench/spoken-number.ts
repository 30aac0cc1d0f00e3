const digitWords = ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'];
const unitWords: Readonly<Record<string, string>> = {
  in: 'inch',
  mm: 'millimetre',
  thou: 'thou',
  N·m: 'newton metre',
  lbf·ft: 'pound foot',
  '°': 'degrees',
  deg: 'degrees',
  turn: 'turn',
  turns: 'turns',
};

/**
 * Digits one by one with "point" and the unit in full: `0.0025 in` becomes "zero point zero zero two five inch".
 * A fraction is said with "over". Anything that is no number is left as it stands.
 */
export function spokenNumber(text: string): string {
  return text.split(/\s+/).map(spokenWord).join(' ');
}

/** A comma or full stop behind the last digit ends a clause; it is no decimal mark. */
function spokenWord(word: string): string {
  const [, body = word, end = ''] = /^(.*?)([.,;:]?)$/.exec(word) ?? [];
  const said = /^[+-]?[\d.,/]+°?$/.test(body) ? spokenDigits(body) : (unitWords[body] ?? body);
  return said + end;
}

function spokenDigits(word: string): string {
  return [...word]
    .map((c) => {
      if (c === '.' || c === ',') return 'point';
      if (c === '/') return 'over';
      if (c === '-') return 'minus';
      if (c === '+') return 'plus';
      if (c === '°') return 'degrees';
      return digitWords[Number(c)] ?? c;
    })
    .join(' ');
}
