/**
 * A person who builds a whole engine for the tests: looks at the bench view, does what stands there, records it where it is
 * recorded. Everything is invented. One call is one act, however many entries that takes.
 */
import { jointById, jointsOfHead } from '../../engine/index.js';
import { answersFor, gasketItems, type PartKind, partsOf, scheduleOf, walk } from '../../plan/index.js';
import { proposeMeasured, typedReading } from '../measuring-commands.js';
import { proposeCompression, proposeGauge, proposeLeakage } from '../running/index.js';
import { slotsOf } from '../slot-names.js';
import type { WorkActView, WorkWish } from '../work-views.js';
import { workBenchView } from './bench-view.js';
import { answeredBy } from './finished-elsewhere.js';
import type { Builder } from './work.suite.js';
import { workAt } from './work-facts.js';

/** Features that the person reads, and what the gauge shows; the others are left out with a reason. */
export const READ: Readonly<Record<string, string>> = {
  'crank-end-float': '0.20 mm',
  'cylinder-bore': '80.011 mm',
  'piston-skirt': '79.950 mm',
  'ring-gap-top': '0.30 mm',
  'ring-gap-second': '0.31 mm',
};
const PHOTO = 'ab'.repeat(32);

/** What was done: the act, or the look or aid that stood in the way; undefined once all of it is signed. */
export function playOne(person: Builder): string | undefined {
  const { standing } = workAt(person.bench);
  if (standing.signedOff) return undefined;
  const [owed] = standing.looksOwed;
  if (owed !== undefined) {
    person.wait(11);
    const look = { looker: 'Ben', method: 'lamp and mark', result: 'good', seen: 'as recorded' } as const;
    person.wish({ kind: 'look', act: owed.act.id, ...look });
    return `look ${owed.act.id}`;
  }
  const away = [...standing.away.parts, ...standing.away.shop][0];
  const view = workBenchView(person.bench, { now: person.now(), ...(away && { act: away.act.id }) });
  if (view.current === undefined) throw new Error(view.nothing ?? 'nothing is offered, and it is not said why');
  person.wait(view.current.act.minutes);
  answer(person, view.current.act);
  return view.current.act.id;
}

function answer(person: Builder, act: WorkActView): void {
  const found = workAt(person.bench).plan.byId.get(act.id)!;
  switch (answeredBy(person.bench, found)) {
    case 'worksheet':
      fillWorksheet(person, act);
      break;
    case 'joint':
      tighten(person, act.opens!.place.replace('tighten/', ''));
      break;
    case 'fasteners':
      for (const { id } of jointsOfHead(person.engine, found.place.id)) place(person, id);
      break;
    case 'gasket':
      checkGasket(person, found.place.id);
      break;
    case 'parts':
      moveParts(person, found.rule, found.place.valve!);
      break;
    case 'valve':
      setValve(person, found.place.valve!);
      break;
    case 'valve-again':
      readAgain(person, found.place.valve!);
      break;
    case 'oil':
      person.write({ kind: 'oil-seen', data: { valve: valveOf(person, found.place.valve!), how: 'runs' } });
      break;
    case 'start':
      start(person, found.rule);
      break;
    case 'run-in':
      runIn(person, found.place.id);
      break;
    case 'cylinder-tests':
      testCylinder(person, found.rule, Number(found.place.id));
      break;
    default:
      person.wish(wishFor(person, act));
  }
}

function wishFor(person: Builder, act: WorkActView): WorkWish {
  if (act.answer === 'sign-off') {
    const skips = workAt(person.bench).standing.skips.map(({ act: { id } }) => id);
    return { kind: 'sign', words: 'read, and taken over', skips };
  }
  return { kind: 'done', act: act.id, answer: answerTo(act), method: 'by hand and eye' };
}

function answerTo(act: WorkActView): Extract<WorkWish, { kind: 'done' }>['answer'] {
  const result = 'good';
  switch (act.answer) {
    case 'value':
      return { kind: 'value', text: `0.20 ${act.units[0] ?? ''}`.trim(), result };
    case 'photo':
      return { kind: 'photo', photo: PHOTO, result };
    case 'register':
      return { kind: 'register', position: act.place, end: 'marked end up', face: 'front', condition: 'good', result };
    case 'felt-or-seen':
      return { kind: 'felt-or-seen', words: 'as it should be', result };
    default:
      return { kind: 'list', words: 'counted: all there', result };
  }
}

function fillWorksheet(person: Builder, act: WorkActView): void {
  const feature = act.opens!.place.replace('measure/', '');
  const text = READ[feature];
  if (text === undefined) {
    person.wish({ kind: 'skip', acts: unread(person, act), reason: 'not read on this engine (invented)' });
    return;
  }
  const place = workAt(person.bench).plan.byId.get(act.id)!.place.id;
  for (const slot of [...slotsOf(person.engine).keys()].filter((one) => one.startsWith(`${place}/`))) {
    const proposal = proposeMeasured(person.bench, { slot, text, source: 'keyed', decimalMark: '.' });
    if (!proposal.ok) throw new Error(proposal.fault);
    for (const entry of proposal.value) person.append(entry);
  }
}

/** The worksheets beside this one that nobody reads: left out at once, with one reason. */
const unread = (person: Builder, { operation }: WorkActView): readonly string[] =>
  workAt(person.bench).standing.ready.flatMap(({ act }) =>
    act.operation === operation && act.subject?.kind === 'worksheet' && READ[act.subject.feature] === undefined
      ? [act.id]
      : [],
  );

/** Every fastener that the walk asks for is placed as the sheet says, new where it must be. */
function place(person: Builder, id: string): void {
  const joint = jointById(person.engine, id)!;
  for (const hole of joint.holes) {
    const kind = joint.fasteners.find((one) => one.id === hole.fastener);
    person.write({
      kind: 'fastener-placed',
      data: {
        joint: id,
        hole: hole.id,
        instance: 1,
        fastener: hole.fastener,
        condition: kind?.use === 'once' ? 'new' : 'used',
        onThread: hole.onThread,
        underHead: hole.underHead,
      },
    });
  }
}

function tighten(person: Builder, id: string): void {
  const joint = jointById(person.engine, id)!;
  for (;;) {
    const offer = walk(joint, person.bench.facts).current;
    if (offer === undefined) return;
    if (offer.kind === 'place') {
      const hole = joint.holes.find((one) => one.id === offer.hole)!;
      const { fastener, onThread, underHead } = hole;
      const { hole: at, instance } = offer;
      person.write({
        kind: 'fastener-placed',
        data: { joint: id, hole: at, instance, fastener, condition: 'new', onThread, underHead },
      });
      continue;
    }
    const { stage, hole, target, kind } = offer.act;
    const { instance, round } = offer;
    const seen = answersFor(kind)[0]!;
    person.write({
      kind: 'act-done',
      data: { joint: id, stage, hole, instance, round, target: target.text, seen },
    });
  }
}

function checkGasket(person: Builder, head: string): void {
  for (const item of gasketItems(person.engine.heads.find(({ id }) => id === head)!))
    person.write({ kind: 'gasket-checked', data: { head, item, result: 'good', seen: 'as the sheet says' } });
}

const valveOf = (person: Builder, key: string) =>
  workAt(person.bench).plan.acts.flatMap(({ subject, place }) =>
    subject?.kind === 'valve' && place.valve === key ? [subject.valve] : [],
  )[0]!;

function moveParts(person: Builder, rule: string, key: string): void {
  const valve = valveOf(person, key);
  const kinds = partsOf(person.engine);
  if (rule === 'valve-gear-tagged') {
    for (const part of kinds) person.write({ kind: 'part-tagged', data: { part, valve, condition: 'used, good' } });
    return;
  }
  const part: PartKind = rule === 'pushrod-in' ? 'pushrod' : kinds.includes('lifter') ? 'lifter' : 'follower';
  person.write({ kind: 'part-fitted', data: { part, to: valve, from: valve, lubricant: 'assembly lube' } });
}

function setValve(person: Builder, key: string): void {
  const lash = typedReading('length', '0.20 mm');
  if (!lash.ok) throw new Error(lash.fault);
  person.write({
    kind: 'valve-set',
    data: { valve: valveOf(person, key), method: 'stop', adjustment: 'lash', lash: lash.value, condition: 'cold' },
  });
}

function readAgain(person: Builder, key: string): void {
  person.write({
    kind: 'valve-rechecked',
    data: { valve: valveOf(person, key), result: 'good', seen: 'the feeler drags' },
  });
}

/** It fires and runs at once; the gauge is read as the act after it. */
function start(person: Builder, rule: string): void {
  if (rule === 'started') person.write({ kind: 'start-tried', data: { crankedSeconds: 4, outcome: 'runs' } });
  else person.take(proposeGauge(person.bench, { what: 'oil-pressure', text: '2.4 bar' }));
}

/** One line of the schedule by the clock, from its beginning to its end. */
function runIn(person: Builder, line: string): void {
  const { steps } = scheduleOf(person.engine);
  const step = steps[Number(line.replace('line-', '')) - 1]!;
  person.write({ kind: 'run-in-begun', data: { step: step.number } });
  person.wait((step.seconds ?? 0) / 60);
  person.write({ kind: 'run-in-stopped', data: { why: 'the step is over' } });
}

function testCylinder(person: Builder, rule: string, cylinder: number): void {
  const proposal =
    rule === 'compression-read'
      ? proposeCompression(person.bench, { cylinder, text: '10.2 bar', wet: false, strokes: 6 })
      : proposeLeakage(person.bench, { cylinder, supply: '6.9 bar', held: '6.3 bar', heard: 'crankcase' });
  person.take(proposal);
}
