import type { Pressure, Ratio, VolumeFlow } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { frictionOf, oilFlow, projectedPressure, sommerfeldNumber, thinnestFilm } from '../film.js';
import { filmAtNumber, SHORTEST } from '../finite-bearing.js';
import { bearingOf, loaded } from './bearing-inputs.js';
import { attitude, eccentricity, filmRatio, friction, number, thinnest, unitLoad } from './film-outputs.js';

const flow = { kind: 'volume-flow', unit: 'cm3/s', places: 3 } as const;

export const filmThickness = defineCalculation({
  id: 'bearings.film-thickness',
  subject: 'bearings',
  title: 'Oil film, friction and flow of a journal bearing',
  summary: 'Thinnest film, friction, oil flow and film pressure of a steadily loaded bearing, from the design table.',
  inputs: loaded,
  outputs: {
    unitLoad,
    number,
    eccentricity,
    filmRatio,
    filmThickness: thinnest,
    attitude,
    ...friction,
    flow: { ...flow, symbol: 'Q', meaning: 'oil drawn through the film' },
    sideFlow: { ...flow, symbol: 'Qs', meaning: 'oil that leaves at the ends and must be fed' },
    highestPressure: { ...unitLoad, symbol: 'pmax', meaning: 'largest film pressure' },
  },
  formula: 'S = (R/c)²·μ·N/P, then ε, (R/c)·f, Q/(R·c·N·L), P/pmax from the table; h0 = c·(1 − ε)',
  assumptions: [
    'Steady load: an engine bearing’s load turns and pulsates, so that the figures compare, they do not guarantee.',
    'Viscosity at the film’s temperature. Compare the thinnest film with the roughness of both faces.',
  ],
  sources: ['raimondi-boyd', 'shigley-bearing'],
  example: {
    inputs: {
      load: '500 lbf',
      diameter: '1.5 in',
      length: '1.5 in',
      clearance: '0.0015 in',
      clearanceIs: 'radial',
      speed: '1800 rpm',
      viscosity: '4 µreyn',
    },
    outputs: { number: '0.135', frictionCoefficient: '0.0070', frictionTorque: '2.62 lbf·in', flow: '0.217 in3/s' },
    from: 'reference row O-19, textbook chart example',
  },
  compute: (v) => {
    const bearing = bearingOf(v);
    const lengthToDiameter = (v.length / v.diameter) as Ratio;
    if (lengthToDiameter < SHORTEST) {
      return conflict(['length', 'diameter'], 'shorter than the table reaches: see bearings.short-bearing-film', {
        input: 'length',
        from: SHORTEST * v.diameter,
      });
    }
    const found = filmAtNumber(lengthToDiameter, sommerfeldNumber(bearing));
    if (!found.ok) {
      const light = found.fault.code === 'lighter';
      return conflict(
        ['load', 'clearance', 'speed', 'viscosity'],
        light
          ? 'so lightly loaded that the table ends: the shaft runs nearly centred, see bearings.petroff'
          : 'the film would be thinner than the table reaches (eccentricity above 0.97)',
      );
    }
    const state = found.value;
    const unit = projectedPressure(bearing);
    const rubbing = frictionOf(state.friction, bearing);
    const through = oilFlow(state.flow, bearing);
    return answer({
      unitLoad: unit,
      number: state.number,
      eccentricity: state.eccentricity,
      filmRatio: (1 - state.eccentricity) as Ratio,
      filmThickness: thinnestFilm(bearing.radialClearance, state.eccentricity),
      attitude: state.attitude,
      frictionCoefficient: rubbing.coefficient,
      frictionTorque: rubbing.torque,
      power: rubbing.power,
      flow: through,
      sideFlow: (through * state.sideFlow) as VolumeFlow,
      highestPressure: (unit / state.pressure) as Pressure,
    });
  },
});
