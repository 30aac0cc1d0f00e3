import type { FigureKind } from '../../assess/index.js';
import { compose } from '../compose.js';
import { shapeBox } from '../extent.js';
import type { Figure, Touch } from '../figure.js';
import { markBox, placeLabels, type Wanted } from '../lettering.js';
import type { Shown } from '../options.js';
import { scaleFor } from '../sheet-scale.js';
import { type Body, type DrawBody, SHEET } from './body.js';
import { face } from './face.js';
import { deckHeight, protrusion } from './heights.js';
import { bore, followerBore, guide } from './hole.js';
import { housing, shell } from './housing.js';
import { piston, ringGap, ringGroove } from './piston.js';
import type { PlaceShown, StationShown } from './place-shown.js';
import { POINTER_REACH, READING_REACH, readingMark, readingWords } from './reading-marks.js';
import { journal, length, pin, stem } from './shaft.js';
import { backlash, float, runout } from './turning.js';
import { camLobe, seat, springs } from './valve-train.js';
import { chamber, mass } from './vessel.js';

const BODIES: Readonly<Record<FigureKind, DrawBody>> = {
  bore,
  journal,
  housing,
  shell,
  piston,
  pin,
  'ring-gap': ringGap,
  'ring-groove': ringGroove,
  face,
  'deck-height': deckHeight,
  protrusion,
  chamber,
  'cam-lobe': camLobe,
  'follower-bore': followerBore,
  'valve-stem': stem,
  'valve-guide': guide,
  'valve-seat': seat,
  spring: springs,
  runout,
  float,
  backlash,
  mass,
  length,
};

/**
 * A part with the stations at which it is measured: each a mark to touch, filled once it is read, its shape the verdict, its
 * figure beside it where there is room. Proportions are schematic; ISO 128 line types.
 */
export function measuringFigure(place: PlaceShown, options: Shown = {}): Figure {
  const scale = scaleFor(SHEET, options);
  const body = BODIES[place.figure](place, scale);
  const radius = scale.mark;
  const marks = place.stations.flatMap((station, i) => {
    const spot = body.spots[i];
    return spot === undefined ? [] : readingMark(spot, radius, station, station.slot === place.current);
  });
  const taken = [
    ...body.shapes.filter((shape) => shape.kind === 'label').map(shapeBox),
    ...body.spots.map((spot, i) => {
      const current = place.stations[i]?.slot === place.current;
      return markBox(spot, radius * (current ? POINTER_REACH : READING_REACH));
    }),
  ];
  const figures = placeLabels(
    place.stations.flatMap((station, i) => wanted(station, body, i, radius, scale.small)),
    taken,
    { left: -scale.margin, right: SHEET + scale.margin, top: -scale.margin, bottom: Number.POSITIVE_INFINITY },
  );
  return compose({
    title: place.title,
    description: [body.words, 'Proportions are schematic.', ...sentences(place)],
    shapes: [...body.shapes, ...marks, ...figures.shapes],
    touches: place.stations.flatMap((station, i): readonly Touch[] => {
      const centre = body.spots[i];
      if (centre === undefined) return [];
      return [{ part: station.slot, name: `${station.name}, ${readingWords(station)}`, centre, reach: scale.reach }];
    }),
    margin: scale.margin,
    leastWidth: SHEET,
  });
}
function wanted(station: StationShown, body: Body, index: number, radius: number, size: number): readonly Wanted[] {
  const centre = body.spots[index];
  if (centre === undefined || station.text === undefined) return [];
  return [{ text: station.text, size, centre, clear: radius * READING_REACH, part: station.slot, must: false }];
}
/** "To read now: …. Read: …. Not read: …." */
function sentences({ stations, current }: PlaceShown): readonly string[] {
  const names = (which: readonly StationShown[]) => which.map((one) => one.name).join('; ');
  const told = stations.filter((one) => one.state !== 'empty');
  const open = stations.filter((one) => one.state === 'empty');
  const now = stations.find((one) => one.slot === current);
  return [
    now === undefined ? '' : `To read now: ${now.name}.`,
    told.length === 0 ? '' : `Read: ${told.map((one) => `${one.name} ${readingWords(one)}`).join('; ')}.`,
    open.length === 0 ? '' : `Not read: ${names(open)}.`,
  ];
}
