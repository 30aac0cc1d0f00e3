import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { gasketGrade } from '../gasket-grade.js';
import { lengthOut, shown, signedLength, size } from './fit-inputs.js';

const raisedCaution: Caution = {
  code: 'single-piston',
  text: 'a single piston stands so high that the next thicker grade was taken for all',
};

export const gasketGradeEntry = defineCalculation({
  id: 'selection.gasket-grade',
  subject: 'selection',
  title: 'Head gasket grade from the protrusions of the pistons',
  summary:
    'The thinnest grade that reaches, by the largest or the mean protrusion, and the room it leaves the highest piston.',
  inputs: {
    protrusions: {
      ...signedLength('p', 'protrusion of each piston above the block face; below it negative'),
      list: true,
    },
    upTo: {
      ...signedLength('pᵢ', 'largest protrusion of each grade, thinnest grade first; belongs to the grade'),
      list: true,
    },
    thicknesses: { ...size('tᵢ', 'fitted thickness of each grade'), list: true },
    basis: {
      kind: 'choice',
      symbol: 'basis',
      meaning: "figure with which the maker's table is entered",
      choices: ['largest', 'mean'],
      default: 'largest',
    },
    singleOver: {
      ...size(
        'Δp',
        'a single piston more than this above the mean asks for the next thicker grade; left out: no such rule',
      ),
      optional: true,
    },
  },
  outputs: {
    grade: { kind: 'count', symbol: 'i', meaning: 'grade, from 1 in the order of the list' },
    thickness: lengthOut('t', 'its fitted thickness', 3),
    deciding: lengthOut('p*', 'protrusion that chose', 3),
    largest: lengthOut('max p', 'largest protrusion', 3),
    mean: lengthOut('p̄', 'mean protrusion', 3),
    room: lengthOut('t−max p', 'room between the highest piston and the head face', 3),
    toNextGrade: {
      ...lengthOut(
        'δ',
        'distance of the deciding protrusion from the nearest limit between grades; absent with one grade',
        3,
      ),
      optional: true,
    },
  },
  formula: 'i = first grade with p* ≤ pᵢ, one more when max p − p* > Δp; room = t − max p',
  assumptions: [
    'Protrusions are read in line with the pin, so that the piston does not tilt; two readings a piston are averaged before.',
    'All cylinders of a head get one grade. The maker of the engine says which figure enters the table.',
    'A distance to the next grade below the doubt of the reading asks for another reading.',
  ],
  sources: ['shop-practice'],
  example: {
    inputs: {
      protrusions: ['0.52 mm', '0.56 mm', '0.58 mm', '0.54 mm'],
      upTo: ['0.55 mm', '0.60 mm', '0.65 mm'],
      thicknesses: ['1.15 mm', '1.20 mm', '1.25 mm'],
    },
    outputs: { grade: 2, thickness: '1.20 mm', largest: '0.58 mm', mean: '0.55 mm', room: '0.62 mm' },
    from: 'hand arithmetic, invented grades',
  },
  compute: (v) => {
    if (v.upTo.length !== v.thicknesses.length) return conflict(['upTo', 'thicknesses'], 'one thickness a grade');
    const grades = v.upTo.map((upTo, at) => ({ upTo, thickness: v.thicknesses[at]! }));
    const { protrusions, basis, singleOver } = v;
    const found = gasketGrade({ protrusions, grades, basis, ...(singleOver !== undefined && { singleOver }) });
    if (!found.ok) {
      return found.fault.code === 'grades-not-rising'
        ? conflict(['upTo', 'thicknesses'], 'limits and thicknesses must both rise from grade to grade')
        : conflict(['protrusions', 'upTo'], `${shown(found.fault.deciding)} asks for a thicker grade than there is`);
    }
    const { grade, raised, toNextGrade, ...lengths } = found.value;
    return answer(
      { ...lengths, toNextGrade, grade: grade + 1, thickness: v.thicknesses[grade]! },
      raised ? [raisedCaution] : [],
    );
  },
});
