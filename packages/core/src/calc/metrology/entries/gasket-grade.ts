import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { GRADE_BASES, gradeFigure, gradeOf, gradeWithAllowance } from '../gasket-grade.js';
import { asLength, lengths } from './flavour.js';

const readName = (text: string): string | undefined => (/^[^\n\r]{1,40}$/u.test(text.trim()) ? text.trim() : undefined);

export const gasketGrade = defineCalculation({
  id: 'metrology.gasket-grade',
  subject: 'metrology',
  title: 'Head gasket grade from piston protrusion',
  summary: 'Which thickness of gasket the protrusion of the pistons asks for, by the mean or by the highest.',
  inputs: {
    protrusions: {
      ...lengths.input,
      symbol: 'p',
      meaning: 'protrusion at each point, piston after piston',
      list: true,
    },
    pointsPerPiston: {
      kind: 'count',
      symbol: 'm',
      meaning: 'points measured on each piston',
      range: { from: 1, to: 16 },
      default: 1,
    },
    basis: {
      kind: 'choice',
      symbol: 'basis',
      meaning: 'what chooses the grade: the maker says which',
      choices: GRADE_BASES,
    },
    tops: {
      ...lengths.input,
      symbol: 'T',
      meaning: 'highest protrusion of each grade, inclusive, thinnest gasket first',
      list: true,
    },
    names: {
      kind: 'text',
      symbol: 'names',
      meaning: 'name of each grade, such as "2 notches" or "1.35 mm"; left out: numbered',
      expected: 'a short name',
      read: readName,
      list: true,
      optional: true,
    },
    thicknesses: {
      ...lengths.size,
      symbol: 't',
      meaning: 'compressed thickness of each grade; left out: no room to the head is worked out',
      list: true,
      optional: true,
    },
    allowance: {
      ...lengths.size,
      symbol: 'a',
      meaning:
        'where the mean chooses: a single reading above the top of the grade by more than this asks for the next',
      optional: true,
    },
    expanded: {
      ...lengths.size,
      symbol: 'U',
      meaning: 'expanded uncertainty of the figure; left out: not known',
      optional: true,
    },
  },
  outputs: {
    figure: { ...lengths.output, symbol: 'P', meaning: 'figure that chooses' },
    highest: { ...lengths.output, symbol: 'p max', meaning: 'highest reading' },
    grade: { kind: 'count', symbol: 'grade', meaning: 'place of the grade, from 1 for the thinnest', optional: true },
    name: { kind: 'text', symbol: 'name', meaning: 'its name', optional: true },
    thickness: { ...lengths.output, symbol: 't', meaning: 'compressed thickness of that grade', optional: true },
    smallestQuench: {
      ...lengths.output,
      symbol: 'q',
      meaning: 'thickness less the highest reading: the least room from piston to head face',
      optional: true,
    },
    left: {
      ...lengths.output,
      symbol: 'left',
      meaning: 'from the figure up to the top of the grade that it chooses',
      optional: true,
    },
    verdict: {
      kind: 'text',
      symbol: 'verdict',
      meaning: 'in (grade found), near (within U of another grade), or out (above the last grade)',
    },
    raised: {
      kind: 'text',
      symbol: 'raised',
      meaning: 'yes where the highest reading asked for the next grade, else no',
    },
  },
  formula: 'grade = first whose top ≥ P; P = highest reading, highest mean of a piston, or mean of all; q = t − p max',
  assumptions: ['Highest point of each stroke, pistons held square; all pistons take one gasket.'],
  sources: ['shop-practice'],
  example: {
    inputs: {
      protrusions: ['0.62 mm', '0.66 mm', '0.64 mm', '0.68 mm'],
      basis: 'mean-of-all',
      tops: ['0.60 mm', '0.70 mm', '0.80 mm'],
      names: ['1 notch', '2 notches', '3 notches'],
      thicknesses: ['1.15 mm', '1.25 mm', '1.35 mm'],
    },
    outputs: {
      figure: '0.65 mm',
      grade: 2,
      name: '2 notches',
      left: '0.05 mm',
      verdict: 'in',
      thickness: '1.25 mm',
      smallestQuench: '0.57 mm',
    },
    from: 'invented figures, hand arithmetic',
  },
  compute: (v) => {
    const { tops, protrusions, pointsPerPiston: m } = v;
    if (tops.some((top, at) => at > 0 && top <= tops[at - 1]!)) return conflict(['tops'], 'the grades must rise');
    if (v.names && v.names.length !== tops.length) return conflict(['names', 'tops'], 'one name a grade is needed');
    if (v.thicknesses && v.thicknesses.length !== tops.length)
      return conflict(['thicknesses', 'tops'], 'one thickness a grade is needed');
    if (protrusions.length % m !== 0)
      return conflict(['protrusions', 'pointsPerPiston'], `the readings do not make whole pistons of ${m} points`);
    const pistons = Array.from({ length: protrusions.length / m }, (_, at) => protrusions.slice(at * m, (at + 1) * m));
    const figure = gradeFigure(pistons, v.basis);
    const highest = Math.max(...protrusions);
    const own = gradeOf(figure, tops);
    const grade = gradeWithAllowance(figure, highest, tops, v.allowance);
    const thickness = grade === undefined ? undefined : v.thicknesses?.[grade];
    const doubt = v.expanded ?? 0;
    const near = own !== gradeOf(figure + doubt, tops) || own !== gradeOf(figure - doubt, tops);
    return answer({
      figure: asLength(figure),
      highest: asLength(highest),
      grade: grade === undefined ? undefined : grade + 1,
      name: grade === undefined ? undefined : (v.names?.[grade] ?? `grade ${grade + 1}`),
      thickness,
      smallestQuench: thickness === undefined ? undefined : asLength(thickness - highest),
      left: own === undefined ? undefined : asLength(tops[own]! - figure),
      verdict: grade === undefined ? 'out' : near ? 'near' : 'in',
      raised: grade !== own ? 'yes' : 'no',
    });
  },
});
