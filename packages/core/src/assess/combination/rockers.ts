/** Rocker over the valve: how far its contact sweeps across the stem, and how it stands at half lift. */
import { contactSweep, halfLiftPushrod, rockerAt, rockerSweep } from '../../calc/valvetrain/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Angle, Length } from '../../quantity/index.js';
import { answered, type Naming, type Part, together, toldSurely } from './answering.js';
import { type Computed, computed, Look, type Values } from './look.js';
import type { Answered, Makeup } from './model.js';
import { rockerGeometry, rockerLift } from './rockers-lift.js';
import { VALVE_KINDS } from './sizes-as-figures.js';

/** Contact of one kind of rocker over the lift. */
export interface ContactPath {
  readonly kind: ValveKind;
  /** Lift at the lobe and at the valve without lash [m]. */
  readonly lobeLifts: readonly number[];
  readonly valveLifts: readonly number[];
  /** Valve lift for a little more of lobe lift, there. */
  readonly ratios: readonly number[];
  /** Contact away from the pivot, against its place with the valve closed [m]. */
  readonly contacts: readonly number[];
}
export interface RockerAnswer extends Answered {
  readonly paths: readonly ContactPath[];
}

const FOR = 'sweep of the rocker over the stem';
const SOURCES = ['valvetrain.rocker-motion', 'valvetrain.rocker-sweep', 'valvetrain.pushrod-half-lift'];
const NUMBERS: readonly Naming[] = [
  { key: 'contact-sweep', name: 'sweep of the contact over the stem', quantity: 'length' },
  { key: 'rocker-swing', name: 'swing of the rocker', quantity: 'angle' },
  { key: 'mean-ratio', name: 'valve lift over lobe lift, whole', quantity: 'ratio' },
  { key: 'ratio-closed', name: 'ratio with the valve closed', quantity: 'ratio' },
  { key: 'ratio-open', name: 'ratio at full lift', quantity: 'ratio' },
  { key: 'half-lift-error', name: 'arm above its place for the half-lift rule', quantity: 'angle' },
  { key: 'pushrod-longer', name: 'pushrod longer for the half-lift rule', quantity: 'length' },
  { key: 'sweep-half-lift', name: 'sweep if set square at half lift', quantity: 'length' },
  { key: 'sweep-closed', name: 'sweep if square with the valve closed', quantity: 'length' },
];
const PLACES = 25;

/**
 * Sweep, swing and ratios of both kinds of rocker. With arms and angles known: exactly as they stand, and what the half-lift rule would change; with the valve arm alone: the sweep of the
 * two ways of setting it.
 */
export function rockersOf(makeup: Makeup): RockerAnswer {
  const each = VALVE_KINDS.map((kind) => oneKind(makeup, kind));
  return {
    ...together(
      each.map(({ part }) => part),
      SOURCES,
    ),
    paths: each.flatMap(({ path }) => path ?? []),
  };
}

function oneKind(makeup: Makeup, kind: ValveKind): { readonly part: Part; readonly path?: ContactPath } {
  const found = computed(makeup, kind, (look) => numbers(look, makeup));
  const figures = NUMBERS.flatMap((naming) => {
    const value = found.values.get(naming.key);
    return value === undefined ? [] : [answered(makeup, naming, value, { kind })];
  });
  const path = pathOf(new Look(makeup, kind), kind);
  const part: Part = {
    figures,
    computed: [found],
    working: figures.map((one) => `${kind}: ${one.name} ${toldSurely(one.quantity, one)}`),
    cautions: cautionsOf(kind, found, path),
  };
  return path === undefined ? { part } : { part, path };
}

function numbers(look: Look, { engine }: Makeup): Values {
  if (engine.valveGear?.kind === 'overhead-bucket') return {};
  const lobe = look.need('lobe-lift', FOR);
  const geometry = rockerGeometry(look);
  if (lobe === undefined) return {};
  if (geometry === undefined) return byArm(look, lobe);
  const [closed, open] = [rockerAt(geometry, 0 as Length), rockerAt(geometry, lobe as Length)];
  if (!closed.ok || !open.ok) return {};
  const half = halfLiftPushrod(geometry, open.value.lift);
  return {
    'contact-sweep': contactSweep(geometry, open.value.turned),
    'rocker-swing': open.value.turned,
    'mean-ratio': open.value.lift / lobe,
    'ratio-closed': closed.value.ratio,
    'ratio-open': open.value.ratio,
    'half-lift-error': geometry.valveArmAbove - half.wanted,
    ...(engine.valveGear?.adjuster.place === 'stud-nut' ? { 'pushrod-longer': half.longer } : {}),
  };
}

/** Square at half lift and square when closed: about four times apart. The lash hardly counts and is taken off as for the valve. */
function byArm(look: Look, lobe: number): Values {
  const arm = look.need('valve-arm', FOR);
  const lift = rockerLift(look, lobe, FOR);
  if (arm === undefined || lift === undefined) return {};
  const net = lift.at(lobe).lift - look.planned('valve-lash');
  const [half, closed] = (['half-lift', 'closed'] as const).map((at) => rockerSweep(arm as Length, net as Length, at));
  return {
    ...(half!.ok && { 'sweep-half-lift': half!.value.sweep, 'rocker-swing': half!.value.swing }),
    ...(closed!.ok && { 'sweep-closed': closed!.value.sweep }),
  };
}

function pathOf(look: Look, kind: ValveKind): ContactPath | undefined {
  const lobe = look.read('lobe-lift');
  const geometry = rockerGeometry(look);
  if (lobe === undefined || geometry === undefined) return undefined;
  const lobeLifts = Array.from({ length: PLACES }, (_, at) => (lobe * at) / (PLACES - 1));
  const places = lobeLifts.flatMap((one) => {
    const found = rockerAt(geometry, one as Length);
    return found.ok ? [found.value] : [];
  });
  if (places.length < lobeLifts.length) return undefined;
  return {
    kind,
    lobeLifts,
    valveLifts: places.map(({ lift }) => lift),
    ratios: places.map(({ ratio }) => ratio),
    contacts: places.map(({ contact }) => contact),
  };
}

/** More than this off the half-lift rule is worth a look (common practice, no source). */
const OFF: Angle = (3 * (Math.PI / 180)) as Angle;

function cautionsOf(kind: ValveKind, { values }: Computed, path: ContactPath | undefined): readonly string[] {
  const off = values.get('half-lift-error');
  return [
    ...(off !== undefined && Math.abs(off.value) > OFF
      ? [`${kind}: the rocker stands more than three degrees off the half-lift rule (common practice, no source)`]
      : []),
    ...(path === undefined && values.has('sweep-half-lift')
      ? [`${kind}: angles of the arms are not known: the sweep is told for the two ways of setting it`]
      : []),
  ];
}
