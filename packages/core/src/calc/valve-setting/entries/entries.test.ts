import { describe, expect, it } from 'vitest';
import { describeCalcFault, runDeclared } from '../../catalogue/index.js';
import { baseCircleWindows } from './base-circle.js';
import { crankStops } from './crank-stops.js';

const events = { intakeOpens: '10 deg', intakeCloses: '50 deg', exhaustOpens: '50 deg', exhaustCloses: '10 deg' };

describe('base-circle windows', () => {
  it('span 480 crank degrees each with events 10/50/50/10 (260 + 220, reference mechanism-open.md section 8.2)', () => {
    const found = runDeclared(baseCircleWindows, { ...events, margin: '0 deg' });
    if (!found.ok) throw new Error(JSON.stringify(found.fault));
    const texts = Object.entries(found.value.outputs).map(([name, { text }]) => [name, text]);
    expect(Object.fromEntries(texts)).toEqual({
      intakeFrom: '590.0 deg',
      intakeTo: '350.0 deg',
      intakeSpan: '480.0 deg',
      exhaustFrom: '370.0 deg',
      exhaustTo: '130.0 deg',
      exhaustSpan: '480.0 deg',
    });
  });

  it('need all four events', () => {
    const found = runDeclared(baseCircleWindows, { intakeOpens: '10 deg' });
    expect(!found.ok && found.fault).toHaveLength(3);
  });

  it('are refused for a cam that leaves no room for the margin', () => {
    const found = runDeclared(baseCircleWindows, { ...events, intakeCloses: '180 deg', margin: '200 deg' });
    expect(!found.ok && found.fault.map(describeCalcFault).join()).toMatch(
      /intake valve is open too long for this margin: 50 degrees of base circle are missing/,
    );
  });
});

describe('crank stops', () => {
  it('are the printed two of a V8 (reference mechanism-open.md section 8.1, row V1)', () => {
    const found = runDeclared(crankStops, { firingOrder: [1, 8, 4, 3, 6, 5, 7, 2] });
    if (!found.ok) throw new Error(JSON.stringify(found.fault));
    expect(found.value.outputs.crankAngles?.text).toBe('0.0 deg, 360.0 deg');
    expect(found.value.outputs.lists?.value).toEqual([
      '0°: intake 1 2 5 7 / exhaust 1 3 4 8',
      '360°: intake 3 4 6 8 / exhaust 2 5 6 7',
    ]);
    expect(found.value.outputs.smallestMargin?.text).toBe('55.0 deg');
  });

  it('take stops and uneven intervals as given, and name what cannot be set', () => {
    const found = runDeclared(crankStops, { firingOrder: [1, 2], intervals: ['270 deg', '450 deg'], stops: ['0 deg'] });
    if (!found.ok) throw new Error(JSON.stringify(found.fault));
    expect(found.value.outputs.refusedValves?.value).toEqual([
      'intake 2 at crank 0 (phase 450): off its base circle, it opened 125 degrees ago',
    ]);
  });

  it('say which windows were taken when no event is given, and refuse only some of the events', () => {
    const found = runDeclared(crankStops, { firingOrder: [1, 3, 4, 2] });
    expect(found.ok && found.value.cautions.map(({ code }) => code)).toContain('cam-unknown');
    const some = runDeclared(crankStops, { firingOrder: [1, 3, 4, 2], intakeOpens: '10 deg' });
    expect(!some.ok && some.fault.map(describeCalcFault).join()).toMatch(/all four events/);
  });

  it('are refused for a firing order that leaves a cylinder out', () => {
    const found = runDeclared(crankStops, { firingOrder: [1, 3, 4] });
    expect(!found.ok && found.fault.map(describeCalcFault).join()).toMatch(/cylinder 2 is missing/);
  });
});
