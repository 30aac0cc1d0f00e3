import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { WEAR_FORMS, wearFigure, wearGrows, wearState } from '../wear.js';
import { asLength, lengths } from './flavour.js';
import { asRatio } from './inputs.js';

export const wearLimit = defineCalculation({
  id: 'metrology.wear-limit',
  subject: 'metrology',
  title: 'Wear against its limit',
  summary: 'Reuse or replace, whichever of the three forms the limit has: a size, a change from new, or a clearance.',
  inputs: {
    form: {
      kind: 'choice',
      symbol: 'form',
      meaning:
        'absolute: the limit is a size; change-from-new: the limit is an amount of wear; clearance: the limit is hole minus shaft (or a play, or an end float, with the mate at 0)',
      choices: WEAR_FORMS,
    },
    part: {
      kind: 'choice',
      symbol: 'part',
      meaning: 'a hole wears larger, a shaft smaller; for clearance "hole"',
      choices: ['hole', 'shaft'],
      default: 'hole',
    },
    measured: {
      ...lengths.size,
      symbol: 'D',
      meaning: 'size now; for clearance the hole, or the play itself',
      optional: true,
    },
    mate: {
      ...lengths.size,
      symbol: 'd',
      meaning: 'for clearance: size of the shaft; 0 where the play itself was measured',
      default: 0,
    },
    whenNew: { ...lengths.size, symbol: 'D₀', meaning: 'for change-from-new: size when new', optional: true },
    limit: { ...lengths.size, symbol: 'L', meaning: 'wear limit in that form, inclusive' },
    newLow: {
      ...lengths.input,
      symbol: 'new from',
      meaning: 'lower end of the new band, in the form of the limit',
      optional: true,
    },
    newHigh: {
      ...lengths.input,
      symbol: 'new to',
      meaning: 'upper end of the new band, in the form of the limit',
      optional: true,
    },
    nearShare: {
      kind: 'ratio',
      symbol: 'n',
      meaning: 'share of the wear used from which a usable part is called near',
      unit: '%',
      range: { from: 0, to: 1 },
      default: 0.8,
    },
  },
  outputs: {
    figure: {
      ...lengths.output,
      symbol: 'W',
      meaning: 'what is held against the limit: size, wear or clearance',
      optional: true,
    },
    left: { ...lengths.output, symbol: 'left', meaning: 'left until the limit; negative: beyond it', optional: true },
    used: {
      kind: 'ratio',
      symbol: 'used',
      meaning: 'share of the wear from the end of the new band to the limit that is used',
      unit: '%',
      places: 1,
      optional: true,
    },
    state: { kind: 'text', symbol: 'state', meaning: 'as new; worn, usable; past the limit; or no data' },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'in, near, out or no data' },
  },
  formula:
    'absolute: W = D; change from new: W = D − D₀ (hole), D₀ − D (shaft); clearance: W = D − d; left = L − W (absolute shaft: W − L)',
  assumptions: ['The limit is the maker’s, for this part and this form; a wear limit is not a limit for new parts.'],
  sources: ['shop-practice'],
  example: {
    inputs: { form: 'clearance', measured: '0.26 mm', limit: '0.30 mm', newLow: '0.04 mm', newHigh: '0.24 mm' },
    outputs: { figure: '0.26 mm', left: '0.04 mm', state: 'worn, usable', verdict: 'in', used: '33.3 %' },
    from: 'reference row O-45: end float above new, inside the discard limit',
  },
  compute: (v) => {
    if (v.form === 'change-from-new' && v.whenNew === undefined)
      return conflict(['form'], 'the size when new is needed for it');
    if (v.newLow !== undefined && v.newHigh !== undefined && v.newLow > v.newHigh)
      return conflict(['newLow', 'newHigh'], 'the new band is upside down');
    if (v.measured === undefined) return answer({ ...nothing, state: 'no data', verdict: 'no data' });
    const figure = wearFigure({ ...v, measured: v.measured, whenNew: v.whenNew ?? 0 });
    const grows = wearGrows(v.form, v.part);
    const found = wearState(figure, v.limit, grows, grows ? v.newHigh : v.newLow);
    const near = found.used !== undefined && found.used >= v.nearShare;
    return answer({
      figure: asLength(figure),
      left: asLength(found.left),
      used: found.used === undefined ? undefined : asRatio(found.used),
      state: found.state,
      verdict: found.state === 'past the limit' ? 'out' : near ? 'near' : 'in',
    });
  },
});
const nothing = { figure: undefined, left: undefined, used: undefined } as const;
