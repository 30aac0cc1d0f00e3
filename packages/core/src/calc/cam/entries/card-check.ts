import { type Angle, degrees, type Length, mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { type LobeCheck, lobesAgainstCard } from '../lobe-check.js';
import { worstOf } from '../lobe-verdict.js';
import { lift, shownAngle, shownLift } from './lobe-inputs.js';

const duration = {
  kind: 'angle',
  unit: 'deg',
  range: { above: 0, below: degrees(720) },
  list: true,
  optional: true,
} as const;
const lobeLift = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(100) }, list: true } as const;

export const cardCheck = defineCalculation({
  id: 'cam.card-check',
  subject: 'cam',
  title: 'Measured lobes against the card that was sold with the cam',
  summary: 'Verdict for each lobe on lift and duration, with the doubt of the measurement counted.',
  inputs: {
    lifts: { ...lobeLift, symbol: 'L', meaning: 'measured peak lift of each lobe' },
    cardLifts: { ...lobeLift, symbol: 'L₀', meaning: 'card lift: one for all lobes, or one for each' },
    liftTolerance: { ...lift, symbol: 'tL', meaning: 'allowed on either side' },
    liftDoubt: { ...lift, symbol: 'UL', meaning: 'expanded uncertainty of a measured lift', default: 0 },
    durations: { ...duration, symbol: 'd', meaning: 'measured duration of each lobe at the checking lift of the card' },
    cardDurations: { ...duration, symbol: 'd₀', meaning: 'card duration: one for all lobes, or one for each' },
    durationTolerance: {
      kind: 'angle',
      symbol: 'td',
      meaning: 'allowed on either side',
      unit: 'deg',
      range: { from: 0, to: degrees(90) },
      default: degrees(2),
    },
    durationDoubt: {
      kind: 'angle',
      symbol: 'Ud',
      meaning: 'expanded uncertainty of a measured duration',
      unit: 'deg',
      range: { from: 0, to: degrees(90) },
      default: 0,
    },
  },
  outputs: {
    verdict: {
      kind: 'text',
      symbol: 'verdict',
      meaning: 'in, near (within the doubt of the limit) or out: the worst lobe decides',
    },
    verdicts: { kind: 'text', symbol: 'each', meaning: 'verdict of each lobe', list: true },
    liftDifferences: { ...shownLift, symbol: 'L − L₀', meaning: 'measured minus card lift', list: true },
    durationDifferences: {
      ...shownAngle,
      symbol: 'd − d₀',
      meaning: 'measured minus card duration',
      list: true,
      optional: true,
    },
    lowestLobe: { kind: 'count', symbol: 'lowest', meaning: 'lobe that is farthest below its card lift, from 1' },
    liftSpread: { ...shownLift, symbol: 'max − min', meaning: 'largest difference of lift minus smallest' },
  },
  formula: '|x − x₀| + U ≤ t: in; |x − x₀| − U > t: out; else near',
  assumptions: [
    'The durations are measured at the checking lift of the card, with the same follower.',
    'A lobe far below the others is worn, whatever the card says.',
  ],
  sources: ['iso-14253-1', 'shop-practice'],
  example: {
    inputs: {
      lifts: ['7.88 mm', '7.87 mm', '7.60 mm'],
      cardLifts: ['7.87 mm'],
      liftTolerance: '0.05 mm',
      liftDoubt: '0.01 mm',
    },
    outputs: { verdict: 'out', verdicts: ['in', 'in', 'out'], lowestLobe: 3, liftSpread: '0.280 mm' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const count = v.lifts.length;
    const unlike = (list: readonly number[] | undefined) =>
      list !== undefined && list.length !== 1 && list.length !== count;
    if (unlike(v.cardLifts)) return conflict(['cardLifts', 'lifts'], 'one card lift for all lobes, or one for each');
    if ((v.durations === undefined) !== (v.cardDurations === undefined)) {
      return conflict(['durations', 'cardDurations'], 'measured and card durations are needed together');
    }
    if (v.durations !== undefined && v.durations.length !== count) {
      return conflict(['durations', 'lifts'], 'each lobe needs its duration');
    }
    if (unlike(v.cardDurations))
      return conflict(['cardDurations', 'lifts'], 'one card duration for all lobes, or one for each');
    const byLift = lobesAgainstCard(v.lifts, v.cardLifts, v.liftTolerance, v.liftDoubt);
    const byDuration = lobesAgainstCard(v.durations ?? [], v.cardDurations ?? [], v.durationTolerance, v.durationDoubt);
    const verdicts = byLift.map(({ verdict }, at) => worstOf([verdict, byDuration[at]?.verdict ?? 'in']));
    const off = byLift.map(({ difference }) => difference);
    return answer({
      verdict: worstOf(verdicts),
      verdicts,
      liftDifferences: off as Length[],
      durationDifferences: v.durations === undefined ? undefined : (byDuration.map(differenceOf) as Angle[]),
      lowestLobe: off.indexOf(Math.min(...off)) + 1,
      liftSpread: (Math.max(...off) - Math.min(...off)) as Length,
    });
  },
});

const differenceOf = ({ difference }: LobeCheck): number => difference;
