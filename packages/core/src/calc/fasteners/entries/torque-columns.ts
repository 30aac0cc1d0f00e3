import { answer, type Caution, defineCalculation } from '../../catalogue/index.js';
import { checkColumns } from '../columns.js';
import { torque } from './inputs.js';

const exchanged: Caution = {
  code: 'heads-exchanged',
  text: 'the column heads contradict each other: do not tighten by this table until a person has confirmed which is which',
};

export const torqueColumns = defineCalculation({
  id: 'fasteners.torque-columns',
  subject: 'fasteners',
  title: 'Which of two printed torques is dry and which lubricated',
  summary: 'Checks a pair of torques against its column heads: at equal preload the lubricated bolt needs less.',
  inputs: {
    underDry: { ...torque, symbol: 'Td', meaning: 'torque printed under "dry"' },
    underLubricated: { ...torque, symbol: 'Tl', meaning: 'torque printed under "lubricated"' },
  },
  outputs: {
    verdict: { kind: 'text', symbol: 'heads', meaning: 'whether the heads fit the figures' },
    dry: { kind: 'torque', symbol: 'dry', meaning: 'torque that belongs to dry', unit: 'N·m', places: 1 },
    lubricated: {
      kind: 'torque',
      symbol: 'lubricated',
      meaning: 'torque that belongs to lubricated',
      unit: 'N·m',
      places: 1,
    },
    ratio: { kind: 'ratio', symbol: 'Tl/Td', meaning: 'lubricated over dry, put right', unit: '', places: 2 },
  },
  formula: 'T(lubricated) < T(dry) at equal preload',
  assumptions: ['Same bolt, class and preload in both columns.'],
  sources: ['derived-here'],
  example: {
    inputs: { underDry: '63 N·m', underLubricated: '80 N·m' },
    outputs: { verdict: 'heads-exchanged', dry: '80 N·m', lubricated: '63 N·m', ratio: '0.79' },
    from: 'reference row O-19, two manuals of one maker that head the columns differently',
  },
  compute: (v) => {
    const found = checkColumns(v.underDry, v.underLubricated);
    return answer({ ...found }, found.verdict === 'heads-exchanged' ? [exchanged] : []);
  },
});
