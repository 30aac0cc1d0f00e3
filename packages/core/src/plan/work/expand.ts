import { type Engine, type Joint, valveKey, valvesOf } from '../../engine/index.js';
import { momentOf, roleOfJoint } from './homes.js';
import type { ActRule, Known, Operation, Subject, Trait, WorkAct, WorkPlace, WorksheetToFill } from './model.js';
import { isOfMains, type Places } from './places.js';
import { applies } from './traits.js';

/** One act at one place, with the rule that it came from: what the graph is tied from. */
export interface Expanded {
  readonly act: Omit<WorkAct, 'chunk'>;
  readonly rule: ActRule;
  readonly place: WorkPlace;
}
export interface Ground {
  readonly engine: Engine;
  readonly places: Places;
  readonly traits: ReadonlyMap<Trait, Known>;
  readonly worksheets: readonly WorksheetToFill[];
}

/** The acts of an operation for this engine, in the order of its rules; a rule that does not apply has none. */
export function actsOf(ground: Ground, operation: Operation): readonly Expanded[] {
  return operation.acts.flatMap((rule) => {
    const fits = applies(ground.traits, rule.when);
    const spots = spotsOf(ground, rule);
    /** What the sheet lists is done, whatever it says of the engine's type. */
    if (!fits.applies && !spots.some(({ subject }) => subject?.kind === 'joint')) return [];
    return spots.map((spot) => expanded(operation, rule, spot, fits.unsure));
  });
}

interface Spot {
  readonly place: WorkPlace;
  readonly subject?: Subject;
  readonly over?: Partial<ActRule>;
}

function expanded(operation: Operation, rule: ActRule, { place, subject, over }: Spot, unsure?: string): Expanded {
  const {
    per: _per,
    when: _when,
    position: _position,
    chain: _chain,
    joint: _joint,
    worksheets: _sheets,
    ...kept
  } = {
    ...rule,
    ...over,
  };
  const act = {
    ...kept,
    id: place.kind === 'engine' ? rule.id : `${rule.id}@${place.id}`,
    rule: rule.id,
    operation: operation.id,
    place,
    ...(subject && { subject }),
    ...(unsure !== undefined && { unsure }),
  };
  return { act, rule, place };
}

function spotsOf(ground: Ground, rule: ActRule): readonly Spot[] {
  if (rule.worksheets !== undefined) return worksheetSpots(ground, rule);
  const joints = rule.joint === undefined ? [] : ground.engine.joints.filter((one) => roleOfJoint(one) === rule.joint);
  if (joints.length > 0) return joints.map((joint) => jointSpot(ground.engine, joint));
  const places = ground.places.of[rule.per ?? 'engine'];
  if (rule.setsValve !== true) return places.map((place) => ({ place }));
  const valves = new Map(valvesOf(ground.engine).map((valve) => [valveKey(valve), valve]));
  return places.map((place) => {
    const valve = valves.get(place.id);
    return valve === undefined ? { place } : { place, subject: { kind: 'valve', valve } };
  });
}

function worksheetSpots({ worksheets }: Ground, rule: ActRule): readonly Spot[] {
  return worksheets
    .filter((sheet) => momentOf(sheet) === rule.worksheets)
    .flatMap((sheet) =>
      sheet.places.map(({ id, name, cylinder, journal, valve }) => ({
        place: {
          kind: 'worksheet' as const,
          id: `${sheet.feature}/${id}`,
          name: `${sheet.title}, ${name}`,
          ...(cylinder !== undefined && { cylinders: [cylinder] }),
          ...(valve !== undefined && { valve: valveKey(valve) }),
          ...(journal !== undefined && isOfMains(sheet) && { main: journal }),
        },
        subject: { kind: 'worksheet' as const, feature: sheet.feature, place: id },
      })),
    );
}

/** Angle and stretch stretch a fastener for good: its joint is looked at on return, never gone round again. */
const turnedForGood = (joint: Joint) => joint.stages.some(({ act }) => act.kind === 'angle' || act.kind === 'stretch');

/** Half a minute for each fastener of each stage, and five to lay out: common practice, no source. */
function minutesOf(joint: Joint): number {
  const turns = joint.stages.map(({ act, holes }) => {
    if (act.kind === 'feel' || act.kind === 'instruct') return 1;
    return holes === 'all' ? joint.holes.length : holes.length;
  });
  return 5 + Math.ceil(turns.reduce((sum, count) => sum + count, 0) / 2);
}

function jointSpot(engine: Engine, joint: Joint): Spot {
  const head = engine.heads.find(({ id }) => id === joint.head);
  return {
    place: {
      kind: 'joint',
      id: joint.id,
      name: joint.name,
      ...(head && { cylinders: head.cylinders }),
    },
    subject: { kind: 'joint', joint: joint.id },
    over: {
      answer: 'joint-walk',
      ask: 'The tightening of the joint, fastener by fastener',
      minutes: minutesOf(joint),
      ...(turnedForGood(joint) && { noReturn: 'turned by angle or stretch: a second turn stretches it out' }),
    },
  };
}
