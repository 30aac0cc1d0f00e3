import { type Angle, degrees, type Length, mm } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { halfLiftPushrod } from '../pushrod.js';
import { smallLength } from './inputs.js';
import { shownLength } from './spring-inputs.js';

const arm = { kind: 'length', unit: 'mm', range: { above: 0, to: mm(500) } } as const;
const armAngle = { kind: 'angle', unit: 'deg', range: { from: degrees(-45), to: degrees(60) } } as const;

export const pushrodHalfLift = defineCalculation({
  id: 'valvetrain.pushrod-half-lift',
  subject: 'valvetrain',
  title: 'Pushrod length by geometry: rocker square to the stem at half lift',
  summary: 'How much longer or shorter the pushrod of a stud-mounted rocker must be for the narrowest sweep.',
  inputs: {
    lift: { ...smallLength, symbol: 'L', meaning: 'net valve lift' },
    valveArm: { ...arm, symbol: 'Rv', meaning: 'pivot to the centre of the roller or of the pad’s arc' },
    valveArmAbove: {
      ...armAngle,
      symbol: 'α₀',
      meaning: 'now, valve closed: that centre above the line through the pivot square to the stem',
    },
    pushrodArm: { ...arm, symbol: 'Rp', meaning: 'pivot to the pushrod cup' },
    pushrodArmBelow: {
      ...armAngle,
      symbol: 'β₀',
      meaning: 'now, valve closed: cup below the line through the pivot square to the pushrod',
    },
    length: { ...arm, range: { above: 0, to: mm(2000) }, symbol: 'l₀', meaning: 'pushrod length now', optional: true },
  },
  outputs: {
    wantedAngle: {
      kind: 'angle',
      symbol: 'α',
      meaning: 'angle with the valve closed that is square at half lift',
      unit: 'deg',
      places: 2,
    },
    longer: { ...shownLength, symbol: 'Δl', meaning: 'pushrod longer by; negative: shorter' },
    pivotHigher: { ...shownLength, symbol: 'Δp', meaning: 'pivot then stands higher by; negative: lower' },
    length: { ...shownLength, symbol: 'l', meaning: 'pushrod length then', optional: true },
  },
  formula: 'sin α = L/(2Rv); Δp = Rv·(sin α₀ − sin α); Δl = Δp − Rp·(sin(β₀ + α − α₀) − sin β₀)',
  assumptions: [
    'Stud-mounted rocker whose pivot follows the nut; on a shaft the stand sets the angle, not the pushrod.',
    'Half-lift rule: common practice. Stem and pushrod taken as parallel.',
  ],
  sources: ['derived-here', 'shop-practice'],
  example: {
    inputs: {
      lift: '0.500 in',
      valveArm: '1.470 in',
      valveArmAbove: '9.7916 deg',
      pushrodArm: '0.980 in',
      pushrodArmBelow: '9.7916 deg',
    },
    outputs: { wantedAngle: '9.79 deg', longer: '0.000 in', pivotHigher: '0.000 in' },
    from: 'hand arithmetic: asin(0.500/2.940) = 9.7916°, so nothing is to change',
  },
  compute: (v) => {
    if (v.lift >= 2 * v.valveArm)
      return conflict(['lift', 'valveArm'], 'the arm cannot reach that lift', { input: 'lift', below: 2 * v.valveArm });
    const found = halfLiftPushrod(v, v.lift);
    const wantedAngle: Angle = found.wanted;
    return answer({
      wantedAngle,
      longer: found.longer,
      pivotHigher: found.pivotHigher,
      length: v.length === undefined ? undefined : ((v.length + found.longer) as Length),
    });
  },
});
