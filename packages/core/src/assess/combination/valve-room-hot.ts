/** Room hot and at speed, as an estimate. */
import { nearerHot } from '../../calc/valvetrain/index.js';
import type { CylinderNumber } from '../../engine/index.js';
import type { AngularSpeed, Area, Length, Mass, Pressure, TemperatureDifference } from '../../quantity/index.js';
import { answered, type Naming, told, toldSurely } from './answering.js';
import { type Computed, computed, type Known, type Look } from './look.js';
import type { AnsweredFigure, Makeup } from './model.js';
import { deckRoomOf } from './valve-room-drop.js';
import type { RoomModel } from './valve-room-model.js';

export interface HotRoom {
  readonly figures: readonly AnsweredFigure[];
  readonly computed: readonly Computed[];
  readonly working: readonly string[];
}
const FOR = 'room hot and at speed';
const HOT: Naming = { key: 'valve-room-hot', name: 'least room hot and at speed, estimated', quantity: 'length' };
const NEARER: Naming = { key: 'piston-nearer', name: 'piston nearer hot and at speed, estimated', quantity: 'length' };
const QUENCH: Naming = { key: 'quench-hot', name: 'piston to head hot and at speed, estimated', quantity: 'length' };

/** What hangs on the rod at the top: of the weighed parts locks and shank may be none. */
function pulled(own: Look): number | undefined {
  const parts = ['piston-mass', 'pin-mass', 'ring-mass', 'rod-small-end-mass'].map((key) => own.need(key, FOR));
  if (parts.some((one) => one === undefined)) return undefined;
  const sum = parts.reduce<number>((whole, one) => whole + one!, 0);
  return sum + own.planned('lock-mass') + own.planned('rod-shank-share');
}

function warming(look: Look, what: 'rod' | 'piston' | 'block') {
  const [expansion, rise] = [look.need(`${what}-expansion`, FOR), look.need(`${what}-warmer`, FOR)];
  return expansion === undefined || rise === undefined ? undefined : { expansion, rise: rise as TemperatureDifference };
}

/** How much nearer the piston comes; undefined where figures are lacking. */
function nearerOf(look: Look, cylinder: number): number | undefined {
  const own = look.at(cylinder);
  const mass = pulled(own);
  const sizes = ['stroke', 'rod-length', 'compression-height'].map((key) => own.need(key, FOR));
  const [stroke, rodLength, compressionHeight] = sizes;
  const [section, modulus, play, speed] = ['rod-section', 'rod-modulus', 'running-play', 'highest-speed'].map((key) =>
    look.need(key, FOR),
  );
  const [rod, piston, block] = (['rod', 'piston', 'block'] as const).map((what) => warming(look, what));
  if (stroke === undefined || rodLength === undefined || compressionHeight === undefined || mass === undefined)
    return undefined;
  if (section === undefined || modulus === undefined || play === undefined || speed === undefined) return undefined;
  if (rod === undefined || piston === undefined || block === undefined) return undefined;
  return nearerHot({
    crank: { crankRadius: (stroke / 2) as Length, rodLength: rodLength as Length, pinOffset: 0 as Length },
    compressionHeight: compressionHeight as Length,
    pulledMass: mass as Mass,
    speed: speed as AngularSpeed,
    rodSection: section as Area,
    rodModulus: modulus as Pressure,
    play: play as Length,
    rod,
    piston,
    block,
  }).nearer;
}

/** What is left of the room; `known` is the cold one. How much nearer the piston comes and how far away it is cold are taken as independent. */
export function hotRoom(
  makeup: Makeup,
  { kind, perTravel }: RoomModel,
  cylinder: CylinderNumber,
  known: Known,
): HotRoom {
  const found = computed(makeup, kind, (look) => {
    const nearer = nearerOf(look, cylinder);
    const deck = nearer === undefined ? undefined : deckRoomOf(look.at(cylinder), cylinder);
    return { nearer, quench: nearer === undefined || deck === undefined ? undefined : deck - nearer };
  });
  const [nearer, quench] = ['nearer', 'quench'].map((key) => found.values.get(key));
  if (nearer === undefined) return { figures: [], computed: [found], working: [] };
  const along = nearer.value * perTravel;
  const hot: Known = {
    value: known.value - along,
    effects: new Map(),
    ...(known.u !== undefined && nearer.u !== undefined && { u: Math.hypot(known.u, nearer.u * perTravel) }),
  };
  const figures = [
    answered(makeup, HOT, hot, { kind }, kind),
    ...(kind === 'exhaust' ? [] : [answered(makeup, NEARER, nearer, {})]),
    ...(kind === 'exhaust' || quench === undefined ? [] : [answered(makeup, QUENCH, quench, { cylinder })]),
  ];
  return {
    figures,
    computed: [found],
    working: [
      `${kind}: piston nearer by ${told('length', nearer.value)}, ${told('length', along)} along the stem; hot ${toldSurely('length', hot)} (an estimate)`,
    ],
  };
}
