import { type Angle, degrees } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';

const angle = { kind: 'angle', unit: 'deg', range: { from: 0, to: degrees(3600) }, list: true } as const;
const out = { kind: 'angle', unit: 'deg', places: 1 } as const;
const NOISE = 1e-9;

export const remainingAngle = defineCalculation({
  id: 'fasteners.remaining-angle',
  subject: 'fasteners',
  title: 'Turn that is left of an angle tightening',
  summary: 'From the angles of the stages and what was turned so far: what is left, in all and of the present stage.',
  inputs: {
    stages: { ...angle, symbol: 'θ', meaning: 'angle of each stage in order' },
    turned: {
      ...angle,
      symbol: 'τ',
      meaning: 'turns made so far, each from where the wrench was set on',
      optional: true,
    },
  },
  outputs: {
    total: { ...out, symbol: 'Σθ', meaning: 'all stages together' },
    turned: { ...out, symbol: 'Στ', meaning: 'turned so far' },
    remaining: { ...out, symbol: 'Σθ − Στ', meaning: 'left in all' },
    stage: { kind: 'count', symbol: 'k', meaning: 'stage that is under way or comes next; 0 when all are done' },
    stageRemaining: { ...out, symbol: 'θk', meaning: 'left of that stage' },
  },
  formula: 'left = Σθ − Στ',
  assumptions: ['Counted at the fastener. A bolt turned too far is not turned back: it is replaced or judged.'],
  sources: ['derived-here'],
  example: {
    inputs: { stages: ['90 deg', '90 deg'], turned: ['60 deg', '45 deg'] },
    outputs: { total: '180 deg', turned: '105 deg', remaining: '75 deg', stage: 2, stageRemaining: '75 deg' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const sum = (angles: readonly Angle[]) => angles.reduce((all, one) => all + one, 0);
    const total = sum(v.stages);
    const turned = sum(v.turned ?? []);
    if (turned > total + NOISE)
      return conflict(['stages', 'turned'], 'the fastener was turned farther than all stages');
    const ends = v.stages.map((_, at) => sum(v.stages.slice(0, at + 1)));
    const stage = ends.findIndex((end) => end > turned + NOISE) + 1;
    return answer({
      total: total as Angle,
      turned: turned as Angle,
      remaining: Math.max(0, total - turned) as Angle,
      stage,
      stageRemaining: (stage === 0 ? 0 : ends[stage - 1]! - turned) as Angle,
    });
  },
});
