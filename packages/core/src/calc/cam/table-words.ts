import { formatQuantity } from '../../quantity/index.js';
import type { TableFault } from './lift-table.js';

/** What is wrong with a table of lifts, as half a sentence. */
export function describeTableFault(fault: TableFault): string {
  switch (fault.code) {
    case 'unlike-lengths':
      return `${fault.angles} angles and ${fault.lifts} lifts; each angle needs its lift`;
    case 'too-few':
      return `${fault.points} readings; at least ${fault.needed} are needed`;
    case 'same-angle':
      return `two readings at ${formatQuantity('angle', fault.angle, 'deg', 2)}; each angle may stand once`;
  }
}
