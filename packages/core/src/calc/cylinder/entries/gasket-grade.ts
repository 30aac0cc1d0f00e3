import type { Length } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { spreadOf } from '../spread.js';
import { lengthOut, signedLength, size } from './inputs.js';

export const gasketGrade = defineCalculation({
  id: 'cylinder.gasket-grade',
  subject: 'cylinder',
  title: 'Head gasket grade from piston protrusion',
  summary: 'Grade of a graded gasket set, by the highest or the mean protrusion as the maker’s table asks.',
  inputs: {
    protrusions: { ...signedLength('p', 'how far each piston stands proud of the deck, proud positive'), list: true },
    upTo: { ...signedLength('pg', 'largest protrusion of grade 1, 2, 3 ..., rising'), list: true },
    thicknesses: { ...size('tg', 'compressed thickness of grade 1, 2, 3 ...'), list: true, optional: true },
    rule: {
      kind: 'choice',
      symbol: 'rule',
      meaning: 'which protrusion the table goes by',
      choices: ['highest', 'mean'],
      default: 'highest',
    },
  },
  outputs: {
    grade: { kind: 'count', symbol: 'grade', meaning: 'grade, counted from 1' },
    deciding: lengthOut('p', 'protrusion that decides'),
    spread: lengthOut('Δp', 'highest less lowest piston'),
    thickness: { ...lengthOut('tg', 'thickness of that grade'), optional: true },
    smallestQuench: { ...lengthOut('q', 'gasket less the highest protrusion'), optional: true },
  },
  formula: 'the first grade with pg ≥ p; q = tg − highest p',
  assumptions: ['The limits of the grades are inclusive. The maker’s table decides which protrusion counts.'],
  sources: ['shop-practice'],
  example: {
    inputs: {
      protrusions: ['0.62 mm', '0.66 mm', '0.64 mm'],
      upTo: ['0.60 mm', '0.70 mm', '0.80 mm'],
      thicknesses: ['1.15 mm', '1.25 mm', '1.35 mm'],
    },
    outputs: { grade: 2, thickness: '1.25 mm', smallestQuench: '0.59 mm', spread: '0.04 mm' },
    from: 'invented table, hand arithmetic',
  },
  compute: (v) => {
    if (v.upTo.some((one, place) => place > 0 && one <= (v.upTo[place - 1] as Length))) {
      return conflict(['upTo'], 'the grades must rise');
    }
    if (v.thicknesses !== undefined && v.thicknesses.length !== v.upTo.length) {
      return conflict(['upTo', 'thicknesses'], 'each grade needs one limit and one thickness');
    }
    const { most, mean, apart } = spreadOf(v.protrusions);
    const deciding = (v.rule === 'highest' ? most : mean) as Length;
    const place = v.upTo.findIndex((one) => deciding <= one + 1e-10);
    if (place < 0) return conflict(['protrusions', 'upTo'], 'the pistons stand out more than any grade allows');
    const thickness = v.thicknesses?.[place];
    const smallestQuench = thickness === undefined ? undefined : ((thickness - most) as Length);
    return answer({ grade: place + 1, deciding, spread: apart as Length, thickness, smallestQuench });
  },
});
