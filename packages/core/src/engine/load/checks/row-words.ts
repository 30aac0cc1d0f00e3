import type { InspectionLimit } from '../../model.js';
import { readSelection } from '../selection.js';

/** What the words of a row say besides the size itself. Absent: the row says nothing of it, and holds for all. */
export interface RowWords {
  readonly valve?: readonly string[];
  readonly ring?: readonly string[];
  readonly end?: readonly string[];
  readonly zone?: readonly string[];
  /** Bearings counted from the front: "No. 2 and 3", "1-4". */
  readonly numbers?: readonly string[];
  readonly cylinders?: readonly string[];
  readonly bank?: readonly string[];
  readonly grade?: readonly string[];
}
export type Aspect = keyof RowWords;

const VALVE = { intake: /\b(intake|inlet)\b/, exhaust: /\bexhaust\b/ };
const RING = {
  top: /\b(top|first|1st|compression)\b/,
  second: /\b(second|2nd)\b/,
  third: /\b(third|3rd)\b/,
  oil: /\boil\b/,
};
const END = { front: /\bfront\b/, rear: /\brear\b/ };

/** Part and measurement of a row in small letters. */
export const textOf = (limit: InspectionLimit) => `${limit.part} ${limit.what}`.toLowerCase();

export function wordsOf(limit: InspectionLimit): RowWords {
  const text = textOf(limit);
  const grade = gradeOf(limit);
  const { bank } = limit.applies ?? {};
  const cylinders = limit.applies?.cylinders ?? cylindersIn(`${limit.what} ${limit.scope ?? ''}`);
  return {
    ...named('valve', text, VALVE),
    ...named('ring', text, RING),
    ...named('end', text, END),
    ...zoneOf(text),
    ...numbersOf(limit.what),
    ...(cylinders === undefined ? {} : { cylinders: cylinders.map(String) }),
    ...(bank === undefined ? {} : { bank: [bank] }),
    ...(grade === undefined ? {} : { grade: [grade] }),
  };
}

/** Rows can speak of the same part: no aspect that both name differs. */
export function canMeet(a: RowWords, b: RowWords, aspects: readonly Aspect[]): boolean {
  return aspects.every((aspect) => {
    const [x, y] = [a[aspect], b[aspect]];
    return x === undefined || y === undefined || x.some((each) => y.includes(each));
  });
}

function named<N extends Aspect>(name: N, text: string, patterns: Readonly<Record<string, RegExp>>): RowWords {
  const found = Object.keys(patterns).filter((each) => patterns[each]?.test(text));
  return found.length === 0 ? {} : { [name]: found };
}

function cylindersIn(text: string): readonly string[] | undefined {
  const read = readSelection(
    /\bcylinders?\s+(\d{1,2}(?:\s?[-,]\s?\d{1,2})*)/i.exec(text)?.[1]?.replaceAll(/\s/g, '') ?? '',
  );
  return read.ok ? read.value : undefined;
}

/** Where on a liner: at its upper fit, its lower fit (packing rings), or its flange. */
function zoneOf(text: string): RowWords {
  if (/below (the )?flange|under (the )?flange|\bupper\b|\btop\b/.test(text)) return { zone: ['upper'] };
  if (/packing|\blower\b|\bbottom\b/.test(text)) return { zone: ['lower'] };
  return /flange|counterbore/.test(text) ? { zone: ['flange'] } : {};
}

function numbersOf(what: string): RowWords {
  const tail = /(?:^|\s)(?:nos?\.?\s*)?(\d{1,2}(?:\s*(?:-|,|&|\band\b)\s*\d{1,2})*)$/i.exec(what.trim());
  if (tail?.[1] === undefined || /\b(grade|mark|size)\s*$/i.test(what.slice(0, tail.index))) return {};
  const read = readSelection(tail[1].replace(/\s*-\s*/g, '-').replaceAll(/&|and/gi, ' '));
  return read.ok ? { numbers: read.value } : {};
}

const STANDARD = /^\s*(standard|std)\b/i;
/** A grade such as "A" or "2"; the standard size is no grade of its own. */
function gradeOf(limit: InspectionLimit): string | undefined {
  const stated = limit.applies?.grade ?? /\bgrade ([a-z]|\d{1,2})\b/i.exec(limit.what)?.[1];
  return stated === undefined || STANDARD.test(stated) ? undefined : stated.trim().toLowerCase();
}

/** A row for a size other than standard: how far, where the words give the figure. */
export interface SizeStep {
  readonly direction: 'under' | 'over';
  /** As written, with its unit if it has one. */
  readonly text?: string;
}
const UNDER = String.raw`(under|over)[- ]?size[sd]?|([uo])\s?[/.]\s?s\b\.?`;
/** From the beginning of a number only: a row of a thousand digits is read once. */
export const NUMBER = String.raw`(?<![\d.,])(?:\d+(?:[.,]\d+)?|[.,]\d+)`;
const FIGURE = String.raw`(${NUMBER}\s*(?:mm|in|thou)?)`;

export function sizeStepOf(limit: InspectionLimit): SizeStep | undefined {
  const text = `${limit.what} ${limit.applies?.grade ?? limit.scope ?? ''}`;
  const word = new RegExp(UNDER, 'i').exec(text);
  if (word === null) return undefined;
  const direction = /^u/i.test(word[1] ?? word[2] ?? '') ? 'under' : 'over';
  const before = new RegExp(`${FIGURE}\\s*(?:${UNDER})`, 'i').exec(text)?.[1];
  const after = new RegExp(`(?:${UNDER})\\s*(?:of\\s*)?${FIGURE}`, 'i').exec(text)?.at(-1);
  const figure = (before ?? after)?.trim().replace(',', '.');
  return figure === undefined ? { direction } : { direction, text: figure };
}

/** Words of the row without those that tell standard, undersize and oversize apart: the same for all rows of one size. */
export function baseOf(limit: InspectionLimit): string {
  const strip = new RegExp(
    `${FIGURE}?\\s*(?:${UNDER})\\s*(?:of\\s*)?${FIGURE}?|\\b(first|second|third|standard|std)\\b`,
    'gi',
  );
  const what = limit.what.replaceAll(strip, ' ');
  const { cylinders, bank } = limit.applies ?? {};
  return [limit.part, what, cylinders?.join(' ') ?? '', bank ?? '']
    .map((each) =>
      each
        .toLowerCase()
        .replaceAll(/[\s,;:()]+/g, ' ')
        .trim(),
    )
    .join('|');
}
