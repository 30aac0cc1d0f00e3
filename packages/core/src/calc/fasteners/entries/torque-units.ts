import { answer, defineCalculation } from '../../catalogue/index.js';
import { torque } from './inputs.js';

const shown = { kind: 'torque', meaning: 'the same torque', asked: true } as const;

export const torqueUnits = defineCalculation({
  id: 'fasteners.torque-units',
  subject: 'fasteners',
  title: 'One torque in the units in use',
  summary: 'Converts a torque; pound-inches against pound-feet is a factor 12, kgf·cm against kgf·m a factor 100.',
  inputs: { torque },
  outputs: {
    newtonMetres: { ...shown, symbol: 'T [N·m]', unit: 'N·m', places: 2 },
    poundFeet: { ...shown, symbol: 'T [lbf·ft]', unit: 'lbf·ft', places: 2 },
    poundInches: { ...shown, symbol: 'T [lbf·in]', unit: 'lbf·in', places: 1 },
    kilogramForceMetres: { ...shown, symbol: 'T [kgf·m]', unit: 'kgf·m', places: 3 },
  },
  formula: '1 lbf·ft = 1.3558179483 N·m = 12 lbf·in; 1 kgf·m = 9.80665 N·m',
  assumptions: ['Makers round each column on its own: keep the unit in which the value was specified.'],
  sources: ['si-units'],
  example: {
    inputs: { torque: '6.5 kgf·m' },
    outputs: { newtonMetres: '63.74 N·m', poundFeet: '47.01 lbf·ft' },
    from: 'reference row O-18, exact definitions',
  },
  compute: ({ torque: t }) => answer({ newtonMetres: t, poundFeet: t, poundInches: t, kilogramForceMetres: t }),
});
