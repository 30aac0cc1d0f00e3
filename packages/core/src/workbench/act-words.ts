/** An act of the tightening walk in words, number and unit, as large as a person can read it from the far side of the block. */
import type { Joint } from '../engine/index.js';
import { type Act, answersFor, type OfferedAct, type Seen, WHOLE_JOINT } from '../plan/index.js';
import { treatmentWords } from './fastener-words.js';
import type { ActView, Answer } from './views.js';

const answerLabels: Readonly<Record<Seen, { readonly label: string; readonly key: string; readonly unlike: boolean }>> =
  {
    reached: { label: 'Clicked', key: 'Enter', unlike: false },
    'turned-and-marked': { label: 'Turned and marked', key: 'Enter', unlike: false },
    loosened: { label: 'Loosened', key: 'Enter', unlike: false },
    held: { label: 'Clicked, did not move', key: 'Enter', unlike: false },
    moved: { label: 'It moved first', key: 'm', unlike: true },
    within: { label: 'Within', key: 'Enter', unlike: false },
    short: { label: 'Too short', key: 's', unlike: true },
    beyond: { label: 'Went too far', key: 'b', unlike: true },
    renewed: { label: 'New one fitted', key: 'Enter', unlike: false },
    followed: { label: 'Done as said', key: 'Enter', unlike: false },
    free: { label: 'Turns freely', key: 'Enter', unlike: false },
    stiff: { label: 'Binds or drags', key: 'b', unlike: true },
    'mark-found': { label: 'Mark found', key: 'f', unlike: false },
  };

/** `mark-found` is an answer to a look on return, never to the act itself. */
export function answersOf(act: Act): readonly Answer[] {
  return answersFor(act.kind)
    .filter((seen) => seen !== 'mark-found')
    .map((seen) => ({ id: seen, ...answerLabels[seen] }));
}

const leads: Readonly<Record<Act['kind'], (hole: string) => string>> = {
  torque: (hole) => `Tighten ${hole} to`,
  angle: (hole) => `Turn ${hole} on by`,
  loosen: (hole) => `Loosen ${hole}`,
  verify: (hole) => `Check ${hole} at`,
  stretch: (hole) => `Measure the stretch of ${hole}`,
  renew: (hole) => `Take out and renew ${hole}`,
  instruct: (hole) => (hole === 'the joint' ? 'Before going on' : `At ${hole}`),
  feel: (hole) => (hole === 'the joint' ? 'Turn it by hand' : `After ${hole}, turn by hand`),
};

const NUMBER = /[+-]?\d[\d.,]*(?:\s*(?:\.\.|to|-|–|\/)\s*\d[\d.,]*)?/;

/** Splits "37..43 N·m" into "37 to 43" and "N·m": the sheet's own figures, only laid out larger. */
export function numberAndUnit(text: string): { readonly number: string; readonly unit: string } {
  const match = NUMBER.exec(text);
  if (match === null) return { number: '', unit: '' };
  const number = match[0].replace(/\s*(?:\.\.|–)\s*/, ' to ').trim();
  const unit = text.slice(match.index + match[0].length).trim();
  return { number, unit: unit.replace(/\(.*\)/, '').trim() };
}

/** Acts whose target is a sentence. */
const IN_WORDS: ReadonlySet<Act['kind']> = new Set(['renew', 'instruct', 'feel']);

function figure(act: Act): { readonly number: string; readonly unit: string } {
  if (IN_WORDS.has(act.kind)) return { number: '', unit: '' };
  if (act.kind === 'loosen' && act.target.quantity === 'none') return { number: '', unit: act.target.text };
  const { number, unit: printed } = numberAndUnit(act.target.text);
  const unit = printed === 'deg' ? '°' : printed;
  return act.kind === 'angle' ? { number: number.startsWith('+') ? number : `+${number}`, unit } : { number, unit };
}

const spokenUnits: Readonly<Record<string, string>> = {
  N·m: 'newton metres',
  'N.m': 'newton metres',
  Nm: 'newton metres',
  lbf·ft: 'pound feet',
  'lb-ft': 'pound feet',
  lbf·in: 'pound inches',
  deg: 'degrees',
  '°': 'degrees',
  in: 'inch',
  mm: 'millimetres',
};

/** A unit as it is said. */
export const spokenUnit = (unit: string): string => spokenUnits[unit] ?? unit;

function dressing(act: Act): string {
  if (act.onThread === undefined) return '';
  return `Thread: ${treatmentWords[act.onThread]}. Under the head: ${treatmentWords[act.underHead ?? 'not-stated']}.`;
}

const stageOf = (joint: Joint, act: Act) => joint.stages.find((stage) => stage.number === act.stage);

/** Where the hand is: a hole, a cap, or the joint as a whole. */
export const placeWords = ({ hole, cap }: Act): string =>
  hole === WHOLE_JOINT ? (cap?.name ?? 'the joint') : `hole ${hole}`;

/** The view of an offered act. */
export function actView(joint: Joint, offered: OfferedAct, extra?: { readonly words?: string }): ActView {
  const { act, instance, round } = offered;
  const hole = placeWords(act);
  const { number, unit } = figure(act);
  const lead = leads[act.kind](hole);
  const instruct = IN_WORDS.has(act.kind) ? act.target.text : undefined;
  const note = [extra?.words, instruct, act.note].filter((text) => text !== undefined && text !== '').join(' ');
  return {
    key: `${act.stage}/${act.hole}`,
    stage: act.stage,
    stageName: `Stage ${act.label ?? act.stage}${act.cap === undefined ? '' : `, ${act.cap.name}`}`,
    kind: act.kind,
    hole: act.hole,
    instance,
    round,
    lead,
    number,
    unit,
    printed: act.target.text,
    spoken: `${lead} ${number.replace('+', '')} ${spokenUnit(unit)}`.trim(),
    dressing: dressing(act),
    ...(note !== '' && { note }),
    origin: stageOf(joint, act)?.from.text ?? '',
    answers: answersOf(act),
    ...(act.kind === 'stretch' && { reading: { name: 'stretch', unit: unit === '' ? 'mm' : unit } }),
  };
}

/** The act shown greyed below the current one. */
export const nextActView = (joint: Joint, act: Act): ActView => actView(joint, { act, instance: 1, round: 1 });
