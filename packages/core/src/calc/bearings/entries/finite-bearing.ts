import type { Ratio } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { petroffVariable as petroff } from '../film.js';
import { filmAtEccentricity, filmAtNumber, SHORTEST } from '../finite-bearing.js';
import { lengthToDiameter } from './bearing-inputs.js';
import {
  attitude,
  eccentricity,
  filmRatio,
  flowVariable,
  frictionVariable,
  number,
  petroffVariable,
  pressureRatio,
  sideShare,
} from './film-outputs.js';

export const finiteBearing = defineCalculation({
  id: 'bearings.finite-bearing',
  subject: 'bearings',
  title: 'Film of a journal bearing of finite length, dimensionless',
  summary: 'Everything that the design table of finite bearings says at an eccentricity or at a Sommerfeld number.',
  inputs: {
    lengthToDiameter: { ...lengthToDiameter, range: { from: SHORTEST, to: 10 } },
    eccentricity: {
      kind: 'ratio',
      symbol: 'ε',
      meaning: 'eccentricity over radial clearance (or give the number)',
      unit: '',
      range: { from: 0.1, to: 0.97 },
      optional: true,
    },
    number: {
      kind: 'ratio',
      symbol: 'S',
      meaning: 'Sommerfeld number (or give the eccentricity)',
      unit: '',
      range: { above: 0, to: 1000 },
      optional: true,
    },
  },
  outputs: {
    number,
    eccentricity,
    filmRatio,
    attitude,
    frictionVariable,
    petroffVariable,
    flowVariable,
    sideShare,
    pressureRatio,
  },
  formula: 'table of Raimondi and Boyd; ln S and ln (R/c)·f straight in ε between rows, their formula between lengths',
  assumptions: ['Full bearing, steady load, film rupture without suction. Error about 2 %.'],
  sources: ['raimondi-boyd'],
  example: {
    inputs: { lengthToDiameter: 1, number: '0.135' },
    outputs: { frictionVariable: '3.50', flowVariable: '4.28', petroffVariable: '2.665' },
    from: 'reference rows O-19 and O-23, textbook chart example',
  },
  compute: (v) => {
    const { eccentricity: at, number: of } = v;
    if ((at === undefined) === (of === undefined)) {
      return conflict(['eccentricity', 'number'], 'one of eccentricity and number is needed, and not both');
    }
    const found =
      at === undefined ? filmAtNumber(v.lengthToDiameter, of as Ratio) : filmAtEccentricity(v.lengthToDiameter, at);
    if (!found.ok) {
      const light = found.fault.code === 'lighter';
      return conflict(
        ['number'],
        light
          ? 'so lightly loaded that the table ends: see bearings.petroff'
          : 'the film is thinner than the table reaches',
        light ? { input: 'number', to: found.fault.number } : { input: 'number', from: found.fault.number },
      );
    }
    const { friction, flow, sideFlow, pressure, ...state } = found.value;
    return answer({
      ...state,
      filmRatio: (1 - state.eccentricity) as Ratio,
      frictionVariable: friction,
      petroffVariable: petroff(state.number),
      flowVariable: flow,
      sideShare: sideFlow,
      pressureRatio: pressure,
    });
  },
});
