/** D24: whether each bolt has enough thread and room in its hole. */
import { boltDepth, readThread } from '../../calc/fasteners/index.js';
import {
  type FastenerKind,
  fastenerOfHole,
  type Hole,
  type Joint,
  threadDiameter,
  type Window,
} from '../../engine/index.js';
import { type Length, quadrature } from '../../quantity/index.js';
import type { Alternative, Assessment, Decision, VerdictWord } from '../model.js';
import { decided, figure, listed, placesOf, possible, sizeAt, waiting, worstVerdict } from './decision.js';
import { judged, type Known } from './judged.js';
import type { LengthWords } from './length-words.js';
import { counted } from './other-words.js';

/** Room below the bolt in thread pitches: between the one and the two that the trade asks for. Common practice, no source. */
const USUAL_ROOM = 1.5;

interface Fitted {
  readonly name: string;
  readonly kind: FastenerKind;
  readonly clamped: Length;
  readonly depth: Known;
  readonly length: Known;
  readonly least: Length | undefined;
  readonly pitch: Length | undefined;
}

/** Place of a bolt or a hole on the worksheet. */
export const placeId = (joint: Joint, hole: Hole): string => `${joint.id}-${hole.id}`;

/** A bolt as measured where it is, else as the sheet prints it. */
function lengthOf(assessment: Assessment, joint: Joint, hole: Hole, kind: FastenerKind): Known | undefined {
  const size = sizeAt(assessment, 'bolt-length.length', placeId(joint, hole));
  return size ?? (kind.length && { value: kind.length.value, u: 0 });
}

function fittedAt(assessment: Assessment, joint: Joint, hole: Hole): Fitted | undefined {
  const kind = fastenerOfHole(joint, hole.id);
  const depth = sizeAt(assessment, 'bolt-hole-depth.depth', placeId(joint, hole));
  const length = kind && lengthOf(assessment, joint, hole, kind);
  if (kind === undefined || depth === undefined || length === undefined || hole.clamped === undefined) return undefined;
  const thread = readThread(kind.thread);
  return {
    name: `hole ${hole.id}`,
    kind,
    clamped: hole.clamped.value,
    depth,
    length,
    least: threadDiameter(kind.thread),
    pitch: thread.ok ? thread.value.pitch : undefined,
  };
}

/** Reach, thread and room of one bolt. Source: `boltDepth`; at least one diameter of thread is common practice, no source. */
function fit({ clamped, depth, length, least, pitch }: Fitted) {
  const { engaged, spare } = boltDepth(length.value as Length, [clamped], depth.value as Length, 0 as Length);
  const u = depth.u === undefined || length.u === undefined ? undefined : quadrature(depth.u, length.u);
  const verdicts: VerdictWord[] = [judged({ value: spare, u }, { low: 0 })];
  if (spare >= 0 && pitch !== undefined && spare < USUAL_ROOM * pitch) verdicts.push('near');
  verdicts.push(least === undefined ? 'no data' : judged({ value: engaged, u }, { low: least }));
  return { engaged, spare, verdict: worstVerdict(verdicts) };
}

function asTheyAre(fitted: readonly Fitted[], words: LengthWords): Alternative {
  const made = fitted.map((one) => ({ one, ...fit(one) }));
  return possible({
    id: 'as-they-are',
    words: 'Use the bolts that the sheet names',
    figures: made.map(({ one, engaged, spare }) =>
      figure(
        one.name,
        `${words.length(engaged)} of thread, ${spare < 0 ? `bottoms ${words.length(-spare)} early` : `${words.length(spare)} of room`}`,
      ),
    ),
    verdict: worstVerdict(made.map(({ verdict }) => verdict)),
    against: made
      .filter(({ spare }) => spare < 0)
      .map(({ one }) => `${one.name}: the bolt meets the bottom before it clamps`),
  });
}

/** Lengths of a kind of bolt that have thread and room enough in all of its holes. */
function lengthsFor(fitted: readonly Fitted[]): Window<number> | undefined {
  const ends = fitted.map(({ clamped, depth, least, pitch }) =>
    least === undefined || pitch === undefined
      ? undefined
      : { low: clamped + least, high: clamped + depth.value - USUAL_ROOM * pitch },
  );
  const known = ends.flatMap((one) => one ?? []);
  if (known.length < fitted.length) return undefined;
  return { low: Math.max(...known.map(({ low }) => low)), high: Math.min(...known.map(({ high }) => high)) };
}

function otherBolts(fitted: readonly Fitted[], words: LengthWords): readonly Alternative[] {
  const kinds = [...new Set(fitted.map(({ kind }) => kind.id))];
  const made = kinds.flatMap((id) => {
    const own = fitted.filter(({ kind }) => kind.id === id);
    const window = lengthsFor(own);
    return window === undefined ? [] : [{ own, window }];
  });
  if (made.length === 0 || made.some(({ window: { low = 0, high = 0 } }) => low > high)) return [];
  return [
    possible({
      id: 'other-bolts',
      words: 'Bolts of another length',
      figures: made.map(({ own, window }) => figure(own[0]?.kind.name ?? 'bolt', words.window(window))),
      verdict: 'in',
      against: ['the maker’s length outranks this window: a wrong hole depth is often dirt at its bottom'],
      buys: made.map(({ own, window }) => ({
        part: own[0]?.kind.name ?? 'bolt',
        size: `${own[0]?.kind.thread ?? ''}, ${words.window(window)} under the head`,
        count: own.length,
        for: listed(own.map(({ name }) => name)),
      })),
    }),
  ];
}

export function boltDepths(assessment: Assessment, joint: Joint, words: LengthWords): readonly Decision[] {
  const deep = new Set(placesOf(assessment, 'bolt-hole-depth').map(({ id }) => id));
  const holes = joint.holes.filter((hole) => hole.opensInto === 'blind' && deep.has(placeId(joint, hole)));
  if (holes.length === 0) return [];
  const question = {
    id: 'bolt-depth',
    scope: joint.id,
    title: `Bolts in their holes: ${joint.name}`,
    question: 'Does each bolt have thread and room enough in its hole?',
    area: 'assembly',
    sources: ['thread-engagement'],
  } as const;
  const unread = holes.filter(
    (hole) => sizeAt(assessment, 'bolt-hole-depth.depth', placeId(joint, hole)) === undefined,
  );
  const fitted = holes.flatMap((hole) => fittedAt(assessment, joint, hole) ?? []);
  if (unread.length > 0) return [waiting(question, [`depth of ${counted(unread.length, 'blind hole')}: measure it`])];
  if (fitted.length < holes.length) return [waiting(question, ['length of the bolt and what it clamps, in the sheet'])];
  const stays = asTheyAre(fitted, words);
  const others = stays.verdict === 'in' ? [] : otherBolts(fitted, words);
  return [
    decided(question, {
      alternatives: stays.verdict === 'out' ? [...others, stays] : [stays, ...others],
      proof: 'Judged hole by hole: thread engaged against one diameter, room below the bolt against nothing left.',
      working: fitted.map(
        ({ name, length, clamped, depth }) =>
          `${name}: reach ${words.length(length.value)} − ${words.length(clamped)} = ${words.length(length.value - clamped)}, hole ${words.length(depth.value)}`,
      ),
      cautions: ['Oil or coolant in a blind hole does what a long bolt does: blow the holes dry.'],
    }),
  ];
}
