/** The fastener map: what to lay out, what goes into which hole with what on it, and what is there. */
import { headFromAbove, type Marks, type PlanOptions } from '../drawing/index.js';
import { jointById } from '../engine/index.js';
import { type FastenerMap, fastenerMap, type MapRow } from '../plan/index.js';
import { type Bench, givenBy } from './bench.js';
import { fastenerCautions } from './cautions.js';
import { judgementWords, kindText, lengthText, opensWords, treatmentWords, useWords } from './fastener-words.js';
import type { FastenersView, HoleView, LayOut } from './views.js';

function layOutView({ fastener, count }: FastenerMap['layOut'][number]): LayOut {
  return {
    fastener: fastener.id,
    name: fastener.name,
    thread: fastener.thread,
    length: lengthText(fastener),
    use: useWords[fastener.use],
    count,
  };
}

function holeView(bench: Bench, row: MapRow): HoleView {
  const given = givenBy(bench, row.fastener.entry);
  const used = row.fastener.mustBeNew && row.fastener.placed !== undefined && row.fastener.placed.condition !== 'new';
  const wrong = row.state === 'wrong' || used;
  const reason = used
    ? `Hole ${row.hole.id}: a new fastener is due here.`
    : row.judgement && judgementWords(row.judgement);
  return {
    hole: row.hole.id,
    expected: row.expected === undefined ? 'not stated' : kindText(row.expected),
    fastener: row.hole.fastener,
    length: lengthText(row.expected),
    opensInto: opensWords[row.hole.opensInto],
    onThread: treatmentWords[row.onThread],
    underHead: treatmentWords[row.underHead],
    mustBeNew: row.fastener.mustBeNew || row.expected?.use === 'once',
    state: wrong ? 'wrong' : row.state,
    ...(wrong && reason !== undefined && { reason }),
    instance: row.fastener.instance,
    ...(given && { given }),
  };
}

function marksOf(holes: readonly HoleView[], current: string | undefined): Marks {
  const state = (hole: HoleView) =>
    hole.state === 'wrong' ? 'wrong' : hole.state === 'right' ? 'done' : hole.hole === current ? 'lit' : 'missing';
  return Object.fromEntries(holes.map((hole) => [hole.hole, state(hole)]));
}

/** The fastener map of one joint; undefined where the engine has no such joint. */
export function fastenersView(bench: Bench, jointId: string, shown: PlanOptions = {}): FastenersView | undefined {
  const joint = jointById(bench.engine, jointId);
  if (joint === undefined) return undefined;
  const map = fastenerMap(joint, bench.facts);
  const holes = map.rows.map((row) => holeView(bench, row));
  const current = (holes.find((hole) => hole.state === 'wrong') ?? holes.find((hole) => hole.state === 'empty'))?.hole;
  const right = holes.filter((hole) => hole.state === 'right').length;
  return {
    joint: jointId,
    title: `${joint.name}: which fastener goes where`,
    layOut: map.layOut.map(layOutView),
    holes,
    ...(current !== undefined && { current }),
    progress: { done: right, of: holes.length, words: `${right} of ${holes.length} in place` },
    finished: right === holes.length,
    hindrances: holes.flatMap((hole) =>
      hole.reason === undefined ? [] : [{ code: 'fastener-wrong', words: hole.reason }],
    ),
    cautions: fastenerCautions(),
    ...(joint.head !== undefined && {
      figure: headFromAbove(bench.engine, joint.head, marksOf(holes, current), { joint: jointId, ...shown }),
    }),
  };
}
