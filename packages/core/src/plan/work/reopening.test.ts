import { describe, expect, it } from 'vitest';
import { doing, fact } from './bench-person.suite.js';
import type { WorkPlan } from './model.js';
import { builtOn, placesIn, reopenedBy } from './reopening.js';
import { DONE_AGAIN, REOPENING_RULES } from './reopenings/index.js';
import { workStanding } from './standing.js';
import { planNamed } from './work.suite.js';

const V8 = planNamed('quernside');
const DIESEL = planNamed('tollbarrow');
const TWIN_CAM = planNamed('pellgarth');
const joint = (plan: WorkPlan, rule: string, head: string) =>
  plan.acts.find((act) => act.rule === rule && act.subject?.kind === 'joint' && act.subject.joint.includes(head))?.id ??
  'none';
const LEFT = joint(V8, 'head-tightened', 'left');
const RIGHT = joint(V8, 'head-tightened', 'right');
/** Cylinder 1 stands in the left bank of the V8, cylinder 2 in the right. */
const opened = (plan: WorkPlan, rule: string, place?: string) => {
  const reopened = reopenedBy(plan, { rule, why: 'seen', ...(place !== undefined && { place }) });
  if (!reopened.ok) throw new Error(JSON.stringify(reopened.fault));
  return new Set(reopened.value.acts);
};

interface Row {
  readonly rule: string;
  readonly plan?: WorkPlan;
  readonly place?: string;
  readonly opens: readonly string[];
  readonly leaves: readonly string[];
}
/** One row for each rule: what it opens near and far, and what it leaves as it is. */
const ROWS: readonly Row[] = [
  {
    rule: 'block-cut',
    opens: [
      'block-washed',
      'bore-white@3',
      'cam-in',
      'saddles-wiped',
      'piston-in@3',
      'pan-tightened@oil-pan',
      'gasket-down@left',
    ],
    leaves: ['crank-washed', 'head-washed@left', 'bore-honed@3', 'seat-proved@3-intake-1', 'rings-filed@3'],
  },
  {
    rule: 'bore-cut',
    place: '3',
    opens: [
      'worksheet@cylinder-bore/3',
      'rings-filed@3',
      'piston-set-washed@3',
      'bore-white@3',
      'piston-in@3',
      'rods-tightened@rods',
    ],
    leaves: ['rings-filed@4', 'worksheet@cylinder-bore/4', 'piston-to-rod@4', 'head-washed@left'],
  },
  {
    rule: 'crank-cut',
    opens: [
      'worksheet@main-journal/main-2',
      'main-room@main-2',
      'rod-room@3',
      'crank-washed',
      'crank-laid-in',
      'mains-tightened@mains',
    ],
    leaves: ['block-washed', 'rings-filed@3', 'head-washed@left'],
  },
  {
    rule: 'head-cut',
    place: 'left',
    opens: [
      'compression-figured@1',
      'piston-room-tried@1-intake-1',
      'intake-fit-tried',
      'head-washed@left',
      'seat-proved@1-intake-1',
      'head-down@left',
      LEFT,
      'valve-set@1-intake-1',
    ],
    leaves: [
      'compression-figured@2',
      'head-washed@right',
      RIGHT,
      'valve-set@2-intake-1',
      'mains-tightened@mains',
      'block-washed',
    ],
  },
  {
    rule: 'deck-cut',
    place: 'left',
    opens: ['squish-figured@1', 'compression-figured@1', 'block-washed', 'piston-room-tried@1-exhaust-1'],
    leaves: ['squish-figured@2', 'crank-washed', 'head-washed@left'],
  },
  {
    rule: 'piston-set-cut',
    place: '3',
    opens: ['piston-set-washed@3', 'rings-on@3', 'piston-in@3'],
    leaves: ['piston-set-washed@4', 'piston-in@4', 'rings-filed@3', 'block-washed'],
  },
  {
    rule: 'small-part-cut',
    opens: ['small-parts-washed', 'pump-packed', 'follower-in@3-intake-1', 'pan-tightened@oil-pan'],
    leaves: ['block-washed', 'mains-tightened@mains', LEFT],
  },
  {
    rule: 'dirt-found',
    opens: ['block-washed', 'crank-washed', 'head-washed@left', 'head-washed@right', 'small-parts-washed'],
    leaves: ['bore-honed@3', 'rings-filed@3', 'main-room@main-2'],
  },
  {
    rule: 'gasket-changed',
    place: 'left',
    opens: [
      'squish-figured@1',
      'compression-figured@1',
      'piston-room-tried@1-intake-1',
      'pushrod-length-tried@1-intake-1',
      'gasket-held-up@left',
      LEFT,
    ],
    leaves: ['squish-figured@2', 'gasket-held-up@right', RIGHT, 'pan-tightened@oil-pan'],
  },
  {
    rule: 'piston-changed',
    place: '3',
    opens: [
      'worksheet@piston-skirt/3',
      'compression-figured@3',
      'piston-room-tried@3-intake-1',
      'pieces-weighed@3',
      'piston-in@3',
      'rods-tightened@rods',
      LEFT,
      'run-in-step@line-2',
      'leakage-read@3',
    ],
    leaves: ['worksheet@piston-skirt/4', 'compression-figured@4', 'piston-in@4', 'mains-tightened@mains', 'cam-in'],
  },
  {
    rule: 'rings-changed',
    place: '3',
    opens: ['rings-filed@3', 'piston-set-washed@3', 'piston-in@3', 'compression-read@3'],
    leaves: ['rings-filed@4', 'compression-figured@3', 'mains-tightened@mains'],
  },
  {
    rule: 'rod-changed',
    place: '3',
    opens: ['rod-cracks@3', 'rod-room@3', 'squish-figured@3', 'pieces-weighed@3', 'piston-in@3'],
    leaves: ['rod-room@4', 'rings-filed@3', 'main-room@main-2'],
  },
  {
    rule: 'main-shell-changed',
    place: 'main-2',
    opens: ['main-room@main-2', 'main-shell-in@main-2', 'crank-laid-in', 'mains-tightened@mains'],
    leaves: ['main-room@main-3', 'main-shell-in@main-3', 'rod-room@3', 'cam-in'],
  },
  {
    rule: 'rod-shell-changed',
    place: '3',
    opens: ['rod-room@3', 'rod-shell-in@3', 'rods-tightened@rods', 'pan-tightened@oil-pan'],
    leaves: ['rod-room@4', 'main-room@main-2', 'mains-tightened@mains'],
  },
  {
    rule: 'main-fastening-changed',
    place: 'main-2',
    opens: ['main-room@main-2', 'crush-felt', 'main-cap-on@main-2', 'mains-tightened@mains'],
    leaves: ['main-room@main-3', 'rod-room@3', 'block-washed', 'cam-in'],
  },
  {
    rule: 'rod-fastening-changed',
    place: '3',
    opens: ['rod-room@3', 'crush-felt', 'rod-cap-on@3', 'rods-tightened@rods'],
    leaves: ['rod-room@4', 'piston-in@4', 'mains-tightened@mains'],
  },
  {
    rule: 'head-fastening-changed',
    place: 'left',
    opens: ['head-bolts-laid-out@left', LEFT, 'valve-set@1-intake-1'],
    leaves: [RIGHT, 'head-washed@left', 'pan-tightened@oil-pan'],
  },
  {
    rule: 'crank-changed',
    opens: ['crank-cracks', 'main-room@main-2', 'rod-room@3', 'crank-balanced', 'crank-washed', 'crank-laid-in'],
    leaves: ['rings-filed@3', 'block-washed', 'head-washed@left'],
  },
  {
    rule: 'cam-changed',
    opens: [
      'cam-phase-tried',
      'piston-room-tried@3-intake-1',
      'spring-margin-tried@3-intake-1',
      'pushrod-length-tried@3-intake-1',
      'cam-in',
      'cam-read',
      'valve-set@3-intake-1',
      'run-in-step@line-2',
    ],
    leaves: ['mains-tightened@mains', 'piston-in@3', LEFT, 'compression-figured@3'],
  },
  {
    rule: 'timing-key-changed',
    opens: [
      'cam-phase-tried',
      'piston-room-tried@3-intake-1',
      'drive-fitted',
      'cam-read',
      'cover-tightened@timing-cover',
      'valve-set@3-intake-1',
    ],
    leaves: ['cam-in', LEFT, 'mains-tightened@mains'],
  },
  {
    rule: 'rocker-changed',
    opens: [
      'piston-room-tried@3-intake-1',
      'spring-margin-tried@3-intake-1',
      'pushrod-length-tried@3-intake-1',
      'valve-set@3-intake-1',
    ],
    leaves: ['cam-in', LEFT, 'compression-figured@3'],
  },
  {
    rule: 'follower-changed',
    place: '3-intake-1',
    opens: ['pushrod-length-tried@3-intake-1', 'follower-in@3-intake-1', 'valve-set@3-intake-1', 'run-in-step@line-2'],
    leaves: ['follower-in@3-exhaust-1', 'valve-set@3-exhaust-1', LEFT],
  },
  {
    rule: 'pushrod-changed',
    place: '3-intake-1',
    opens: [
      'pushrod-length-tried@3-intake-1',
      'pushrod-in@3-intake-1',
      'valve-set@3-intake-1',
      'oil-at-valve@3-intake-1',
    ],
    leaves: ['pushrod-in@3-exhaust-1', 'valve-set@5-intake-1', LEFT, 'follower-in@3-intake-1'],
  },
  {
    rule: 'valve-changed',
    place: '3-intake-1',
    opens: [
      'worksheet@valve-stem/3-intake-1',
      'piston-room-tried@3-intake-1',
      'seat-proved@3-intake-1',
      'head-down@left',
      LEFT,
    ],
    leaves: ['seat-proved@3-exhaust-1', 'locks-seated@5-intake-1', RIGHT, 'piston-in@3'],
  },
  {
    rule: 'spring-changed',
    place: '3-intake-1',
    opens: [
      'spring-margin-tried@3-intake-1',
      'spring-shimmed@3-intake-1',
      'locks-seated@3-intake-1',
      'valve-set@3-intake-1',
    ],
    leaves: ['spring-shimmed@3-exhaust-1', LEFT, 'seat-proved@3-intake-1'],
  },
  {
    rule: 'head-removed',
    place: 'left',
    opens: [
      'gasket-held-up@left',
      'gasket-down@left',
      LEFT,
      'valve-set@1-intake-1',
      'intake-tightened@intake',
      'head-again@left',
      'leakage-read@1',
      'signed-off',
    ],
    leaves: [
      'gasket-held-up@right',
      RIGHT,
      'valve-set@2-intake-1',
      'head-washed@left',
      'seat-proved@1-intake-1',
      'pan-tightened@oil-pan',
      'cam-read',
      'run-in-step@line-2',
      'leakage-read@2',
      'piston-in@1',
    ],
  },
  {
    rule: 'main-cap-removed',
    place: 'main-2',
    opens: ['main-cap-on@main-2', 'mains-tightened@mains', 'crank-float', 'pan-tightened@oil-pan'],
    leaves: ['main-cap-on@main-3', 'main-room@main-2', 'cam-in', 'head-washed@left'],
  },
  {
    rule: 'rod-cap-removed',
    place: '3',
    opens: ['rod-cap-on@3', 'rods-tightened@rods', 'bottom-last-seen', 'pan-tightened@oil-pan'],
    leaves: ['rod-cap-on@4', 'piston-in@3', 'mains-tightened@mains', LEFT],
  },
  {
    rule: 'piston-removed',
    place: '3',
    opens: ['rod-shell-in@3', 'piston-in@3', 'rods-tightened@rods', LEFT],
    leaves: ['piston-in@4', 'rings-on@3', RIGHT, 'mains-tightened@mains'],
  },
  {
    rule: 'crank-removed',
    opens: ['saddles-wiped', 'crank-laid-in', 'mains-tightened@mains', 'piston-in@3', 'drive-fitted'],
    leaves: ['block-washed', 'main-room@main-2', 'cam-in', 'head-washed@left'],
  },
  {
    rule: 'cam-removed',
    opens: ['cam-lubed', 'cam-in', 'drive-fitted', 'follower-in@3-intake-1', 'valve-set@3-intake-1'],
    leaves: ['cam-bearings-in', 'mains-tightened@mains', LEFT],
  },
  {
    rule: 'timing-drive-removed',
    opens: ['drive-fitted', 'cam-read', 'cam-timing-accepted', 'cover-tightened@timing-cover', 'valve-set@3-intake-1'],
    leaves: ['cam-in', 'mains-tightened@mains', LEFT],
  },
  {
    rule: 'timing-cover-removed',
    opens: ['cover-clear', 'cover-tightened@timing-cover', 'damper-on', 'oil-filled'],
    leaves: ['cam-read', 'drive-fitted', 'flywheel-tightened@flywheel'],
  },
  {
    rule: 'pan-removed',
    opens: ['bottom-last-seen', 'pan-counted', 'pan-tightened@oil-pan', 'oil-filled', 'primed', 'started'],
    leaves: ['pump-drive-free', 'rods-tightened@rods', LEFT, 'valve-set@3-intake-1'],
  },
  {
    rule: 'pump-removed',
    opens: ['pump-packed', 'pump-drive-free', 'pickup-gap', 'pan-tightened@oil-pan', 'primed'],
    leaves: ['rods-tightened@rods', 'pump-room-read'],
  },
  {
    rule: 'intake-removed',
    opens: ['valley-counted', 'intake-sealed', 'intake-tightened@intake', 'coolant-filled'],
    leaves: [LEFT, 'valve-set@3-intake-1', 'other-joints-tightened@water-pump', 'ports-meet'],
  },
  {
    rule: 'rockers-removed',
    place: 'left',
    opens: ['valve-set@1-intake-1', 'valves-spot-checked', 'covers-tightened@valve-covers'],
    leaves: ['valve-set@2-intake-1', LEFT, 'pushrod-in@1-intake-1'],
  },
  {
    rule: 'valve-covers-removed',
    opens: ['covers-counted', 'covers-tightened@valve-covers', 'started'],
    leaves: ['valve-set@3-intake-1', 'primed', 'oil-at-valve@3-intake-1'],
  },
  {
    rule: 'distributor-moved',
    opens: ['rotor-placed', 'leads-placed', 'spark-set', 'timing-nipped', 'spark-again'],
    leaves: ['firing-centre', 'valve-set@3-intake-1', 'fuel-joints-closed'],
  },
  {
    rule: 'injection-pump-moved',
    plan: DIESEL,
    opens: ['injection-set', 'timing-nipped', 'started'],
    leaves: ['firing-centre', 'fuel-joints-closed'],
  },
  { rule: 'fuel-joint-opened', opens: ['fuel-joints-closed', 'started'], leaves: ['spark-set', 'primed'] },
  {
    rule: 'oil-drained',
    opens: ['oil-filled', 'primed', 'oil-at-valve@3-intake-1'],
    leaves: ['pan-tightened@oil-pan', 'valve-set@3-intake-1', 'filter-cut'],
  },
  {
    rule: 'coolant-drained',
    opens: ['coolant-filled', 'started'],
    leaves: ['primed', LEFT, 'intake-tightened@intake'],
  },
  {
    rule: 'dead-centre-doubted',
    opens: ['dead-centre-found', 'cam-read', 'pointer-proved', 'spark-set'],
    leaves: ['drive-fitted', 'cam-in', 'damper-on', 'valve-set@3-intake-1'],
  },
  {
    rule: 'valve-doubted',
    place: '3-intake-1',
    opens: ['valve-set@3-intake-1', 'valve-read-again@3-intake-1', 'valves-spot-checked', 'leakage-read@3'],
    leaves: ['valve-set@3-exhaust-1', 'valve-read-again@5-intake-1', LEFT, 'leakage-read@5'],
  },
  {
    rule: 'lube-stood-long',
    opens: ['follower-in@3-intake-1', 'primed', 'valve-set@3-intake-1'],
    leaves: ['cam-in', 'mains-tightened@mains', LEFT],
  },
];

describe('a finding opens what was built on it and leaves the rest', () => {
  it('has a row here for every rule', () => {
    expect(ROWS.map(({ rule }) => rule)).toEqual(REOPENING_RULES.map(({ id }) => id));
  });
  it.each(ROWS)('$rule', ({ rule, plan = V8, place, opens, leaves }) => {
    const named = [...opens, ...leaves].filter((id) => !plan.byId.has(id));
    expect(named, 'every act named here is in the plan').toEqual([]);
    const acts = opened(plan, rule, place);
    expect(
      opens.filter((id) => !acts.has(id)),
      'opens',
    ).toEqual([]);
    expect(
      leaves.filter((id) => acts.has(id)),
      'leaves',
    ).toEqual([]);
    expect(acts.has('signed-off')).toBe(true);
  });
  it('goes on as far as anything is built: every act opened but a root rests on another one opened', () => {
    for (const plan of [V8, DIESEL, TWIN_CAM])
      for (const { id, at } of REOPENING_RULES) {
        const place = placesIn(plan, at)[0]?.id;
        const reopened = reopenedBy(plan, { rule: id, why: 'seen', ...(place && { place }) });
        if (!reopened.ok) continue;
        const acts = new Set(reopened.value.acts);
        const beyond = [...acts].flatMap((act) =>
          (plan.after.get(act) ?? []).filter(({ kind }) => kind === 'built-on'),
        );
        expect(
          beyond.filter(({ to }) => !acts.has(to)),
          id,
        ).toEqual([]);
      }
  });
  it('opens an overhead cam where the head is taken off under it', () => {
    const acts = opened(TWIN_CAM, 'head-removed', 'head');
    for (const rule of ['cam-laid-in', 'drive-fitted', 'cam-read', 'valve-set'])
      expect(
        [...acts].some((id) => id.startsWith(rule)),
        rule,
      ).toBe(true);
  });
  it('does one act again on wish, with what is built on it', () => {
    expect(opened(V8, DONE_AGAIN, 'crank-float')).toEqual(new Set(builtOn(V8, ['crank-float'])));
  });
});

describe('a finding is refused', () => {
  it('when no rule has that name', () => {
    expect(reopenedBy(V8, { rule: 'bad-mood', why: 'x' })).toEqual({
      ok: false,
      fault: { code: 'no-such-reopening', given: 'bad-mood' },
    });
  });
  it('without the place that it is about, with the places that there are', () => {
    expect(reopenedBy(V8, { rule: 'head-removed', why: 'x' })).toEqual({
      ok: false,
      fault: { code: 'reopening-needs-place', kind: 'head', valid: ['left', 'right'] },
    });
    expect(reopenedBy(V8, { rule: 'piston-changed', place: '9', why: 'x' }).ok).toBe(false);
  });
  it('when the engine has no such thing', () => {
    expect(reopenedBy(V8, { rule: 'injection-pump-moved', why: 'x' })).toEqual({
      ok: false,
      fault: { code: 'nothing-to-reopen', rule: 'injection-pump-moved' },
    });
  });
});

describe('in the record', () => {
  it('only what was finished is open again, and says why', () => {
    const washed = ['block-washed', 'crank-washed']
      .map((id) => V8.byId.get(id))
      .flatMap((act) => (act ? [doing(act)] : []));
    const standing = workStanding(V8, [
      ...washed,
      fact('work-reopened', { rule: 'block-cut', why: 'a thread was tapped' }),
    ]);
    expect(standing.reopened.map(({ act }) => act.id)).toEqual(['block-washed']);
    expect(standing.reopened[0]?.again?.why).toBe('a thread was tapped');
    expect(standing.done.map(({ act }) => act.id)).toEqual(['crank-washed']);
  });
  it('keeps a name that the plan does not know', () => {
    const facts = [
      fact('work-reopened', { rule: 'of-next-year', why: 'x' }),
      fact('work-act-skipped', { act: 'of-next-year', reason: 'x' }),
    ];
    expect(workStanding(V8, facts).unknown).toEqual(['of-next-year@engine', 'of-next-year']);
  });
});
