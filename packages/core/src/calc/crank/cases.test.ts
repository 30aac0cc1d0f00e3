import crank from '../../../../../cases/crank.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { crankCalculations } from './entries/index.js';

proveEntries(crankCalculations, crank);
