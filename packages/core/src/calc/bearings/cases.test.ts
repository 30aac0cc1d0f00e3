import bearings from '../../../../../cases/bearings.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { bearingCalculations } from './entries/index.js';

proveEntries(bearingCalculations, bearings);
