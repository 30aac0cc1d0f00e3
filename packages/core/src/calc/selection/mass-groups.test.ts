import { grams } from '@gudgeon/core/quantity';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyAssignment } from './every-way.suite.js';
import { massGroups, massPairs } from './index.js';

const inGrams = (mass: number) => Math.round(mass * 1e6) / 1e3;
const masses = (min: number, max: number) =>
  fc.array(fc.integer({ min: 500, max: 540 }), { minLength: min, maxLength: max });

describe('groups of parts of nearly equal mass', () => {
  it('have the smallest largest spread of all ways to make them', () => {
    fc.assert(
      fc.property(
        masses(1, 6),
        fc.integer({ min: 1, max: 2 }),
        fc.integer({ min: 1, max: 3 }),
        (list, groups, size) => {
          const found = massGroups(list.map(grams), groups, size);
          expect(found.ok).toBe(list.length >= groups * size);
          if (!found.ok) return;
          const widths = [...everyAssignment(groups * size, list.length)].map((parts) => {
            const each = Array.from({ length: groups }, (_, g) =>
              parts.slice(g * size, (g + 1) * size).map((part) => list[part]!),
            );
            return each.map((group) => Math.max(...group) - Math.min(...group));
          });
          const worst = Math.min(...widths.map((one) => Math.max(...one)));
          expect(inGrams(found.value.worst)).toBe(worst);
          const members = found.value.groups.flat();
          expect([...members, ...found.value.unused].toSorted((a, b) => a - b)).toEqual([...list.keys()]);
          expect(found.value.spreads.map(inGrams)).toEqual(
            found.value.groups.map((group) => {
              const each = group.map((part) => list[part]!);
              return Math.max(...each) - Math.min(...each);
            }),
          );
        },
      ),
    );
  });

  it('of equal worst spread have the least sum of spreads', () => {
    const found = massGroups([500, 505, 506, 508, 509, 514].map(grams), 2, 2);
    expect(found.ok && found.value.groups).toEqual([
      [1, 2],
      [3, 4],
    ]);
  });

  it('need enough parts', () => {
    expect(massGroups([grams(500)], 1, 2)).toEqual({ ok: false, fault: { code: 'too-few-parts', needed: 2 } });
  });
});

describe('pistons and pins', () => {
  it('are paired with the least spread of joint mass of all ways', () => {
    fc.assert(
      fc.property(masses(1, 4), masses(1, 5), (first, second) => {
        const found = massPairs(first.map(grams), second.map(grams));
        expect(found.ok).toBe(second.length >= first.length);
        if (!found.ok) return;
        const widths = [...everyAssignment(first.length, second.length)].map((way) => {
          const sums = way.map((one, at) => first[at]! + second[one]!);
          return Math.max(...sums) - Math.min(...sums);
        });
        expect(inGrams(found.value.spread)).toBe(Math.min(...widths));
        expect(found.value.sums.map(inGrams)).toEqual(
          found.value.partnerOf.map((one, at) => first[at]! + second[one]!),
        );
      }),
    );
  });
});
