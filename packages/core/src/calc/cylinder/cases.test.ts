import cylinder from '../../../../../cases/cylinder.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { cylinderCalculations } from './entries/index.js';

proveEntries(cylinderCalculations, cylinder);
