/** An invented vee eight: none of these parts is for sale anywhere. */
import { cubicCentimetres, degrees, mm, squareMillimetres } from '../../../quantity/index.js';
import type { FinderInput, FinderValve } from './model.js';

const valve = (centreline: number): FinderValve => ({
  angle: degrees(18),
  crown: 'parallel-pocket',
  gapAtTop: { value: mm(4.6), u: mm(0.05) },
  lash: { value: 0, u: 0 },
  lobe: {
    kind: 'card',
    peakLift: { value: mm(7.9), u: mm(0.01) },
    durations: [{ lift: 0, duration: degrees(276) }],
    centreline: { value: degrees(centreline), u: degrees(0.3) },
  },
  springHeight: { value: mm(44), u: mm(0.1) },
  bindHeight: { value: mm(28), u: mm(0.2) },
  retainerRoom: { value: mm(15), u: mm(0.1) },
});

export const veeEight: FinderInput = {
  fixed: {
    stroke: { value: mm(88), u: mm(0.01) },
    rodLength: { value: mm(145), u: mm(0.01) },
    cylinders: Array.from({ length: 8 }, (_, at) => ({
      number: at + 1,
      bank: at % 2 === 0 ? 'left' : 'right',
      bore: { value: mm(102), u: mm(0.005) },
      deckHeight: { value: mm(229.4 + (at % 2) * 0.1), u: mm(0.01) },
      chamber: { value: cubicCentimetres(68), u: cubicCentimetres(0.2) },
      other: { value: cubicCentimetres(1), u: cubicCentimetres(0.1) },
    })),
    piston: { compressionHeight: { value: mm(39.5), u: mm(0.01) }, crownVolume: cubicCentimetres(5) },
    gasket: { thickness: { value: mm(1.2), u: mm(0.02) }, bore: mm(104) },
    chamberArea: squareMillimetres(6800),
    headThickness: { value: mm(120), u: mm(0.02) },
    bankAngle: degrees(45),
    faceAngle: degrees(55),
    rockerRatio: 1.5,
    zeroLashPushrod: { value: mm(198), u: mm(0.1) },
    intake: valve(108),
    exhaust: valve(112),
  },
  offer: {
    gaskets: {
      options: [
        { name: 'thin', thickness: { value: mm(0.7), u: mm(0.02) }, bore: mm(104), price: 90 },
        { name: 'middle', thickness: { value: mm(1), u: mm(0.02) }, bore: mm(104), price: 60 },
        { name: 'thick', thickness: { value: mm(1.3), u: mm(0.02) }, bore: mm(104.5), price: 45.5 },
      ],
    },
    pistons: {
      options: [
        { name: 'dished', compressionHeight: mm(39.5), crownVolume: cubicCentimetres(8), price: 600 },
        { name: 'flat', compressionHeight: mm(39.9), crownVolume: cubicCentimetres(3), price: 640 },
      ],
    },
    deckCut: { limit: mm(0.4), step: mm(0.1), each: true, price: 80, u: mm(0.01) },
    headCut: { limit: mm(0.6), step: mm(0.2), each: true, price: 70, u: mm(0.01) },
    camAdvance: { from: degrees(-4), to: degrees(4), step: degrees(2), price: 20 },
    rockerRatio: {
      values: [
        { value: 1.5, price: 0 },
        { value: 1.6, price: 250 },
      ],
    },
    pushrods: { from: mm(197), to: mm(199.5), step: mm(0.5), price: 110 },
  },
  wanted: {
    ratio: { low: 9.8, high: 10.2 },
    quench: { low: mm(0.9), high: mm(1.2) },
    valveRoom: { intake: mm(2), exhaust: mm(2.5) },
    deckHeight: mm(229),
    headThickness: mm(119.2),
    intakeShift: mm(1),
    bindRoom: { intake: mm(1.5), exhaust: mm(1.5) },
    retainerRoom: { intake: mm(1.2), exhaust: mm(1.2) },
    preload: { low: mm(0.5), high: mm(1.5) },
  },
  keep: 5,
};
