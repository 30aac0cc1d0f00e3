/** The last measured mutation scores: kept for every room of the computing core, and high enough. Measured by `npm run mutation`. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '..', '..');
const rooms = readdirSync(join(root, 'packages/core/src/calc'), { withFileTypes: true })
  .filter((one) => one.isDirectory())
  .map(({ name }) => `calc/${name}`);
interface Counts {
  readonly killed: number;
  readonly timeout: number;
  readonly survived: number;
  readonly uncovered: number;
}
const figures: Readonly<Record<string, Counts>> = JSON.parse(readFileSync(join(root, 'docs/mutation.json'), 'utf8'));

describe('the mutation score', () => {
  it('is looked up for more than ten rooms', () => {
    expect(rooms.length).toBeGreaterThan(10);
  });
  it.each(['quantity', ...rooms])('of %s is measured and 85 %% or more', (room) => {
    expect(figures).toHaveProperty([room]);
    const { killed, timeout, survived, uncovered } = figures[room]!;
    expect((killed + timeout) / (killed + timeout + survived + uncovered)).toBeGreaterThanOrEqual(0.85);
  });
});
