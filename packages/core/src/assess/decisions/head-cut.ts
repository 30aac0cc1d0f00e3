/** D12, D48: whether a head is cut, and whether enough of it is left. */
import type { Alternative, Assessment, Decision, OrderLine, Place, Size } from '../model.js';
import {
  blocked,
  type Decider,
  decided,
  figure,
  findingAt,
  limitAt,
  origin,
  placesOf,
  possible,
  sizeAt,
  waiting,
  worstVerdict,
} from './decision.js';
import { consequences, cutCautions, heightAfter, TOLERANCE_FROM } from './face-cut.js';
import type { LengthWords } from './length-words.js';
import { volumeWords } from './other-words.js';

interface Face {
  readonly place: Place;
  readonly gap: Size;
  /** Thickness at the thinnest corner, where measured. */
  readonly thinnest: number | undefined;
  readonly chambers: readonly { readonly name: string; readonly value: number }[];
}

function faceOf(assessment: Assessment, place: Place): Face | undefined {
  const gap = sizeAt(assessment, 'head-flatness.gap', place.id);
  const chambers = placesOf(assessment, 'chamber-volume')
    .filter(({ bank }) => bank === place.bank)
    .flatMap(({ id, name }) => {
      const size = sizeAt(assessment, 'chamber-volume.volume', id);
      return size === undefined ? [] : [{ name, value: size.value }];
    });
  return gap && { place, gap, thinnest: sizeAt(assessment, 'head-thickness.smallest', place.id)?.value, chambers };
}

function leave(assessment: Assessment, { place, gap, thinnest, chambers }: Face, words: LengthWords): Alternative {
  const verdicts = ['head-flatness.gap', 'head-thickness.thickness', 'head-thickness.smallest'].flatMap((property) => {
    const finding = findingAt(assessment, property, place.id);
    return finding === undefined || finding.held.length === 0 ? [] : [finding.verdict];
  });
  const volumes = chambers.map(({ value }) => value);
  return possible({
    id: 'leave',
    words: `Leave the ${place.name} as it is`,
    figures: [
      figure('gap under the straight edge', words.sure(gap.value, gap.u)),
      figure('thickness at the thinnest', thinnest === undefined ? 'not measured' : words.length(thinnest)),
      figure(
        'chambers',
        volumes.length === 0
          ? 'not measured'
          : `${volumeWords(Math.min(...volumes))} to ${volumeWords(Math.max(...volumes))}`,
      ),
    ],
    verdict: worstVerdict(verdicts),
  });
}

/** Thickness that may not be passed: of the machining notes, else the printed wear limit. */
function leastThickness(assessment: Assessment, place: string, words: LengthWords) {
  const stated = assessment.engine.machining?.leastHeadThickness;
  if (stated !== undefined) return { value: stated.value as number, text: `${stated.text} (${stated.from.text})` };
  const worn = limitAt(assessment, 'head-thickness.thickness', place, 'wear');
  const low = worn?.window.low;
  return worn === undefined || low === undefined
    ? undefined
    : { value: low, text: `${words.length(low)} (${origin(worn.limit)})` };
}

function cut(assessment: Assessment, face: Face, words: LengthWords): Alternative {
  const { place, gap, thinnest } = face;
  const least = leastThickness(assessment, place.id, words);
  const left = thinnest === undefined ? undefined : thinnest - gap.value;
  const draft = {
    id: 'clean-up',
    words: `Cut the ${place.name} until it is flat: ${words.length(gap.value)}`,
    figures: [
      figure(
        'thickness left at the thinnest',
        left === undefined ? 'not known: the thickness is not measured' : words.length(left),
      ),
      ...consequences(assessment, place.bank ?? place.id, gap.value, words),
    ],
    verdict: left === undefined ? ('no data' as const) : ('in' as const),
  };
  if (left !== undefined && least !== undefined && left < least.value)
    return blocked({ ...draft, verdict: 'out', against: [`leaves less than ${least.text}`] });
  return possible({
    ...draft,
    against: [
      ...(left === undefined ? ['what is left is not known before the thickness is measured'] : []),
      ...(least === undefined ? ['no least thickness is printed'] : []),
    ],
    orders: headOrders(assessment, face, least, words),
  });
}

function headOrders(
  assessment: Assessment,
  { place, gap, thinnest }: Face,
  least: ReturnType<typeof leastThickness>,
  words: LengthWords,
): readonly OrderLine[] {
  const finish = assessment.engine.machining?.deckFinish;
  const flat =
    limitAt(assessment, 'head-flatness.gap', place.id, 'new') ??
    limitAt(assessment, 'head-flatness.gap', place.id, 'wear');
  const shared = { part: place.name, places: [place.id], measured: 'length' as const };
  return [
    {
      ...shared,
      id: `head-thickness/${place.id}`,
      operation: `Mill the gasket face of the ${place.name}`,
      property: 'head-thickness.smallest',
      ...(thinnest === undefined ? {} : { target: heightAfter(thinnest - gap.value, least?.value) }),
      ...(finish === undefined ? {} : { finish }),
      notes: [
        `Take off ${words.length(gap.value)}, no more than it needs to be flat.`,
        `${TOLERANCE_FROM}.`,
        ...(least ? [`Never below ${least.text}; stop and ask.`] : []),
      ],
    },
    ...(flat === undefined
      ? []
      : [
          {
            ...shared,
            id: `head-flatness/${place.id}`,
            operation: `The ${place.name} is flat afterwards`,
            property: 'head-flatness.gap',
            target: flat.window,
            notes: [`Flatness: ${origin(flat.limit)}.`],
          },
        ]),
  ];
}

function headDecision(assessment: Assessment, place: Place, words: LengthWords): Decision {
  const question = {
    id: 'head-cut',
    scope: place.id,
    title: `Cut of the ${place.name}`,
    question: `Is the gasket face of the ${place.name} cut, and how much?`,
    area: 'heads',
    sources: ['intake-face-table', 'derived-here'],
  } as const;
  const face = faceOf(assessment, place);
  if (face === undefined) return waiting(question, [`flatness of the ${place.name}: measure it`]);
  const stays = leave(assessment, face, words);
  const good = stays.verdict === 'in' || stays.verdict === 'near';
  const cuts = face.gap.value > 0 ? [cut(assessment, face, words)] : [];
  return decided(question, {
    alternatives: good ? [stays, ...cuts] : [...cuts, stays],
    proof: good
      ? 'Nothing that is measured asks for a cut.'
      : 'The least cut is what the straight edge shows; how much the chambers shrink is measured again with the burette.',
    working: [
      'thickness left = thinnest corner − cut',
      ...face.chambers.map(({ name, value }) => `chamber of ${name}: ${volumeWords(value)}`),
    ],
    cautions: cutCautions(assessment),
  });
}

/** A decision for each head. */
export const headCut: Decider = (assessment, words) =>
  placesOf(assessment, 'head-flatness').map((place) => headDecision(assessment, place, words));
