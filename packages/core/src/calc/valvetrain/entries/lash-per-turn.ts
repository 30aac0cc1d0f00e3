import { mm } from '../../../quantity/index.js';
import { answer, defineCalculation } from '../../catalogue/index.js';
import { lashPerTurn as find, turnsForLash } from '../adjuster.js';
import { pitch, place, ratio } from './inputs.js';

export const lashPerTurn = defineCalculation({
  id: 'valvetrain.lash-per-turn',
  subject: 'valvetrain',
  title: 'Change of valve lash for a turn of the adjuster',
  summary: 'What one turn does to the lash at the valve, and how far to turn for a wanted change.',
  inputs: {
    place,
    pitch,
    ratio,
    change: {
      kind: 'length',
      symbol: 'Δ',
      meaning: 'wanted change of lash at the valve; positive closes it',
      unit: 'mm',
      range: { from: mm(-20), to: mm(20) },
      optional: true,
    },
  },
  outputs: {
    perTurn: { kind: 'length', symbol: 'p', meaning: 'lash at the valve for one whole turn', unit: 'mm', places: 3 },
    turned: {
      kind: 'angle',
      symbol: 'n',
      meaning: 'to turn for the wanted change',
      unit: 'turn',
      places: 3,
      optional: true,
    },
  },
  formula: 'stud nut: p = P·(1 + R); screw at the pushrod: p = P·R; screw at the valve: p = P; n = Δ/p',
  assumptions: ['Solid follower on the base circle, small angles, arm ends in line with the pivot.'],
  sources: ['derived-here'],
  example: {
    inputs: { place: 'stud-nut', pitch: '1/24 in', ratio: '1.5' },
    outputs: { perTurn: '0.1042 in' },
    from: 'hand arithmetic: 2.5/24',
  },
  compute: (v) =>
    answer({
      perTurn: find(v),
      turned: v.change === undefined ? undefined : turnsForLash(v, v.change),
    }),
});
