import { describe, expect, it } from 'vitest';
import { BIBLIOGRAPHY, type BibliographyLine, describeSource, SOURCE_KEYS, sourceOf, toSourceKey } from './index.js';

const LINES: readonly [string, BibliographyLine][] = Object.entries(BIBLIOGRAPHY);

describe('the bibliography', () => {
  it.each(LINES)('%s says title and place', (key, line) => {
    expect(key).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(line.title.trim()).not.toBe('');
    expect(line.locator.trim()).not.toBe('');
  });

  it('gives an address for what was read, and none for what was only recalled or derived', () => {
    for (const [key, line] of LINES) expect(line.address !== undefined, key).toBe(line.standing === 'read');
  });

  it('claims no more than was seen only where something was seen', () => {
    for (const [key, line] of LINES) if (line.seen !== undefined) expect(line.standing, key).toBe('read');
  });

  it('writes addresses that a browser can open', () => {
    for (const [key, line] of LINES) if (line.address) expect(line.address, key).toMatch(/^https?:\/\/[^\s]+$/);
  });

  it('has no two lines for the same place of the same work', () => {
    const places = LINES.map(([, line]) => `${line.title}|${line.locator}`);
    expect(new Set(places).size).toBe(places.length);
  });
});

describe('looking up a source', () => {
  it('answers with the line and its key', () => {
    expect(sourceOf('vdi-2230')).toEqual({ key: 'vdi-2230', ...BIBLIOGRAPHY['vdi-2230'] });
    for (const key of SOURCE_KEYS) expect(sourceOf(key).key).toBe(key);
  });

  it('does not compile with an unknown key', () => {
    // @ts-expect-error: no such key
    expect(sourceOf('nobody-wrote-this').title).toBeUndefined();
  });

  it('checks a key that comes from outside', () => {
    expect(toSourceKey('iso-898-1')).toBe('iso-898-1');
    expect(toSourceKey('toString')).toBeUndefined();
  });

  it('prints one line that shows the standing', () => {
    expect(describeSource(sourceOf('heywood-crank'))).toBe(
      'J. B. Heywood, 1988: Internal Combustion Engine Fundamentals; section 2.2: geometrical properties of reciprocating engines (recalled)',
    );
    expect(describeSource(sourceOf('iso-898-1'))).toContain('(read, a copied table, not the standard)');
    expect(describeSource(sourceOf('shop-practice'))).toContain('(shop practice)');
  });
});
