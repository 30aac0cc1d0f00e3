/** What stands in the way of tightening a joint, in words: what is wrong with many holes alike is said once. */
import type { Block } from '../plan/index.js';
import { judgementWords } from './fastener-words.js';
import type { Hindrance } from './views.js';

/** Blocks that many holes share, and what is to be done about one and about several. */
const ALIKE = {
  'fastener-missing': {
    one: 'no fastener recorded. Place it in the fastener map first.',
    several: 'no fastener recorded. Place them in the fastener map first.',
  },
  'fastener-not-new': {
    one: 'a new fastener is due, and the one recorded is used.',
    several: 'new fasteners are due, and those recorded are used.',
  },
  'fastener-not-measured': {
    one: 'measure the free length of this fastener first; it may be used again only up to its limit.',
    several: 'measure the free length of these fasteners first; they may be used again only up to their limit.',
  },
} as const;
type AlikeCode = keyof typeof ALIKE;
type AlikeBlock = Extract<Block, { readonly code: AlikeCode }>;
const isAlike = (block: Block): block is AlikeBlock => Object.hasOwn(ALIKE, block.code);

const NAMED = 5;
function holeNames(holes: readonly string[]): string {
  if (holes.length === 1) return `Hole ${holes[0]}`;
  const more = holes.length - NAMED;
  return `Holes ${holes.slice(0, NAMED).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
}

/** One line for each reason, in the order in which it first stands in the way. */
export function blockHindrances(blocks: readonly Block[]): readonly Hindrance[] {
  const told = new Set<AlikeCode>();
  return blocks.flatMap((block): readonly Hindrance[] => {
    const { code } = block;
    if (!isAlike(block)) return [{ code, words: otherWords(block) }];
    if (told.has(block.code)) return [];
    told.add(block.code);
    const holes = blocks.flatMap((one) => (one.code === block.code ? [one.hole] : []));
    const { one, several } = ALIKE[block.code];
    return [{ code, words: `${holeNames(holes)}: ${holes.length === 1 ? one : several}` }];
  });
}

function otherWords(block: Exclude<Block, AlikeBlock>): string {
  switch (block.code) {
    case 'unknown-joint':
      return `No joint ${block.joint}; the sheet has ${block.valid.join(', ')}.`;
    case 'fastener-wrong':
      return judgementWords(block.judgement);
    case 'gasket-bad':
      return `Gasket: ${block.item} was found bad (${block.seen}). Put it right and check it again first.`;
  }
}
