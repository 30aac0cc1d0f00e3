import fasteners from '../../../../../cases/fasteners.json' with { type: 'json' };
import fastenersJoints from '../../../../../cases/fasteners-joints.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { fastenerCalculations } from './entries/index.js';

proveEntries(fastenerCalculations, fasteners, fastenersJoints);
