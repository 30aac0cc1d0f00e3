/** Fit the head: way up, faces, dowels, blind holes and every opening of the gasket, each looked at and touched. */
import { gasketFigure, type Marks, type PlanOptions } from '../drawing/index.js';
import type { Head, Opening } from '../engine/index.js';
import { type GasketChecks, type GasketItem, gasketChecks } from '../plan/index.js';
import { type Bench, givenBy } from './bench.js';
import { gasketCautions } from './cautions.js';
import type { Answer, GasketItemView, GasketView } from './views.js';

const good = (label: string): Answer => ({ id: 'good', label, key: 'Enter', unlike: false });
const bad = (label: string): Answer => ({ id: 'bad', label, key: 'x', unlike: true });

const openingNames: Readonly<Record<Opening['kind'], string>> = {
  bore: 'cylinder bore',
  water: 'water port',
  oil: 'oil port',
  pushrod: 'pushrod opening',
  bolt: 'bolt hole',
  dowel: 'dowel hole',
  'timing-drive': 'opening of the cam drive',
};

/** The sheet’s words as a sentence of their own. */
const sentence = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1).replace(/[.\s]+$/, '')}.`;

function openingWords(opening: Opening): Pick<GasketItemView, 'title' | 'instruction' | 'answers'> {
  const name = `${openingNames[opening.kind]} ${opening.id}`;
  switch (opening.intent) {
    case 'open':
      return {
        title: name,
        instruction:
          'Lay the gasket on the deck, then on the head. Put a finger or a rod through: open in gasket, block and head, nothing overhanging.',
        answers: [good('Open in all three'), bad('Covered or overhanging')],
      };
    case 'metered':
      return {
        title: `${name}, metered`,
        instruction: 'The gasket leaves only a small hole here on purpose. See that the small hole is there and clear.',
        answers: [good('Small hole there, clear'), bad('Missing or blocked')],
      };
    case 'closed':
      return {
        title: `${name}, closed`,
        instruction: 'The gasket closes this opening on purpose, as its maker drew it. See that it is closed.',
        answers: [good('Closed as drawn'), bad('Open')],
      };
  }
}

function itemWords(head: Head, item: GasketItem): Pick<GasketItemView, 'title' | 'instruction' | 'answers'> {
  switch (item.kind) {
    case 'way-up':
      return {
        title: 'Way up and front',
        instruction: `${sentence(head.gasket.wayUp)} Touch the mark with a finger and say which side it shows.`,
        answers: [good('Mark seen, right way'), bad('Wrong way or no mark')],
      };
    case 'faces':
      return {
        title: 'Both faces',
        instruction:
          'Wipe deck and head; draw a clean white cloth along both. No film, no old gasket, no nick across a sealing edge.',
        answers: [good('Cloth stays white'), bad('Dirt, film or nick')],
      };
    case 'dowels':
      return {
        title: 'Dowels',
        instruction: 'Feel each dowel: seated, standing proud, and entering gasket and head by hand.',
        answers: [good('All seated and proud'), bad('Missing, loose or bent')],
      };
    case 'holes-dry': {
      const blind = item.blindHoles ?? [];
      const which = blind.length === 0 ? 'every bolt hole' : `blind holes ${blind.join(', ')}`;
      return {
        title: 'Bolt holes dry',
        instruction: `Look into ${which} with a light: threads clean, bottom dry. Eye protection on when blowing them out.`,
        answers: [good('Dry to the bottom'), bad('Liquid or dirt in a hole')],
      };
    }
    case 'opening':
      return item.opening === undefined
        ? { title: item.item, instruction: '', answers: [good('Good'), bad('Bad')] }
        : openingWords(item.opening);
  }
}

function itemView(bench: Bench, head: Head, item: GasketItem): GasketItemView {
  const given = givenBy(bench, item.entry);
  return {
    item: item.item,
    ...(item.opening && { part: item.opening.id }),
    ...itemWords(head, item),
    state: item.state,
    ...(given && item.checked && { given: { ...given, seen: item.checked.seen } }),
  };
}

function marksOf(checks: GasketChecks): Marks {
  return Object.fromEntries(
    checks.items.flatMap((item) => {
      if (item.opening === undefined) return [];
      const state =
        item.state === 'good' ? 'done' : item.state === 'bad' ? 'wrong' : item.item === checks.current ? 'lit' : 'idle';
      return [[item.opening.id, state]] as const;
    }),
  );
}

/** The gasket checks of one head; undefined where the engine has no such head. */
export function gasketView(bench: Bench, headId: string, shown: PlanOptions = {}): GasketView | undefined {
  const head = bench.engine.heads.find((one) => one.id === headId);
  const checks = gasketChecks(bench.engine, headId, bench.facts);
  if (head === undefined || checks === undefined) return undefined;
  const done = checks.items.filter((item) => item.state === 'good').length;
  return {
    head: headId,
    title: `${head.name}: gasket`,
    dressing: head.gasket.dressing,
    origin: head.gasket.from.text,
    items: checks.items.map((item) => itemView(bench, head, item)),
    ...(checks.current !== undefined && { current: checks.current }),
    progress: { done, of: checks.items.length, words: `${done} of ${checks.items.length} checked` },
    finished: checks.finished,
    cautions: gasketCautions(),
    figure: gasketFigure(bench.engine, headId, marksOf(checks), shown),
  };
}
