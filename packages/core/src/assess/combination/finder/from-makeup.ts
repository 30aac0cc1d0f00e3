/** What is fixed and what is wanted, out of the figures at hand: those of the sheet, the worksheets and the person. */
import type { ValveKind } from '../../../engine/index.js';
import type { Length } from '../../../quantity/index.js';
import { creviceOf, deckOf } from '../cylinder-room.js';
import { bankFromVertical } from '../intake-face.js';
import { computed, Look } from '../look.js';
import { figure, type Spot } from '../makeup.js';
import type { Makeup } from '../model.js';
import { preloadRead } from '../preload-read.js';
import { cardLobe } from '../timing-lobes.js';
import type {
  FinderCylinder,
  FinderValve,
  FixedFigures,
  LobeMotion,
  PerSide,
  Size,
  Wanted,
  WantedWindow,
} from './model.js';

/** A figure as a size; one without a doubt stays without. */
function size(makeup: Makeup, key: string, spot?: Spot): Size | undefined {
  const found = figure(makeup, key, spot);
  if (found === undefined) return undefined;
  return found.u === undefined ? found.value : { value: found.value, u: found.u };
}
type Sizes<K extends string> = Partial<Record<K, Size>>;
/** Sizes by the names that the finder gives them; one that nobody gives is left out. */
function sizes<K extends string>(makeup: Makeup, names: Readonly<Record<K, string>>, spot?: Spot): Sizes<K> {
  const found = Object.entries<string>(names).map(([name, key]) => [name, size(makeup, key, spot)] as const);
  return Object.fromEntries(found.filter(([, one]) => one !== undefined)) as Sizes<K>;
}

/**
 * What is fixed, from all figures at hand. What nobody gives is absent, and the search says so where it is needed.
 *
 * Gasket, chamber area, head thickness and pushrod are those of the first cylinder and the intake valves; a downfill in place of a
 * crown volume is not used, because it does not tell what another piston or deck would change.
 */
export function fixedFrom(makeup: Makeup): FixedFigures {
  const { layout } = makeup.engine;
  const first = layout.cylinders[0]?.number;
  const thickness = size(makeup, 'gasket-thickness', first);
  const bankAngle = bankFromVertical(makeup.engine);
  return {
    stroke: size(makeup, 'stroke', first) ?? 0,
    ...sizes(makeup, { rodLength: 'rod-length', headThickness: 'head-thickness', chamberArea: 'chamber-area' }, first),
    ...sizes(makeup, {
      pinOffset: 'pin-offset',
      faceAngle: 'intake-face-angle',
      intakeGasketChange: 'intake-gasket-change',
      camAdvance: 'cam-advance',
    }),
    cylinders: layout.cylinders.map(({ number, bank }) => cylinderFrom(makeup, number, bank)),
    ...(thickness !== undefined && { gasket: { thickness, ...sizes(makeup, { bore: 'gasket-bore' }, first) } }),
    measuredWith: {
      ...sizes(makeup, { room: 'valve-drop-gasket', pushrod: 'pushrod-gasket' }, 'intake'),
      ...sizes(makeup, { intakeFit: 'gasket-thickness-before', compressionHeight: 'compression-height' }, first),
    },
    cuts: Object.fromEntries(
      layout.banks.map(({ id }) => {
        const own = layout.cylinders.find(({ bank }) => bank === id)?.number;
        return [id, sizes(makeup, { deck: 'deck-cut', head: 'head-cut' }, own)];
      }),
    ),
    ...(bankAngle !== undefined && { bankAngle: { value: bankAngle, u: 0 } }),
    ...sizes(
      makeup,
      { rockerRatio: 'rocker-ratio', pushrod: 'pushrod-length', zeroLashPushrod: 'pushrod-zero-lash' },
      'intake',
    ),
    intake: valveFrom(makeup, 'intake'),
    exhaust: valveFrom(makeup, 'exhaust'),
  };
}

/** A clearance that was measured counts unless a height that was tried or stated after it has taken its place. */
function cylinderFrom(makeup: Makeup, number: number, bank: string): FinderCylinder {
  const measured = figure(makeup, 'deck-clearance', number);
  const stands = measured !== undefined && deckOf(new Look(makeup, number), number)?.now === measured.value;
  return {
    number,
    bank,
    bore: size(makeup, 'bore', number) ?? 0,
    ...(stands && sizes(makeup, { deckClearance: 'deck-clearance' }, number)),
    ...sizes(
      makeup,
      {
        deckHeight: 'deck-height',
        chamber: 'chamber-volume',
        compressionHeight: 'compression-height',
        crownVolume: 'piston-volume',
        pockets: 'pocket-volume',
      },
      number,
    ),
    other: otherRoom(makeup, number),
  };
}

/** Crevice and the rest together. */
const otherRoom = (makeup: Makeup, number: number): Size =>
  sizeBy(
    makeup,
    number,
    (look) => (creviceOf(look, look.read('bore') as Length | undefined) ?? 0) + look.planned('other-volume'),
  ) ?? 0;

/** A size that is made of several figures, with the doubt that they bring. */
function sizeBy(makeup: Makeup, spot: Spot, compute: (look: Look) => number | undefined): Size | undefined {
  const found = computed(makeup, spot, (look) => ({ size: compute(look) })).values.get('size');
  if (found === undefined) return undefined;
  return found.u === undefined ? found.value : { value: found.value, u: found.u };
}

function valveFrom(makeup: Makeup, side: ValveKind): FinderValve {
  const lobe = lobeFrom(makeup, side);
  const crown = figure(makeup, 'crown', side)?.value;
  const height = sizeBy(makeup, side, (look) => {
    const installed = look.read('spring-installed-height');
    return installed === undefined ? undefined : installed - look.planned('spring-shim');
  });
  const hydraulic = makeup.engine.valveGear?.adjustment === 'hydraulic';
  const preload = hydraulic ? sizeBy(makeup, side, preloadRead) : undefined;
  return {
    ...sizes(
      makeup,
      {
        angle: 'valve-angle',
        gapAtTop: 'valve-drop',
        lash: 'valve-lash',
        bindHeight: 'spring-bind-height',
        retainerRoom: 'retainer-room',
      },
      side,
    ),
    ...(preload !== undefined && { preload }),
    ...(crown !== undefined && { crown: crown === 1 ? 'flat-crown' : 'parallel-pocket' }),
    ...(height !== undefined && { springHeight: height }),
    ...(lobe && { lobe }),
  };
}

/** The lobe that the screens draw for the card. */
function lobeFrom(makeup: Makeup, side: ValveKind): LobeMotion | undefined {
  const card = cardLobe(new Look(makeup, side), side, 'lobe');
  const own = sizes(makeup, { peakLift: 'lobe-lift', centreline: 'centreline-wanted' }, side);
  if (card === undefined || own.peakLift === undefined || own.centreline === undefined) return undefined;
  const { halfDuration, exponents } = card.lobe;
  return { kind: 'modelled', peakLift: own.peakLift, centreline: own.centreline, halfDuration, exponents };
}

/** What is wanted, from the limits at hand; a limit that nobody gives is not asked. */
export function wantedFrom(makeup: Makeup): Wanted {
  const value = (key: string, spot?: Spot) => figure(makeup, key, spot)?.value;
  const window = (low: string, high: string, spot?: Spot): WantedWindow | undefined => {
    const [least, most] = [value(low, spot), value(high, spot)];
    if (least === undefined && most === undefined) return undefined;
    return { ...(least !== undefined && { low: least }), ...(most !== undefined && { high: most }) };
  };
  const perSide = (key: string): PerSide | undefined => {
    const [intake, exhaust] = [value(key, 'intake'), value(key, 'exhaust')];
    if (intake === undefined && exhaust === undefined) return undefined;
    return { ...(intake !== undefined && { intake }), ...(exhaust !== undefined && { exhaust }) };
  };
  const wanted = {
    ratio: window('ratio-least', 'ratio-most'),
    quench: window('quench-least', 'quench-most'),
    preload: window('lifter-preload-least', 'lifter-preload-most', 'intake'),
    valveRoom: perSide('valve-room-least'),
    bindRoom: perSide('bind-margin-least'),
    retainerRoom: perSide('retainer-room-least'),
    deckHeight: value('deck-height-least'),
    headThickness: value('head-thickness-least'),
  };
  return Object.fromEntries(Object.entries(wanted).filter(([, one]) => one !== undefined)) as Wanted;
}
