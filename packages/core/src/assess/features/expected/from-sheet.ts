import type { Stated } from '../../../engine/index.js';
import type { Place } from '../../model.js';
import type { Anatomy } from '../anatomy.js';
import { MM, type TypicalRule, usually } from './typical.js';

interface Figure {
  readonly value: number;
  readonly text: string;
}
type Train = Anatomy['engine']['crankTrain'];

const plain = (stated: Stated<number> | undefined): Figure | undefined =>
  stated && { value: stated.value, text: stated.text };

/** A figure of the crank train. */
export const train =
  (key: 'bore' | 'stroke' | 'rodLength' | 'compressionHeight' | 'deckHeight' | 'chamberVolume') =>
  ({ engine }: Anatomy): Figure | undefined =>
    plain(engine.crankTrain[key as keyof Train] as Stated<number> | undefined);

export function lobeLift({ engine }: Anatomy, place: Place): Figure | undefined {
  const lifts = engine.cam?.lobeLift;
  return plain(place.valve?.kind === 'exhaust' ? lifts?.exhaust : lifts?.intake);
}

/** The gasket of the head at the place, else the first that can be bought. */
export function gasketThickness({ engine }: Anatomy, place: Place): Figure | undefined {
  const drawn = plain(engine.heads.find(({ id }) => id === place.id)?.gasket.thickness);
  const stock = engine.stock?.headGaskets[0]?.thickness;
  return drawn ?? (stock === undefined ? undefined : { value: stock, text: 'the gasket in stock' });
}

const jointOf = ({ engine }: Anatomy, place: Place) =>
  engine.joints.find((joint) => joint.holes.some((hole) => `${joint.id}-${hole.id}` === place.id));

export function holeDepth(anatomy: Anatomy, place: Place): Figure | undefined {
  const joint = jointOf(anatomy, place);
  return plain(joint?.holes.find((hole) => `${joint.id}-${hole.id}` === place.id)?.depth);
}

export function boltLength(anatomy: Anatomy, place: Place): Figure | undefined {
  const fastener = jointOf(anatomy, place)?.fasteners.find(({ id }) => id === place.grade);
  return plain(fastener?.length ?? fastener?.lengthLimit);
}

/** Piston below the deck [m] = deck height − half the stroke − rod − compression height, with room for deck cuts and short pistons. */
export const deckClearance: TypicalRule = (anatomy, place) => {
  const { deckHeight, stroke, rodLength, compressionHeight } = anatomy.engine.crankTrain;
  if (!deckHeight || !stroke || !rodLength || !compressionHeight) return usually(-0.6, 2.2)(anatomy, place);
  const nominal = deckHeight.value - stroke.value / 2 - rodLength.value - compressionHeight.value;
  const room = Math.max(0.25 * MM, 0.6 * Math.abs(nominal));
  return {
    nominal,
    low: nominal - room,
    high: nominal + room,
    why: 'deck height less half the stroke, rod and compression height of the sheet',
  };
};

export const valveLash: TypicalRule = (anatomy, place) => {
  const lash = anatomy.engine.valveGear?.lash?.[place.valve?.kind ?? 'intake'];
  const window = lash?.cold?.window ?? lash?.hot?.window;
  const { low = window?.high, high = window?.low } = window ?? {};
  if (low === undefined || high === undefined) return usually(0.05, 0.48)(anatomy, place);
  return {
    nominal: (low + high) / 2,
    low: low * 0.3,
    high: high * 2,
    why: 'the printed lash, less and more as engines come in',
  };
};

export const shimThickness: TypicalRule = (anatomy, place) => {
  const shims = anatomy.engine.valveGear?.shims;
  if (shims === undefined) return usually(1.2, 4.6)(anatomy, place);
  return {
    low: shims.thinnest.value - shims.step.value,
    high: shims.thickest.value + shims.step.value,
    why: 'shims of this engine as they are made',
  };
};

/** Walls of the shells that can be bought, with a little for wear. */
export const shellWall =
  (key: 'mainShells' | 'rodShells', otherwise: TypicalRule): TypicalRule =>
  (anatomy, place) => {
    const walls = (anatomy.engine.stock?.[key] ?? [])
      .flatMap(({ wall }) => [wall.low, wall.high])
      .filter((each) => each !== undefined);
    if (walls.length === 0) return otherwise(anatomy, place);
    return {
      low: Math.min(...walls) - 0.06 * MM,
      high: Math.max(...walls) + 0.02 * MM,
      why: 'shells that can be bought for this engine, and worn ones',
    };
  };

export const thrustWasher: TypicalRule = (anatomy, place) => {
  const sizes = (anatomy.engine.stock?.thrustWashers ?? []).map(({ thickness }) => thickness);
  if (sizes.length === 0) return usually(1.5, 6)(anatomy, place);
  return {
    low: Math.min(...sizes) - 0.15 * MM,
    high: Math.max(...sizes) + 0.05 * MM,
    why: 'thrust washers that can be bought, and worn ones',
  };
};
