import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { clearanceContributions } from '../clearance.js';
import { conformance, nearestLimit, verdictOf } from '../decision.js';
import { asLength, asLengths, lengths } from './flavour.js';
import { asRatio, asRatios } from './inputs.js';
import { limitInputs, upsideDown } from './limit-inputs.js';

export const clearanceUncertainty = defineCalculation({
  id: 'metrology.clearance-uncertainty',
  subject: 'metrology',
  title: 'Oil clearance with its uncertainty and verdict',
  summary: 'A clearance is a small difference of large sizes: how sure is it, and does it keep its limits?',
  inputs: {
    housing: { ...lengths.size, symbol: 'H', meaning: 'housing bore' },
    journal: { ...lengths.size, symbol: 'J', meaning: 'journal diameter' },
    wall: { ...lengths.size, symbol: 't1', meaning: 'shell wall at the crown; 0 for a plain bore without shells' },
    otherWall: {
      ...lengths.size,
      symbol: 't2',
      meaning: 'wall of the other shell; left out: the same',
      optional: true,
    },
    uHousing: { ...lengths.size, symbol: 'u(H)', meaning: 'standard uncertainty of the housing bore' },
    uJournal: { ...lengths.size, symbol: 'u(J)', meaning: 'standard uncertainty of the journal' },
    uWall: { ...lengths.size, symbol: 'u(t)', meaning: 'standard uncertainty of one wall' },
    walls: {
      kind: 'choice',
      symbol: 'walls',
      meaning: 'whether each wall was read by itself, or one reading is counted for both',
      choices: ['each-read', 'one-reading'],
      default: 'each-read',
    },
    sharedScale: {
      ...lengths.size,
      symbol: 'us',
      meaning:
        'where the bore gauge was zeroed in the micrometer that read the journal: standard uncertainty of its scale, as contained in both u(H) and u(J); it cancels',
      default: 0,
    },
    coverage: {
      kind: 'ratio',
      symbol: 'k',
      meaning: 'coverage factor',
      unit: '',
      range: { above: 0, to: 100 },
      default: 2,
    },
    ...limitInputs(lengths),
  },
  outputs: {
    clearance: { ...lengths.output, symbol: 'C', meaning: 'diametral clearance; negative is interference' },
    uncertainty: { ...lengths.output, symbol: 'u', meaning: 'standard uncertainty' },
    expanded: { ...lengths.output, symbol: 'U', meaning: 'expanded uncertainty' },
    from: { ...lengths.output, symbol: 'C − U', meaning: 'lowest likely clearance' },
    to: { ...lengths.output, symbol: 'C + U', meaning: 'highest likely clearance' },
    contributions: {
      ...lengths.output,
      symbol: 'c·u',
      meaning: 'contributions of housing, journal, walls',
      list: true,
    },
    shares: {
      kind: 'ratio',
      symbol: 'share',
      meaning: 'their shares of the variance',
      unit: '%',
      places: 1,
      list: true,
    },
    inside: {
      kind: 'ratio',
      symbol: 'p',
      meaning: 'probability that the clearance keeps its limits',
      unit: '%',
      places: 2,
      optional: true,
    },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in (proven), near (not proven), out or no data (no limits)' },
    distance: {
      ...lengths.output,
      symbol: 'd',
      meaning: 'distance to the deciding limit, positive inside',
      optional: true,
    },
  },
  formula: 'C = H − J − t1 − t2; u² = u(H)² + u(J)² − 2·us² + 2·u(t)² (one reading for both walls: 4·u(t)²); U = k·u',
  assumptions: ['The readings are independent but for the scale error that is named; all sizes at one temperature.'],
  sources: ['gum-type-a', 'derived-here'],
  example: {
    inputs: {
      housing: '68.350 mm',
      journal: '63.440 mm',
      wall: '2.430 mm',
      uHousing: '0.0025 mm',
      uJournal: '0.0015 mm',
      uWall: '0.0010 mm',
    },
    outputs: { clearance: '0.050 mm', uncertainty: '0.00324 mm', expanded: '0.0065 mm', verdict: 'no data' },
    from: 'reference row O-30',
  },
  compute: (v) => {
    const wrong = upsideDown(v);
    if (wrong) return wrong;
    if (v.sharedScale > Math.min(v.uHousing, v.uJournal))
      return conflict(['sharedScale', 'uHousing', 'uJournal'], 'the shared part is more than the whole');
    const contributions = clearanceContributions({
      housing: v.uHousing,
      journal: v.uJournal,
      wall: v.uWall,
      sharedScale: v.sharedScale,
      wallCountedTwice: v.walls === 'one-reading',
    });
    const u = Math.hypot(...contributions);
    const clearance = v.housing - v.journal - v.wall - (v.otherWall ?? v.wall);
    const nearest = nearestLimit(clearance, v);
    const guard = v.coverage * u;
    return answer({
      clearance: asLength(clearance),
      uncertainty: asLength(u),
      expanded: asLength(guard),
      from: asLength(clearance - guard),
      to: asLength(clearance + guard),
      contributions: asLengths(contributions),
      shares: asRatios(contributions.map((one) => (u === 0 ? 0 : (one / u) ** 2))),
      inside: nearest && asRatio(conformance(clearance, u, v).inside),
      verdict: nearest ? verdictOf(nearest.distance, { rule: 'guarded', guard, near: 0 }) : 'no data',
      distance: nearest && asLength(nearest.distance),
    });
  },
});
