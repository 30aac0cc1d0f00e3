/** Cap, rotor and body: where they stand with cylinder one at firing dead centre, and how far to turn for a correction. */
import { rimDistance } from '../../calc/crank/index.js';
import { distributorCap } from '../../drawing/index.js';
import type { Stated } from '../../engine/index.js';
import {
  bodyTurn,
  type CapPost,
  type IgnitionPlan,
  ignitionPlan,
  type NoIgnitionPlan,
  oneTooth,
} from '../../plan/index.js';
import { type Angle, formatQuantity, type Length, parseQuantity, type QuantityKind } from '../../quantity/index.js';
import type { Bench } from '../bench.js';
import type { CitedWords, IgnitionAsked, IgnitionView } from '../running-views.js';
import { cautionsOf } from './facts-at.js';

const WHY: Readonly<Record<NoIgnitionPlan['code'], string>> = {
  'no-spark': 'A diesel has no spark: its injection is timed by the marks of the pump.',
  'not-in-sheet': 'The sheet says nothing of a distributor.',
  'no-firing-order': 'The sheet does not print the firing order, so no lead can be placed.',
};
/** Teeth for which one tooth too many is worked out, as an example. */
const EXAMPLE_TEETH = 13;

/** What the sheet tells of the ignition, and the answers to what the person asks. */
export function ignitionView(bench: Bench, asked: IgnitionAsked = {}): IgnitionView {
  const plan = ignitionPlan(bench.engine);
  const common = { title: 'Ignition', cautions: cautionsOf(bench, ['ignition']) };
  if (!plan.ok)
    return {
      ...common,
      known: false,
      why: WHY[plan.fault.code],
      posts: [],
      rotor: '',
      advance: [],
      answers: [],
      warnings: [],
    };
  const { posts, rotor } = plan.value;
  const firstAt = posts[0]?.fromFront;
  return {
    ...common,
    known: true,
    why: '',
    posts: posts.map((post, index) => ({
      cylinder: post.cylinder,
      degrees: degreesOf(post.past),
      words: postWords(post, index, plan.value),
    })),
    rotor: rotorWords(plan.value),
    advance: advanceOf(bench),
    answers: answersTo(bench, asked, plan.value),
    warnings: warningsOf(plan.value),
    figure: distributorCap({
      posts: posts.map(({ cylinder, past }) => ({ cylinder, past: degreesOf(past) })),
      ...(rotor && { rotor }),
      ...(firstAt !== undefined && { firstAt: degreesOf(firstAt) }),
    }),
  };
}

const degreesOf = (angle: Angle): number => Math.round((angle * 180e4) / Math.PI) / 1e4;
const angleText = (angle: Angle): string => `${Math.round((angle * 1800) / Math.PI) / 10}°`;

function postWords({ cylinder, past, fromFront }: CapPost, index: number, { rotor }: IgnitionPlan): string {
  const where = fromFront === undefined ? '' : `; ${angleText(fromFront)} clockwise from the front of the engine`;
  if (index === 0) return `cylinder ${cylinder}: rotor here at firing dead centre of cylinder ${cylinder}${where}`;
  const way = rotor === undefined ? 'the way that the rotor runs' : rotor;
  return `cylinder ${cylinder}: ${angleText(past)} past it, ${way}${where}`;
}

function rotorWords({ rotor, posts, even }: IgnitionPlan): string {
  const order = posts.map(({ cylinder }) => cylinder).join('-');
  const sense =
    rotor === undefined
      ? 'The sheet does not say which way the rotor runs: turn the crank and look.'
      : `The rotor runs ${rotor}, seen from above the cap.`;
  return `${sense} Leads in this order the same way round: ${order}.${even ? '' : ' It fires at uneven intervals: the posts are not evenly spaced.'}`;
}

function advanceOf({ engine }: Bench): readonly CitedWords[] {
  const ignition = engine.running?.ignition;
  const line = (name: string, stated: Stated<number> | undefined, more = ''): readonly CitedWords[] =>
    stated === undefined
      ? []
      : [
          {
            words: `${name}: ${stated.text} before dead centre${more}${stated.note ? ` (${stated.note})` : ''}`,
            origin: stated.from.text,
          },
        ];
  const speed = ignition?.fullAdvanceSpeed;
  return [
    ...line('standing', ignition?.staticAdvance),
    ...line('all in', ignition?.fullAdvance, speed ? ` from ${speed.text}` : ''),
  ];
}

function read<K extends QuantityKind>(kind: K, text: string): { readonly value?: number; readonly fault?: string } {
  const parsed = parseQuantity(kind, text);
  return parsed.ok ? { value: parsed.value.value } : { fault: `"${text}" cannot be read: write it with its unit` };
}

function answersTo(
  { engine }: Bench,
  { damperDiameter, read: keyed }: IgnitionAsked,
  { rotor }: IgnitionPlan,
): IgnitionView['answers'] {
  const ignition = engine.running?.ignition;
  return [
    ...(damperDiameter === undefined
      ? []
      : rimAnswers(damperDiameter, [
          ['standing', ignition?.staticAdvance],
          ['all in', ignition?.fullAdvance],
        ])),
    ...(keyed === undefined ? [] : [turnAnswer(keyed, ignition?.staticAdvance, rotor)]),
  ];
}

function rimAnswers(
  text: string,
  advances: readonly (readonly [string, Stated<Angle> | undefined])[],
): IgnitionView['answers'] {
  const { value: diameter, fault } = read('length', text);
  if (diameter === undefined || !(diameter > 0))
    return [
      {
        name: 'mark on the rim',
        value: 'no data',
        working: fault ?? `"${text}" is no diameter: more than zero is needed`,
      },
    ];
  return advances.flatMap(([name, advance]) => {
    if (advance === undefined) return [];
    const distance = rimDistance(diameter as Length, advance.value);
    const both = `${formatQuantity('length', distance, 'mm', 1)} (${formatQuantity('length', distance, 'in', 3)})`;
    return [
      {
        name: `mark on the rim, ${name}`,
        value: both,
        working: `π · ${text.trim()} · ${advance.text} / 360 deg, along the rim, on the side that comes before the dead centre mark`,
      },
    ];
  });
}

function turnAnswer(
  text: string,
  wanted: Stated<Angle> | undefined,
  rotor: IgnitionPlan['rotor'],
): IgnitionView['answers'][number] {
  const name = 'turn of the body';
  const { value, fault } = read('angle', text);
  if (value === undefined) return { name, value: 'no data', working: fault! };
  if (wanted === undefined) return { name, value: 'no data', working: 'the sheet gives no standing advance to set' };
  const turn = bodyTurn(value as Angle, wanted.value, rotor ?? 'clockwise');
  const same = Math.abs(turn.crank) < 1e-9;
  const way = rotor === undefined ? (turn.crank > 0 ? 'against the rotor' : 'with the rotor') : turn.sense;
  return {
    name,
    value: same ? 'none: it stands right' : `${angleText(turn.angle)} ${way}`,
    working: `${text.trim()} read, ${wanted.text} wanted: ${angleText(Math.abs(turn.crank) as Angle)} of the crank is half of that at the distributor; against the rotor is earlier`,
  };
}

function warningsOf({ posts }: IgnitionPlan): readonly string[] {
  const first = posts[0]?.cylinder ?? 1;
  const opposite = posts.find(({ past }) => Math.abs(past - Math.PI) < 1e-6)?.cylinder;
  const tooth = oneTooth(EXAMPLE_TEETH);
  return [
    `The mark on the damper comes by twice a cycle. At firing both valves of cylinder ${first} are shut and loose${opposite === undefined ? '' : ` and those of cylinder ${opposite} rock`}; at the overlap its own rock. Set on the overlap, the rotor points half a turn wrong${opposite === undefined ? '' : `, to cylinder ${opposite}`}.`,
    `One tooth out shows as a step, not as a little: with ${EXAMPLE_TEETH} teeth on the gear it is ${angleText(tooth.distributor)} of the distributor, ${angleText(tooth.crank)} of the crank. A body that has to be turned that far is in the wrong tooth.`,
    'Put it down a little before its place: a slanted gear turns the rotor as it drops in.',
  ];
}
