/** D24: whether bolts may be used again by their length. */
import { type FastenerKind, fastenerOfHole, type Joint } from '../../engine/index.js';
import type { Assessment, BuyLine, Decision } from '../model.js';
import { placeId } from './bolt-depth.js';
import { decided, figure, listed, possible, sizeAt, waiting, worstVerdict } from './decision.js';
import { judged } from './judged.js';
import type { LengthWords } from './length-words.js';
import { counted } from './other-words.js';

/** Bolts that may be used again up to a length. */
export function boltReuse(assessment: Assessment, joint: Joint, words: LengthWords): readonly Decision[] {
  const limited = joint.holes.flatMap((hole) => {
    const kind = fastenerOfHole(joint, hole.id);
    return kind?.lengthLimit === undefined ? [] : [{ hole, kind, limit: kind.lengthLimit }];
  });
  if (limited.length === 0) return [];
  const question = {
    id: 'bolt-reuse',
    scope: joint.id,
    title: `Bolts used again: ${joint.name}`,
    question: 'Which bolts have grown too long to be used again?',
    area: 'assembly',
    sources: ['shop-practice'],
  } as const;
  const seen = limited.flatMap(({ hole, kind, limit }) => {
    const size = sizeAt(assessment, 'bolt-length.length', placeId(joint, hole));
    return size === undefined ? [] : [{ hole, kind, limit, size, verdict: judged(size, { high: limit.value }) }];
  });
  if (seen.length < limited.length)
    return [waiting(question, [`length of ${counted(limited.length - seen.length, 'bolt')}: measure it`])];
  const grown = seen.filter(({ verdict }) => verdict !== 'in');
  const renew = possible({
    id: 'renew-grown',
    words:
      grown.length === 0
        ? 'Renew none'
        : `Renew ${counted(grown.length, 'bolt')}: ${listed(grown.map(({ hole }) => `hole ${hole.id}`))}`,
    figures: seen.map(({ hole, size, limit }) =>
      figure(`hole ${hole.id}`, `${words.sure(size.value, size.u)}, at most ${limit.text}`),
    ),
    verdict: 'in',
    buys: newBolts(grown, joint),
  });
  const all = possible({
    id: 'renew-all',
    words: 'Renew all of them',
    figures: [figure('bolts', `${seen.length}`)],
    verdict: 'in',
    buys: newBolts(seen, joint),
  });
  const keep = possible({
    id: 'use-again',
    words: 'Use all of them again',
    figures: renew.figures,
    verdict: worstVerdict(seen.map(({ verdict }) => verdict)),
  });
  return [
    decided(question, {
      alternatives: grown.length === 0 ? [keep, all] : [renew, all, keep],
      proof:
        grown.length === 0
          ? 'No bolt is longer than its maker allows.'
          : 'A bolt that is not surely shorter than its maker allows has been stretched for good.',
      working: seen.map(({ hole, size }) => `hole ${hole.id}: ${words.length(size.value)}`),
      cautions: ['Length says nothing of necking or of a damaged thread: look along each with a straight edge.'],
    }),
  ];
}

const newBolts = (bolts: readonly { readonly kind: FastenerKind }[], joint: Joint): readonly BuyLine[] =>
  [...new Set(bolts.map(({ kind }) => kind))].map((kind) => ({
    part: kind.name,
    size: kind.thread,
    count: bolts.filter((one) => one.kind === kind).length,
    for: joint.name,
  }));
