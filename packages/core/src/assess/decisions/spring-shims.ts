/** D38: shims under the valve springs, so that heights, seat loads and the room to coil bind are what is asked for. */
import type { Assessment, Decision } from '../model.js';
import { type Decider, decided, notMeasured, placesOf, waiting } from './decision.js';
import type { LengthWords } from './length-words.js';
import { MOST_SHIMS } from './shim-stacks.js';
import { plansOf } from './spring-plans.js';
import { HEIGHT, springSeen } from './spring-seen.js';
import { type Kind, springAlternative } from './spring-shimmed.js';

function decisionFor(assessment: Assessment, kind: Kind, words: LengthWords): readonly Decision[] {
  const places = placesOf(assessment, 'installed-height').filter(({ valve }) => valve?.kind === kind);
  if (places.length === 0) return [];
  const sizes = assessment.engine.stock?.springShims ?? [];
  const question = {
    id: 'spring-shims',
    scope: kind,
    title: `Shims under the ${kind} springs`,
    question: `Which shims go under the ${kind} springs?`,
    area: 'springs',
    sources: ['branch-and-bound', 'shop-practice'],
  } as const;
  const springs = places.flatMap((place) => springSeen(assessment, place) ?? []);
  if (springs.length < places.length) return [waiting(question, notMeasured(assessment, 'installed-height', HEIGHT))];
  const alternatives = plansOf(springs, sizes).map((plan) => springAlternative(springs, plan, sizes, kind, words));
  const stays = alternatives.find(({ id }) => id === 'as-is');
  // What stands well is left alone; else the plans, as printed first.
  const order = stays?.verdict === 'in' ? [stays, ...alternatives.filter((one) => one !== stays)] : alternatives;
  return [
    decided(question, {
      alternatives: order,
      proof:
        sizes.length === 0
          ? 'The sheet names no spring shims.'
          : `Exact search over all stacks of up to ${MOST_SHIMS} shims from stock for each valve.`,
      working: [
        'height = height without shims − shims; load = load on the tester + rate · (height on the tester − height)',
        'room to coil bind = height − lift − bind height; lift from lobe and ratio of the sheet',
      ],
      cautions: ['Installed heights are read without shims: where shims were in, add their thickness first.'],
    }),
  ];
}

/** Shims for intake and exhaust springs. */
export const springShims: Decider = (assessment, words) => [
  ...decisionFor(assessment, 'intake', words),
  ...decisionFor(assessment, 'exhaust', words),
];
