import type { Moment } from '@gudgeon/core/workbench';
import { localTime, personName } from '../log/index.js';

/** Who acts and when, as this device knows it. */
export const momentNow = (): Moment => ({ at: localTime(new Date()), by: personName() });
