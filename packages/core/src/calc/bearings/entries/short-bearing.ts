/** Closed form of the short bearing: dimensionless, and for a bearing with its load. */
import type { Ratio } from '../../../quantity/index.js';
import { answer, type Caution, conflict, defineCalculation } from '../../catalogue/index.js';
import { projectedPressure, sommerfeldNumber, thinnestFilm } from '../film.js';
import { shortBearingAttitude, shortBearingEccentricity, shortBearingNumber } from '../short-bearing.js';
import { bearingOf, lengthToDiameter, loaded } from './bearing-inputs.js';
import { attitude, eccentricity, filmRatio, number, thinnest, unitLoad } from './film-outputs.js';

const formula = 'S·(L/D)² = (1 − ε²)²/(π·ε·√(π²·(1 − ε²) + 16·ε²)); tan φ = π·√(1 − ε²)/(4ε)';
const assumptions = [
  'Very short bearing, steady load, half film. It predicts too small an eccentricity: the true film is thinner.',
] as const;

/** Beyond these the closed form overstates the load much: 1.65 times at 0.5 and 0.8. */
const LONGEST = 0.25;
const MOST_ECCENTRIC = 0.8;
const indicative = (length: number, at: number): readonly Caution[] =>
  length > LONGEST || at >= MOST_ECCENTRIC
    ? [{ code: 'indicative-only', text: 'indicative only: at this length or eccentricity the true film is thinner' }]
    : [];

export const shortBearing = defineCalculation({
  id: 'bearings.short-bearing',
  subject: 'bearings',
  title: 'Film of a short journal bearing, closed form',
  summary: 'Sommerfeld number and attitude at an eccentricity, or the eccentricity at a Sommerfeld number.',
  inputs: {
    lengthToDiameter,
    eccentricity: {
      kind: 'ratio',
      symbol: 'ε',
      meaning: 'eccentricity over radial clearance (or give the number)',
      unit: '',
      range: { above: 0, below: 1 },
      optional: true,
    },
    number: {
      kind: 'ratio',
      symbol: 'S',
      meaning: 'Sommerfeld number (or give the eccentricity)',
      unit: '',
      range: { above: 0, to: 1e6 },
      optional: true,
    },
  },
  outputs: { number, eccentricity, filmRatio, attitude },
  formula,
  assumptions,
  sources: ['ocvirk'],
  example: {
    inputs: { lengthToDiameter: '0.25', eccentricity: '0.6' },
    outputs: { number: '1.0005', attitude: '46.3 deg' },
    from: 'reference row O-22',
  },
  compute: (v) => {
    const { eccentricity: at, number: of } = v;
    if ((at === undefined) === (of === undefined)) {
      return conflict(['eccentricity', 'number'], 'one of eccentricity and number is needed, and not both');
    }
    const found = at ?? shortBearingEccentricity(v.lengthToDiameter, of as Ratio);
    return answer(
      {
        number: shortBearingNumber(v.lengthToDiameter, found),
        eccentricity: found,
        filmRatio: (1 - found) as Ratio,
        attitude: shortBearingAttitude(found),
      },
      indicative(v.lengthToDiameter, found),
    );
  },
});

export const shortBearingFilm = defineCalculation({
  id: 'bearings.short-bearing-film',
  subject: 'bearings',
  title: 'Thinnest oil film by the short-bearing form',
  summary: 'Advisory film thickness of a steadily loaded bearing from the closed form for short bearings.',
  inputs: loaded,
  outputs: { unitLoad, number, eccentricity, filmRatio, filmThickness: thinnest, attitude },
  formula: `S = (R/c)²·μ·N/P; ${formula}; h0 = c·(1 − ε)`,
  assumptions,
  sources: ['ocvirk', 'shigley-bearing'],
  example: {
    inputs: {
      load: '4 kN',
      diameter: '50 mm',
      length: '20 mm',
      clearance: '0.05 mm',
      speed: '3000 rpm',
      viscosity: '12 mPa·s',
    },
    outputs: { unitLoad: '4.000 MPa', number: '0.1500', eccentricity: '0.741', filmThickness: '6.5 µm' },
    from: 'hand arithmetic: S 0.15, S·(L/D)² 0.0240; ε 0.741 gives 0.2033/8.469 = 0.0240',
  },
  compute: (v) => {
    const bearing = bearingOf(v);
    const slender = (v.length / v.diameter) as Ratio;
    const of = sommerfeldNumber(bearing);
    const at = shortBearingEccentricity(slender, of);
    return answer(
      {
        unitLoad: projectedPressure(bearing),
        number: of,
        eccentricity: at,
        filmRatio: (1 - at) as Ratio,
        filmThickness: thinnestFilm(bearing.radialClearance, at),
        attitude: shortBearingAttitude(at),
      },
      indicative(slender, at),
    );
  },
});
