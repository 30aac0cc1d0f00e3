import { describe, expect, it } from 'vitest';
import { readFrom } from './from.js';
import { nearestName } from './nearest.js';
import { readSelection } from './selection.js';

const ids = (raw: Parameters<typeof readSelection>[0]) => {
  const read = readSelection(raw);
  return read.ok ? read.value.join(' ') : `refused ${read.fault.piece}`;
};

describe('hole selections', () => {
  it.each([
    ['1-5', '1 2 3 4 5'],
    ['5-3', '5 4 3'],
    ['A-D', 'A B C D'],
    ['S1-S3, 7', 'S1 S2 S3 7'],
    ['S1-3', 'S1 S2 S3'],
    ['1-2, 4; 6', '1 2 4 6'],
    [7, '7'],
    [[1, 'A', '4-6'], '1 A 4 5 6'],
    ['1-', 'refused 1-'],
    ['A-3', 'refused A-3'],
    ['1-9999', 'refused 1-9999'],
    ['', 'refused '],
    ['S1-T3', 'refused S1-T3'],
  ] as const)('%j names %s', (raw, expected) => {
    expect(ids(raw as Parameters<typeof readSelection>[0])).toBe(expected);
  });
});

describe('origins', () => {
  const sources = {
    'p 2': { title: 't', standing: 'manual' },
    'p 23': { title: 't', standing: 'part-maker' },
  } as const;

  it.each([
    ['manual p. 12', 'manual', undefined],
    ['Part maker, leaflet', 'part-maker', undefined],
    ['rule of thumb', 'rule-of-thumb', undefined],
    ['memory', 'memory', undefined],
    ['manual p 23, table', 'manual', 'p 23'],
    ['p 23', 'part-maker', 'p 23'],
    ['p 2 and p 23', 'manual', 'p 2'],
  ])('%s has the standing %s', (text, standing, source) => {
    expect(readFrom(text, sources)).toEqual({ standing, text, ...(source === undefined ? {} : { source }) });
  });

  it.each(['manually', 'hearsay', 'p 24'])('%s says nothing of how far to trust it', (text) => {
    expect(readFrom(text, sources)).toBeUndefined();
  });
});

describe('mistyped keys', () => {
  it('find the key that was meant, or none', () => {
    expect(nearestName('firingorder', ['firingOrder', 'rotation'])).toBe('firingOrder');
    expect(nearestName('lenght', ['length', 'width'])).toBe('length');
    expect(nearestName('colour', ['length', 'width'])).toBeUndefined();
  });
});
