import { type Angle, degrees, formatQuantity, type Length, mm, type Ratio } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { contactSweep, type RockerPlace, rockerAt } from '../rocker-motion.js';
import { shownLength } from './spring-inputs.js';

const arm = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(500) } } as const;
const armAngle = { kind: 'angle', unit: 'deg', range: { from: degrees(-45), to: degrees(60) } } as const;

export const rockerMotion = defineCalculation({
  id: 'valvetrain.rocker-motion',
  subject: 'valvetrain',
  title: 'Rocker arm in motion: true ratio and path of the contact',
  summary:
    'Valve lift, ratio at each lobe lift and path of the tip over the stem, for a roller or a pad, on a stud or a shaft.',
  inputs: {
    lobeLifts: {
      kind: 'length',
      symbol: 'y',
      meaning: 'lobe lifts at which the arm is looked at',
      unit: 'mm',
      range: { from: 0, to: mm(100) },
      list: true,
    },
    valveArm: { ...arm, symbol: 'Rv', meaning: 'pivot to the centre of the roller, or of the arc of the pad' },
    valveArmAbove: {
      ...armAngle,
      symbol: 'α₀',
      meaning:
        'valve closed: how far that centre lies above the line through the pivot square to the stem (away from the valve head)',
    },
    pushrodArm: { ...arm, symbol: 'Rp', meaning: 'pivot to the pushrod cup' },
    pushrodArmBelow: {
      ...armAngle,
      symbol: 'β₀',
      meaning:
        'valve closed: how far the cup lies below the line through the pivot square to the pushrod (toward the lifter)',
    },
    pushrodTilt: {
      ...armAngle,
      symbol: 'ψ',
      meaning: 'between pushrod and lifter travel, lifter end away from the pivot side',
      default: 0,
    },
    pushrodLength: {
      kind: 'length',
      symbol: 'l',
      meaning: 'pushrod length; left out: long against its swing',
      unit: 'mm',
      range: { above: 0, to: mm(2000) },
      optional: true,
    },
    tip: {
      kind: 'choice',
      symbol: 'tip',
      meaning: 'roller or sliding pad',
      choices: ['roller', 'pad'],
      default: 'roller',
    },
    tipRadius: { ...arm, symbol: 'ρ', meaning: 'radius of the roller or of the pad', optional: true },
  },
  outputs: {
    valveLifts: { ...shownLength, symbol: 'L', meaning: 'valve lift at each lobe lift', list: true },
    ratios: { kind: 'ratio', symbol: 'dL/dy', meaning: 'ratio at each lobe lift', unit: '', places: 4, list: true },
    meanRatio: { kind: 'ratio', symbol: 'L/y', meaning: 'mean ratio up to the largest lobe lift', unit: '', places: 4 },
    contacts: {
      ...shownLength,
      symbol: 'w',
      meaning: 'contact on the stem away from the pivot, against its place with the valve closed',
      list: true,
    },
    sweep: { ...shownLength, symbol: 'Δw', meaning: 'whole width that the contact sweeps up to the largest lobe lift' },
    swing: { kind: 'angle', symbol: 'δ', meaning: 'swing of the arm', unit: 'deg', places: 2 },
    slide: { ...shownLength, symbol: 'ρ·δ', meaning: 'pad: how far it slides over its own face', optional: true },
    halfLiftError: {
      kind: 'angle',
      symbol: 'α₀ − asin(L/2Rv)',
      meaning: 'how far the arm is from square at half lift; positive: it is square too late',
      unit: 'deg',
      places: 2,
    },
  },
  formula:
    'L = Rv·(sin α₀ − sin(α₀ − δ)); cup and lifter one pushrod length apart give δ; w = Rv·(cos(α₀ − δ) − cos α₀)',
  assumptions: [
    'Rigid parts moving in one plane, flat stem tip, no lash.',
    'The contact lies under the centre of the arc, so roller and pad of one radius lift alike; the mark is the sweep plus the contact patch.',
  ],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: {
      lobeLifts: ['0.3333333 in'],
      valveArm: '1.470 in',
      valveArmAbove: '9.79 deg',
      pushrodArm: '0.980 in',
      pushrodArmBelow: '9.79 deg',
    },
    outputs: { valveLifts: ['0.5000 in'], meanRatio: '1.5000', sweep: '0.0214 in', swing: '19.58 deg' },
    from: 'reference row MO-26: like angles on both arms keep the ratio of their lengths',
  },
  compute: (v) => {
    const places: RockerPlace[] = [];
    for (const lobeLift of v.lobeLifts) {
      const found = rockerAt(v, lobeLift);
      if (!found.ok) {
        const shown = formatQuantity('length', lobeLift, 'mm', 3);
        return conflict(['lobeLifts', 'valveArm', 'pushrodArm'], `the arm cannot follow a lobe lift of ${shown}`);
      }
      places.push(found.value);
    }
    const top = Math.max(...v.lobeLifts);
    const last = places[v.lobeLifts.indexOf(top as Length)]!;
    const wanted = Math.asin(Math.min(1, last.lift / (2 * v.valveArm)));
    return answer({
      valveLifts: places.map((one) => one.lift),
      ratios: places.map((one) => one.ratio),
      meanRatio: (top > 0 ? last.lift / top : last.ratio) as Ratio,
      contacts: places.map((one) => one.contact),
      sweep: contactSweep(v, last.turned),
      swing: last.turned,
      slide: v.tip === 'pad' && v.tipRadius !== undefined ? ((v.tipRadius * last.turned) as Length) : undefined,
      halfLiftError: (v.valveArmAbove - wanted) as Angle,
    });
  },
});
