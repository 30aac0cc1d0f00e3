import type { Operation, WorkAct } from '../../plan/index.js';

/** "Press the shells in by place: main 1 to main 5" where a chunk is one act at many places, else which part of its operation it is. */
export function chunkTitle({ title }: Pick<Operation, 'title'>, acts: readonly WorkAct[]): string {
  const [first, last] = [acts[0], acts.at(-1)];
  if (first === undefined || last === undefined) return title;
  if (acts.some(({ rule }) => rule !== first.rule)) return `${title}, part ${first.chunk}`;
  const does = first.does.replace(/[.:]$/, '');
  if (first.place.name === '') return does;
  return first === last ? `${does}: ${first.place.name}` : `${does}: ${first.place.name} to ${last.place.name}`;
}
