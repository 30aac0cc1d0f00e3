import { degrees, type Volume } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { angleCut } from '../milling.js';
import { height, lengthOut, roomOut, size, surface } from './inputs.js';

export const angleMill = defineCalculation({
  id: 'cylinder.angle-mill',
  subject: 'cylinder',
  title: 'Angle milling of a head',
  summary: 'Cut at the deep edge when the face is turned by some degrees, and what it takes from the chamber.',
  inputs: {
    width: size('W', 'width of the head face, edge not cut to deep edge'),
    angle: {
      kind: 'angle',
      symbol: 'β',
      meaning: 'by how much the face, and with it the valves, turn',
      unit: 'deg',
      range: { above: 0, to: degrees(30) },
    },
    chamberArea: { ...surface('A', 'area of one chamber at the face'), optional: true },
    chamberDistance: { ...height('w', 'middle of that area from the edge that is not cut'), optional: true },
  },
  outputs: {
    deepCut: lengthOut('C', 'cut at the deep edge'),
    chamberCut: { ...lengthOut('c', 'mean cut over the chamber'), optional: true },
    reduction: { ...roomOut('ΔV', 'volume taken from one chamber'), optional: true },
  },
  formula: 'C = W·tan β (shop rule 0.0175·W·degrees); c = w·tan β; ΔV = A·c',
  assumptions: [
    'A planning figure: bolt seats, dowels, intake and exhaust faces and pushrods all move with the face.',
    'The cut runs out to nothing at one edge.',
  ],
  sources: ['angle-milling', 'derived-here'],
  example: {
    inputs: { width: '8.0 in', angle: '2 deg' },
    outputs: { deepCut: '0.279 in' },
    from: 'magazine article (reference row MO-18; its rule gives 0.280)',
  },
  compute: (v) => {
    const deepCut = angleCut(v.width, v.angle);
    const { chamberArea: area, chamberDistance: distance } = v;
    if (area === undefined && distance === undefined) {
      return answer({ deepCut, chamberCut: undefined, reduction: undefined });
    }
    if (area === undefined || distance === undefined) {
      return conflict(['chamberArea', 'chamberDistance'], 'area and distance of the chamber are needed together');
    }
    if (distance > v.width) {
      return conflict(['chamberDistance', 'width'], 'the chamber lies beyond the face', {
        input: 'chamberDistance',
        to: v.width,
      });
    }
    const chamberCut = angleCut(distance, v.angle);
    return answer({ deepCut, chamberCut, reduction: (area * chamberCut) as Volume });
  },
});
