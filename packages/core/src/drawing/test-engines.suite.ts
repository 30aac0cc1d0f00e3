/** Invented engines for the tests and the preview of this room: any count of cylinders, any form, any valve gear. */
import type {
  Bank,
  CamEvents,
  Cylinder,
  Engine,
  From,
  Head,
  Hole,
  Joint,
  Layout,
  Opening,
  Place,
  ValveGear,
  ValveGearKind,
} from '../engine/index.js';
import type { Angle, Length } from '../quantity/index.js';

const INVENTED: From = { standing: 'invented', text: 'invented' };
const mm = (n: number) => (n / 1000) as Length;
const deg = (n: number) => ((n * Math.PI) / 180) as Angle;
const length = (n: number) => ({ text: `${n} mm`, value: mm(n), from: INVENTED });

export interface Wish {
  readonly form: Layout['form'];
  readonly cylinders: number;
  readonly vee?: number;
  readonly gear?: ValveGearKind;
  readonly intake?: number;
  readonly exhaust?: number;
  readonly rotation?: Layout['rotation'];
  readonly firingOrder?: readonly number[];
  readonly bore?: number;
  readonly stroke?: number;
  readonly holesWithoutPlaces?: boolean;
  readonly bare?: boolean;
  readonly throws?: readonly number[];
}
/** Seat events of an invented mild cam. */
export const MILD_CAM: CamEvents = {
  intakeOpens: deg(18),
  intakeCloses: deg(54),
  exhaustOpens: deg(58),
  exhaustCloses: deg(14),
};

function banksOf({ form, vee }: Wish): readonly Bank[] {
  if (form === 'inline') return [{ id: 'head', angle: deg(0) }];
  const half = form === 'opposed' ? 90 : (vee ?? 90) / 2;
  return [
    { id: 'left', angle: deg(half) },
    { id: 'right', angle: deg(-half) },
  ];
}
function cylindersOf(wish: Wish, banks: readonly Bank[]): readonly Cylinder[] {
  return Array.from({ length: wish.cylinders }, (_, i) => ({
    number: i + 1,
    bank: banks[i % banks.length]?.id ?? 'head',
    place: i + 1,
    ...(wish.throws?.[i] === undefined ? {} : { throwAngle: deg(wish.throws[i]) }),
  }));
}
function gearOf(wish: Wish): ValveGear {
  const kind = wish.gear ?? 'pushrod';
  const place = {
    pushrod: 'stud-nut',
    'overhead-rocker': 'valve-end-screw',
    'overhead-finger': 'finger-pivot',
    'overhead-bucket': 'shim-under-bucket',
  } as const;
  return {
    kind,
    follower: kind === 'pushrod' ? 'roller' : 'flat',
    adjustment: kind === 'pushrod' ? 'hydraulic' : 'mechanical',
    intakeValves: wish.intake ?? 1,
    exhaustValves: wish.exhaust ?? 1,
    adjuster: { place: place[kind] },
  };
}
function headOf(wish: Wish, bank: Bank, cylinders: readonly Cylinder[]): { head: Head; places: readonly Place[] } {
  const bore = wish.bore ?? 96;
  const pitch = bore * 1.12;
  const long = pitch * cylinders.length + 24;
  const wide = bore * 1.75;
  const x = (i: number) => 12 + pitch * (i + 0.5);
  const place = (px: number, py: number): Place => ({ x: mm(px), y: mm(py) });
  const [intake, exhaust] = [wish.intake ?? 1, wish.exhaust ?? 1];
  const valves = cylinders.flatMap((cylinder, i) => {
    const row = (kind: 'intake' | 'exhaust', count: number, y: number) =>
      Array.from({ length: count }, (_, k) => ({
        cylinder: cylinder.number,
        kind,
        index: k + 1,
        at: place(
          x(i) +
            (count === 1 && intake + exhaust === 2
              ? (kind === 'intake' ? -1 : 1) * bore * 0.24
              : (k - (count - 1) / 2) * bore * (count === 3 ? 0.3 : 0.4)),
          y,
        ),
        diameter: mm(bore * (count === 1 ? (kind === 'intake' ? 0.48 : 0.38) : count === 2 ? 0.36 : 0.28)),
      }));
    return [
      ...row('intake', intake, intake + exhaust === 2 ? -bore * 0.05 : -bore * 0.22),
      ...row('exhaust', exhaust, intake + exhaust === 2 ? bore * 0.05 : bore * 0.22),
    ];
  });
  const columns = Array.from({ length: cylinders.length + 1 }, (_, i) => 12 + pitch * i);
  const edge = (i: number) => (i === 0 ? 5 : i === cylinders.length ? -5 : 0);
  const places = [-0.68, 0.68].flatMap((y) => columns.map((px, i) => place(px + edge(i), bore * y)));
  const opening = (id: string, kind: Opening['kind'], at: Place, diameter: number): Opening => ({
    id,
    kind,
    at,
    diameter: mm(diameter),
    intent: 'open',
  });
  const openings = [
    ...cylinders.map((cylinder, i) => opening(`bore ${cylinder.number}`, 'bore', place(x(i), 0), bore + 1.5)),
    ...places.map((at, i) => opening(`bolt ${i + 1}`, 'bolt', at, 12)),
    ...cylinders.flatMap((_, i) => [
      opening(`W${2 * i + 1}`, 'water', place(x(i) - bore * 0.2, -bore * 0.62), 9),
      opening(`W${2 * i + 2}`, 'water', place(x(i) + bore * 0.2, bore * 0.62), 9),
    ]),
    opening('O1', 'oil', place(16, -bore * 0.35), 7),
    opening('D1', 'dowel', place(16, bore * 0.4), 14),
    opening('D2', 'dowel', place(long - 16, bore * 0.4), 14),
    ...(wish.gear === undefined || wish.gear === 'pushrod'
      ? cylinders.flatMap((_, i) => [
          opening(`P${2 * i + 1}`, 'pushrod', place(x(i) - bore * 0.22, -bore * 0.78), 14),
          opening(`P${2 * i + 2}`, 'pushrod', place(x(i) + bore * 0.22, -bore * 0.78), 14),
        ])
      : []),
  ];
  const head: Head = {
    id: `head-${bank.id}`,
    name: `${bank.id} head`,
    bank: bank.id,
    cylinders: cylinders.map((each) => each.number),
    length: mm(long),
    width: mm(wide),
    cylinderCentres: Object.fromEntries(cylinders.map((each, i) => [String(each.number), place(x(i), 0)])),
    valves,
    gasket: { wayUp: 'bead up, TOP mark to the head', openings, dressing: 'dry', from: INVENTED },
  };
  return { head, places };
}
/** Bolts from the middle outwards, the usual spiral. */
function jointOf(head: Head, places: readonly Place[], wish: Wish): Joint {
  const holes: readonly Hole[] = places.map((at, i) => ({
    id: String(i + 1),
    fastener: 'bolt',
    ...(wish.holesWithoutPlaces ? {} : { at }),
    opensInto: 'blind',
    onThread: 'oil',
    underHead: 'oil',
  }));
  const middle = head.length / 2;
  const order = [...holes].sort(
    (a, b) =>
      Math.abs((places[Number(a.id) - 1]?.x ?? 0) - middle) - Math.abs((places[Number(b.id) - 1]?.x ?? 0) - middle) ||
      Number(a.id) - Number(b.id),
  );
  return {
    id: `bolts-${head.id}`,
    name: `${head.name} bolts`,
    head: head.id,
    fasteners: [{ id: 'bolt', name: 'head bolt', thread: 'M11x1.5', use: 'reuse' }],
    holes,
    order: { holes: order.map((hole) => hole.id), from: INVENTED },
    stages: [],
    whenInDoubt: 'renew the bolt',
    cautions: [],
  };
}
/** Any order will do for a drawing: odd numbers up, then even numbers down. */
function orderOf({ cylinders, firingOrder }: Wish): readonly number[] {
  if (firingOrder) return firingOrder;
  const numbers = Array.from({ length: cylinders }, (_, i) => i + 1);
  return [...numbers.filter((n) => n % 2 === 1), ...numbers.filter((n) => n % 2 === 0).reverse()];
}
export function inventedEngine(wish: Wish): Engine {
  const banks = banksOf(wish);
  const cylinders = cylindersOf(wish, banks);
  const built = banks.flatMap((bank) => {
    const own = cylinders.filter((each) => each.bank === bank.id);
    return own.length === 0 ? [] : [headOf(wish, bank, own)];
  });
  const bore = wish.bore ?? 96;
  return {
    format: 1,
    name: `Invented ${wish.form} ${wish.cylinders}`,
    invented: true,
    description: '',
    sources: {},
    layout: { form: wish.form, banks, cylinders, rotation: wish.rotation ?? 'clockwise', firingOrder: orderOf(wish) },
    crankTrain: wish.bare
      ? {}
      : {
          bore: length(bore),
          stroke: length(wish.stroke ?? 86),
          rodLength: length((wish.stroke ?? 86) * 1.68),
          compressionHeight: length(bore * 0.38),
        },
    ...(wish.bare ? {} : { valveGear: gearOf(wish) }),
    heads: built.map((one) => one.head),
    joints: built.map((one) => jointOf(one.head, one.places, wish)),
    limits: [],
    fluids: [],
    runIn: [],
    gaps: [],
    cautions: [],
  };
}
/** A spread of layouts worth looking at. */
export const INVENTED_ENGINES: Readonly<Record<string, Wish>> = {
  v8: { form: 'vee', cylinders: 8, firingOrder: [1, 8, 4, 3, 6, 5, 7, 2], bore: 101.6, stroke: 88.4 },
  i6: { form: 'inline', cylinders: 6, gear: 'overhead-rocker', firingOrder: [1, 5, 3, 6, 2, 4], bore: 84, stroke: 96 },
  i4: {
    form: 'inline',
    cylinders: 4,
    gear: 'overhead-bucket',
    intake: 2,
    exhaust: 2,
    firingOrder: [1, 3, 4, 2],
    bore: 86,
  },
  boxer4: { form: 'opposed', cylinders: 4, firingOrder: [1, 3, 2, 4], bore: 92, stroke: 75 },
  v12: {
    form: 'vee',
    vee: 60,
    cylinders: 12,
    gear: 'overhead-finger',
    intake: 2,
    exhaust: 2,
    bore: 88,
    stroke: 82,
    firingOrder: [1, 12, 5, 8, 3, 10, 6, 7, 2, 11, 4, 9],
    rotation: 'anticlockwise',
  },
  single: { form: 'inline', cylinders: 1, gear: 'overhead-rocker', firingOrder: [1], bore: 78, stroke: 68 },
  five: {
    form: 'inline',
    cylinders: 4,
    gear: 'overhead-bucket',
    intake: 3,
    exhaust: 2,
    firingOrder: [1, 3, 4, 2],
    bore: 81,
    stroke: 86,
  },
  bare: { form: 'inline', cylinders: 4, bare: true, holesWithoutPlaces: true, firingOrder: [] },
  v16: { form: 'vee', vee: 45, cylinders: 16, bore: 82, stroke: 101 },
};
