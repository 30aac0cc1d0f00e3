import { operationView } from '@gudgeon/core/workbench';
import { describe, expect, it } from 'vitest';
import { engineOf, SHEETS } from '../../../../core/src/workbench/bench.suite.js';
import { Builder } from '../../../../core/src/workbench/work/work.suite.js';
import { leavable } from './leavable.js';

const at = (operation: string) => {
  const person = new Builder(engineOf(SHEETS.single));
  person.begin(operation);
  return { person, offered: () => leavable(operationView(person.bench, operation)!) };
};

describe('what is left out with one reason', () => {
  it('is first of all every worksheet of the operation that waits for nothing', () => {
    const { person, offered } = at('measuring');
    const answer = { kind: 'list', words: 'all held against their standards', result: 'good' } as const;
    person.wish({ kind: 'done', act: 'gauges-checked', answer, method: 'by eye' });
    const [all, ...groups] = offered();
    expect(all?.acts.length).toBeGreaterThan(20);
    expect(all?.acts.every((act) => act.answer === 'worksheet' && act.state === 'ready')).toBe(true);
    expect(groups.length).toBeGreaterThan(1);
    for (const { acts } of groups) expect(acts.length).toBeGreaterThan(1);
    person.wish({ kind: 'skip', acts: all!.acts.map(({ id }) => id), reason: 'not measured on this engine' });
    expect(offered().filter(({ key }) => key === 'worksheets')).toEqual([]);
  });
  it('offers one kind of worksheet once, not as all of them and again as its kind', () => {
    const names = at('head-assembly')
      .offered()
      .map(({ acts }) => acts.map(({ id }) => id).join());
    expect(new Set(names).size).toBe(names.length);
  });
});
