import type { Length, Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { quench } from '../quench.js';
import { compressionRatio } from '../ratio.js';
import { discArea, discVolume } from '../volumes.js';
import { bore, height, lengthOut, ratioOut, roomOut, signedRoom, size, stroke, surface, verdictOut } from './inputs.js';
import { chamber, deckClearance, gasketThickness } from './parts.js';
import { atLeast } from './verdicts.js';

export const headAndDeckCut = defineCalculation({
  id: 'cylinder.head-and-deck-cut',
  subject: 'cylinder',
  title: 'Head cut, deck cut and gasket change together',
  summary: 'Ratio, quench, chamber and thickness left after cutting head and block and changing the gasket.',
  inputs: {
    bore,
    stroke,
    chamber,
    chamberArea: surface('A', 'chamber area at the head face, see cylinder.mill-for-volume'),
    deckClearance,
    gasketThickness,
    gasketBore: { ...size('Bg', 'bore of the gasket; left out: the cylinder bore'), optional: true },
    otherVolume: { ...signedRoom('Vo', 'crown, pockets and crevice together; dome negative'), default: 0 },
    headCut: { ...height('mh', 'to mill off the head'), default: 0 },
    deckCut: { ...height('mb', 'to mill off the block'), default: 0 },
    newGasketThickness: { ...height('tn', 'gasket afterwards, compressed; left out: as now'), optional: true },
    headThickness: { ...size('T', 'head thickness now'), optional: true },
    leastHeadThickness: { ...size('Tmin', 'smallest head thickness allowed'), optional: true },
    deckHeight: { ...size('H', 'deck height now'), optional: true },
    leastDeckHeight: { ...size('Hmin', 'smallest deck height allowed'), optional: true },
    mostTogether: { ...height('mmax', 'most that head and block together may lose'), optional: true },
  },
  outputs: {
    ratioBefore: ratioOut('CR0', 'static ratio before'),
    ratioAfter: ratioOut('CR', 'static ratio after'),
    chamberAfter: roomOut('V1', 'chamber after'),
    deckClearanceAfter: lengthOut('d', 'deck clearance after, below positive'),
    quenchAfter: lengthOut('q', 'piston to head after'),
    headThicknessLeft: { ...lengthOut('T′', 'head thickness left'), optional: true },
    deckHeightLeft: { ...lengthOut('H′', 'deck height left'), optional: true },
    headMoved: lengthOut('m', 'head closer to the crank: for intake face, pushrods and valve room'),
    verdict: verdictOut('whether what is left keeps the limits given'),
  },
  formula: 'V1 − A·mh; d − mb; q = d − mb + tn; CR = (Vs + Vc)/Vc; T − mh; H − mb; m = mh + mb − (tn − tg)',
  assumptions: [
    'Chamber walls straight for the depth of the cut. Then check valve room, pushrod length and intake face.',
  ],
  sources: ['derived-here'],
  example: {
    inputs: {
      bore: '100 mm',
      stroke: '90 mm',
      chamber: '70 cc',
      chamberArea: '7000 mm2',
      deckClearance: '0.5 mm',
      gasketThickness: '1 mm',
      headCut: '0.3 mm',
      deckCut: '0.2 mm',
      headThickness: '120.0 mm',
      leastHeadThickness: '119.8 mm',
    },
    outputs: {
      ratioBefore: '9.64',
      ratioAfter: '10.05',
      chamberAfter: '67.90 cm3',
      quenchAfter: '1.30 mm',
      headThicknessLeft: '119.7 mm',
      verdict: 'the head would be too thin',
    },
    from: 'hand arithmetic: 706.858/81.781 + 1 and 706.858/78.110 + 1',
  },
  compute: (v) => {
    const tn = v.newGasketThickness ?? v.gasketThickness;
    const d = (v.deckClearance - v.deckCut) as Length;
    const chamberAfter = (v.chamber - v.chamberArea * v.headCut) as Volume;
    const area = discArea(v.gasketBore ?? v.bore);
    const before = v.chamber + area * v.gasketThickness + discVolume(v.bore, v.deckClearance) + v.otherVolume;
    const after = chamberAfter + area * tn + discVolume(v.bore, d) + v.otherVolume;
    if (chamberAfter < 0 || before <= 0 || after <= 0) {
      return conflict(['chamber', 'headCut', 'deckCut', 'otherVolume'], 'no clearance volume is left');
    }
    const swept = discVolume(v.bore, v.stroke);
    const headThicknessLeft = less(v.headThickness, v.headCut);
    const deckHeightLeft = less(v.deckHeight, v.deckCut);
    const faults = [
      !atLeast(headThicknessLeft, v.leastHeadThickness) && 'the head would be too thin',
      !atLeast(deckHeightLeft, v.leastDeckHeight) && 'the deck would be too low',
      !atLeast(v.mostTogether, v.headCut + v.deckCut) && 'head and block together would lose too much',
      quench(d, tn) <= 0 && 'the piston would touch the head',
    ].filter((one) => one !== false);
    return answer({
      ratioBefore: compressionRatio(swept, before as Volume),
      ratioAfter: compressionRatio(swept, after as Volume),
      chamberAfter,
      deckClearanceAfter: d,
      quenchAfter: quench(d, tn),
      headThicknessLeft,
      deckHeightLeft,
      headMoved: (v.headCut + v.deckCut - (tn - v.gasketThickness)) as Length,
      verdict: faults.length === 0 ? 'within the limits given' : faults.join('; '),
    });
  },
});

const less = (size: Length | undefined, cut: Length): Length | undefined =>
  size === undefined ? undefined : ((size - cut) as Length);
