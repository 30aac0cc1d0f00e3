import selection from '../../../../../cases/selection.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { selectionCalculations } from './entries/index.js';

proveEntries(selectionCalculations, selection);
