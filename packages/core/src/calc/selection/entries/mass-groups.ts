import { grams } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { massGroups } from '../mass-groups.js';
import { count, line, numbers, tooMany } from './fit-inputs.js';
import { fromOne } from './lists.js';

export const massGroupsEntry = defineCalculation({
  id: 'selection.mass-groups',
  subject: 'selection',
  title: 'Groups of parts of nearly equal mass',
  summary: 'Sorts pistons, pins or rods into groups so that the largest spread of mass in a group is smallest.',
  inputs: {
    masses: {
      kind: 'mass',
      symbol: 'm',
      meaning: 'mass of each part',
      unit: 'g',
      range: { above: 0, to: grams(1e6) },
      list: true,
    },
    groups: { ...count('k', 'groups to make: engines or banks', 1, 16), default: 1 },
    size: count('n', 'parts of a group', 1, 100),
  },
  outputs: {
    members: { ...line('groups', 'parts of each group, by their number in the list, lightest first'), list: true },
    spreads: {
      kind: 'mass',
      symbol: 'Δm',
      meaning: 'heaviest less lightest part of each group',
      unit: 'g',
      places: 2,
      list: true,
    },
    worst: {
      kind: 'mass',
      symbol: 'max Δm',
      meaning: 'largest of these; no way to make the groups has less',
      unit: 'g',
      places: 2,
    },
    unused: { kind: 'count', symbol: 'rest', meaning: 'parts in no group, by their number', list: true },
  },
  formula: 'minimise max(Δm), and among equals ΣΔm; each group n neighbours in the order of mass',
  assumptions: ['Parts of two groups that cross in the order of mass can be exchanged without widening either group.'],
  sources: ['bellman', 'derived-here'],
  example: {
    inputs: { masses: ['500 g', '511 g', '503 g', '510 g', '501 g', '512 g'], groups: 2, size: 3 },
    outputs: { members: ['1, 5, 3', '4, 2, 6'], spreads: ['3.00 g', '2.00 g'], worst: '3.00 g' },
    from: 'hand arithmetic',
  },
  compute: (v) => {
    const fault = tooMany({ masses: v.masses });
    if (fault) return fault;
    const found = massGroups(v.masses, v.groups, v.size);
    if (!found.ok)
      return conflict(['masses', 'groups', 'size'], `${found.fault.needed} parts are needed for these groups`);
    const { groups, spreads, worst, unused } = found.value;
    return answer({ members: groups.map(numbers), spreads, worst, unused: fromOne(unused) });
  },
});
