const VULGAR = /[\u00bc-\u00be\u2150-\u215e]/g;

/**
 * One spelling for signs that keyboards, manuals and phones write in several ways: dashes and the minus sign, ± and
 * +/-, dots of a range, ≤, ready-made fractions such as ½, and spaces of every width.
 */
export const tidy = (text: string): string =>
  text
    .replace(VULGAR, (sign) => ` ${sign.normalize('NFKC').replace('\u2044', '/')}`)
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(/\+ ?\/ ?-/g, '±')
    .replace(/\u2044/g, '/')
    .replace(/[≤⩽]/g, '<=')
    .replace(/[≥⩾]/g, '>=')
    .replace(/\.{2,}|…/g, ' .. ')
    .replace(/\s+/g, ' ')
    .trim();
