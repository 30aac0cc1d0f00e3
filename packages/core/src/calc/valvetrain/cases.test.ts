import fastenersJoints from '../../../../../cases/fasteners-joints.json' with { type: 'json' };
import valveRoom from '../../../../../cases/valve-room.json' with { type: 'json' };
import valveSprings from '../../../../../cases/valve-springs.json' with { type: 'json' };
import valvetrain from '../../../../../cases/valvetrain.json' with { type: 'json' };
import { proveEntries } from '../case-rows.suite.js';
import { valvetrainCalculations } from './entries/index.js';

proveEntries(valvetrainCalculations, valvetrain, valveSprings, valveRoom, fastenersJoints);
