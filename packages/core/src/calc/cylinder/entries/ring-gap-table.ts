import type { Ratio } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { GAP_TABLES, gapFactors } from '../ring-gap-table.js';
import { gapByFactor } from '../rings.js';
import { bore, lengthOut, ratioOut } from './inputs.js';

const applications = Object.values(GAP_TABLES).flatMap(({ rows }) => Object.keys(rows));

export const ringGapTable = defineCalculation({
  id: 'cylinder.ring-gap-table',
  subject: 'cylinder',
  title: 'Ring end gap from a printed table of applications',
  summary: 'Smallest gaps of two tables in print, which disagree; the maker of the rings at hand decides.',
  inputs: {
    bore,
    table: {
      kind: 'choice',
      symbol: 'table',
      meaning: 'which printed table',
      choices: ['five applications', 'four applications'],
      default: 'four applications',
    },
    application: {
      kind: 'choice',
      symbol: 'use',
      meaning: 'application as the table names it; not every table has every one',
      choices: [...new Set(applications)],
    },
  },
  outputs: {
    top: lengthOut('g1', 'end gap of the top ring', 4),
    second: lengthOut('g2', 'end gap of the second ring', 4),
    topFactor: ratioOut('f1', 'factor of the top ring', 6),
    secondFactor: ratioOut('f2', 'factor of the second ring', 6),
  },
  formula: 'g = f·B, f from the table',
  assumptions: [
    'Minima. One of the tables has a second ring larger than the top for the street and smaller for racing.',
  ],
  sources: ['ring-gap-table-five', 'ring-gap-table-four'],
  example: {
    inputs: { bore: '4.000 in', table: 'five applications', application: 'racing' },
    outputs: { top: '0.0220 in', second: '0.0212 in' },
    from: 'printed table (reference row O-07)',
  },
  compute: (v) => {
    const factors = gapFactors(v.table, v.application);
    if (!factors) return conflict(['table', 'application'], 'this table has no such application');
    const { top, second } = factors;
    return answer({
      top: gapByFactor(v.bore, top as Ratio),
      second: gapByFactor(v.bore, second as Ratio),
      topFactor: top as Ratio,
      secondFactor: second as Ratio,
    });
  },
});
