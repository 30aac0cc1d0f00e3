import { describe, expect, it } from 'vitest';
import { sheet } from '../limits/limit.suite.js';
import { featureOf, inspectionPlan, parseSlot, placeOf, slotName, slotOf, slotsOf, stationOf } from './index.js';

const plan = inspectionPlan(sheet('quernside'));

describe('slots', () => {
  it('have names that can be spoken', () => {
    expect(slotName(plan, 'cylinder-bore/3/top-thrust')).toBe(
      'cylinder 3, top, 18 mm below the deck, thrust direction',
    );
    expect(slotName(plan, 'main-housing/main-2/front-vertical')).toBe('main 2, front, square to the parting line');
    expect(slotName(plan, 'lobe-lift/5-exhaust-1/lift')).toBe('cylinder 5 exhaust');
    expect(slotName(plan, 'rod-side-clearance/crankpin-3/clearance')).toBe('crankpin 3, cylinders 5 and 6');
  });

  it('are taken apart as they were made, all of them', () => {
    for (const slot of slotsOf(plan)) {
      const parts = parseSlot(slot);
      expect(parts && slotOf(parts.feature, parts.place, parts.station)).toBe(slot);
      expect(slotName(plan, slot)).toBeDefined();
    }
    expect(new Set(slotsOf(plan)).size).toBe(slotsOf(plan).length);
  });

  it('find their feature, place and station', () => {
    expect(featureOf(plan, 'cylinder-bore')?.kind.title).toBe('Cylinder bores');
    expect(placeOf(plan, 'cylinder-bore/3/top-thrust')?.cylinder).toBe(3);
    expect(stationOf(plan, 'cylinder-bore/3/top-thrust')).toMatchObject({ height: 0, direction: 0 });
  });

  it.each(['', 'cylinder-bore', 'cylinder-bore/3', 'a/b/c/d', '//', 'cylinder-bore/3/'])('refuse "%s"', (text) => {
    expect(parseSlot(text)).toBeUndefined();
    expect(slotName(plan, text)).toBeUndefined();
  });

  it('have no name where the engine has no such place', () => {
    expect(slotName(plan, 'cylinder-bore/9/top-thrust')).toBeUndefined();
    expect(slotName(plan, 'bucket/1-intake-1/top')).toBeUndefined();
  });
});
