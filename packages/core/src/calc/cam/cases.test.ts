import cam from '../../../../../cases/cam.json' with { type: 'json' };
import camMotion from '../../../../../cases/cam-motion.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { camCalculations } from './entries/index.js';

proveEntries(camCalculations, cam, camMotion);
