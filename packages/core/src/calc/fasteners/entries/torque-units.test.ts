import { describe, expect, it } from 'vitest';
import { runDeclared } from '../../catalogue/index.js';
import { torqueUnits } from './torque-units.js';

const texts = (torque: string, system?: 'inch' | 'metric') => {
  const found = runDeclared(torqueUnits, { torque }, { ...(system && { system }) });
  if (!found.ok) throw new Error(JSON.stringify(found.fault));
  return Object.fromEntries(Object.entries(found.value.outputs).map(([name, { text }]) => [name, text]));
};

describe('one torque in the units in use (exact definitions: pound-force 4.4482216152605 N, inch 25.4 mm)', () => {
  it('shows each in its own unit, whatever was typed or chosen', () => {
    const asked = {
      newtonMetres: '10.73 N·m',
      poundFeet: '7.92 lbf·ft',
      poundInches: '95.0 lbf·in',
      kilogramForceMetres: '1.095 kgf·m',
    };
    expect(texts('95 lb-in')).toEqual(asked);
    expect(texts('95 lb-in', 'metric')).toEqual(asked);
  });
});
