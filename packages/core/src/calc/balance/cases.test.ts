import balance from '../../../../../cases/balance.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { balanceCalculations } from './entries/index.js';

proveEntries(balanceCalculations, balance);
