import { it } from 'vitest';
import { PLANS } from './work.suite.js';

it('x', () => {
  for (const [p, , plan] of PLANS)
    console.log(
      p,
      plan.acts.length,
      [...plan.before.values()].flat().length,
      plan.assumptions.length,
      plan.acts.reduce((s, a) => s + a.minutes, 0) / 60,
    );
});
