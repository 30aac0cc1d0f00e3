import { proveEntries } from '../case-rows.suite.js';
import { valveSettingCalculations } from './entries/index.js';

proveEntries(valveSettingCalculations);
