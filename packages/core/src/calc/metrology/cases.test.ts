import metrology from '../../../../../cases/metrology.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { metrologyCalculations } from './entries/index.js';

proveEntries(metrologyCalculations, metrology);
