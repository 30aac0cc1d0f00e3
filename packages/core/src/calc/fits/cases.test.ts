import fits from '../../../../../cases/fits.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { fitCalculations } from './entries/index.js';

proveEntries(fitCalculations, fits);
