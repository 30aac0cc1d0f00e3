import type { From, SheetSource, Standing } from '../model.js';

const PREFIXES: readonly (readonly [string, Standing])[] = [
  ['manual', 'manual'],
  ['part maker', 'part-maker'],
  ['part-maker', 'part-maker'],
  ['measured', 'measured'],
  ['rule of thumb', 'rule-of-thumb'],
  ['rule-of-thumb', 'rule-of-thumb'],
  ['memory', 'memory'],
  ['invented', 'invented'],
  ['unstated', 'unstated'],
];
export const VALID_BEGINNINGS = 'manual, part maker, measured, rule of thumb, memory or invented';
export const UNSTATED: From = { standing: 'unstated', text: 'not stated' };

/** Reads `from:` text: its first words say the standing, or it begins with a key of the sheet's sources. */
export function readFrom(text: string, sources: Readonly<Record<string, SheetSource>>): From | undefined {
  const lower = text.toLowerCase();
  const prefix = PREFIXES.find(([words]) => lower.startsWith(words) && !/[a-z0-9]/.test(lower[words.length] ?? ' '));
  const rest = prefix === undefined ? text : text.slice(prefix[0].length).replace(/^[\s,:(]+/, '');
  const source = Object.keys(sources)
    .filter((key) => rest.startsWith(key) && !/[A-Za-z0-9]/.test(rest[key.length] ?? ' '))
    .sort((a, b) => b.length - a.length)[0];
  if (prefix !== undefined) return { standing: prefix[1], text, ...(source === undefined ? {} : { source }) };
  if (source === undefined) return undefined;
  return { standing: sources[source]?.standing ?? 'unstated', text, source };
}
