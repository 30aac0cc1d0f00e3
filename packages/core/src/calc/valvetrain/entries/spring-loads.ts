import { type Force, type Length, mm } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { bindMargin, openLoad } from '../spring-loads.js';
import { smallLength } from './inputs.js';
import { height, load, rateInput, shownForce, shownLength } from './spring-inputs.js';

export const springLoads = defineCalculation({
  id: 'valvetrain.spring-loads',
  subject: 'valvetrain',
  title: 'Seat load, open load, coil bind and retainer room of a valve spring',
  summary: 'From installed height, rate and net lift, with and without a shim.',
  inputs: {
    seatLoad: { ...load, symbol: 'F₀', meaning: 'load at the installed height, without the shim' },
    installedHeight: { ...height, symbol: 'h', meaning: 'installed height with the valve closed, without the shim' },
    rate: rateInput,
    lift: { ...smallLength, symbol: 'L', meaning: 'net lift of the valve' },
    solidHeight: { ...height, symbol: 'Ls', meaning: 'height with the coils touching', optional: true },
    shim: { ...smallLength, symbol: 's', meaning: 'shim under the spring', default: 0 },
    retainerRoom: {
      ...smallLength,
      symbol: 'q',
      meaning: 'retainer to guide or seal with the valve closed',
      optional: true,
    },
    bindLimit: { ...smallLength, symbol: 'b', meaning: 'least bind margin wanted', default: mm(1.524) },
    retainerLimit: {
      ...smallLength,
      symbol: 'r',
      meaning: 'least retainer room wanted at full lift',
      default: mm(1.524),
    },
  },
  outputs: {
    seatLoad: { ...shownForce, symbol: 'F₁', meaning: 'seat load with the shim' },
    openLoad: { ...shownForce, symbol: 'F', meaning: 'load at full lift' },
    openHeight: { ...shownLength, symbol: 'h − s − L', meaning: 'height at full lift' },
    shimGain: { ...shownForce, symbol: 'k·s', meaning: 'load that the shim adds' },
    bindMargin: {
      ...shownLength,
      symbol: 'm',
      meaning: 'room before the coils touch; negative: they bind',
      optional: true,
    },
    retainerMargin: {
      ...shownLength,
      symbol: 'q − L',
      meaning: 'retainer room at full lift; negative: they touch',
      optional: true,
    },
    thickestShim: {
      ...shownLength,
      symbol: 's max',
      meaning: 'thickest shim that keeps the bind margin; negative: none does',
      optional: true,
    },
  },
  formula: 'F₁ = F₀ + k·s; F = F₁ + k·L; m = h − s − L − Ls; room = q − L',
  assumptions: [
    'The lift is net at the valve; a shim does not move the retainer.',
    'A bind margin of 0.060 in (1.5 mm) is common practice; the cam and spring makers’ figures decide.',
  ],
  sources: ['spring-pressure', 'shop-practice'],
  example: {
    inputs: {
      seatLoad: '100 lbf',
      installedHeight: '1.750 in',
      rate: '300 lbf/in',
      lift: '0.500 in',
      solidHeight: '1.150 in',
      shim: '0.015 in',
    },
    outputs: { seatLoad: '104.5 lbf', openLoad: '254.5 lbf', shimGain: '4.5 lbf', bindMargin: '0.085 in' },
    from: 'reference row MO-32 with its shim',
  },
  compute: (v) => {
    const installed = (v.installedHeight - v.shim) as Length;
    if (installed <= v.lift) {
      return conflict(['installedHeight', 'lift', 'shim'], 'the spring would have no height left', {
        input: 'installedHeight',
        above: v.lift + v.shim,
      });
    }
    const seatLoad = openLoad(v.seatLoad, v.rate, v.shim);
    const margin = v.solidHeight === undefined ? undefined : bindMargin(installed, v.lift, v.solidHeight);
    const room = v.retainerRoom === undefined ? undefined : ((v.retainerRoom - v.lift) as Length);
    return answer(
      {
        seatLoad,
        openLoad: openLoad(seatLoad, v.rate, v.lift),
        openHeight: (installed - v.lift) as Length,
        shimGain: (seatLoad - v.seatLoad) as Force,
        bindMargin: margin,
        retainerMargin: room,
        thickestShim: margin === undefined ? undefined : ((margin + v.shim - v.bindLimit) as Length),
      },
      [
        ...short('coil-bind', 'bind margin', margin, v.bindLimit),
        ...short('retainer', 'retainer room', room, v.retainerLimit),
      ],
    );
  },
});

/** Rounding must not turn a margin that is just met into one that is not. */
const ROUNDING = 1e-12;
const short = (code: string, what: string, found: Length | undefined, wanted: Length): Caution[] =>
  found !== undefined && found < wanted - ROUNDING ? [{ code, text: `the ${what} is less than wanted` }] : [];
