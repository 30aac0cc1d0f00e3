/** Pistons that can be had are of this engine: a height ten times off is a slip of the pen, one that stands out of the deck is doubtful. */
import { formatQuantity } from '../../../quantity/index.js';
import type { Engine, PistonStock } from '../../model.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';

/** Pistons of one engine differ in height by a few parts in a hundred: from memory. */
const MOST_TIMES = 3;
/** Pistons stand up to a few millimetres out of diesel decks, and down in petrol ones: from memory. */
const MOST_OFF_DECK = 0.005;

export function checkPistonStock(engine: Engine, reader: SheetReader): void {
  for (const [index, piston] of (engine.stock?.pistons ?? []).entries()) {
    const path: Path = ['stock', 'pistons', index];
    if (!heightIsOff(piston, engine, path, reader)) checkDeck(piston, engine, path, reader);
    checkCrown(piston, engine, path, reader);
  }
}

function heightIsOff({ compressionHeight: height }: PistonStock, engine: Engine, path: Path, reader: SheetReader) {
  const own = engine.crankTrain.compressionHeight;
  if (height === undefined || own === undefined) return false;
  if (height < own.value * MOST_TIMES && height > own.value / MOST_TIMES) return false;
  reader.fault(
    'impossible-size',
    [...path, 'compressionHeight'],
    `${told(height)} is ${times(height / own.value)} the compression height of this engine, ${own.text}; is the point or the unit right?`,
  );
  return true;
}
const told = (length: number): string => formatQuantity('length', length, 'mm', 2);
const times = (share: number): string =>
  share > 1 ? `${Math.round(share)} times` : `one part in ${Math.round(1 / share)} of`;

function checkDeck({ compressionHeight, id }: PistonStock, engine: Engine, path: Path, reader: SheetReader): void {
  const { rodLength, stroke, deckHeight } = engine.crankTrain;
  if (compressionHeight === undefined || rodLength === undefined || stroke === undefined || deckHeight === undefined)
    return;
  const over = stroke.value / 2 + rodLength.value + compressionHeight - deckHeight.value;
  if (Math.abs(over) <= MOST_OFF_DECK) return;
  reader.caution(
    'deck-disagrees',
    [...path, 'compressionHeight'],
    `half the stroke, rod and the compression height of piston ${id} put its crown ${told(Math.abs(over))} ${over > 0 ? 'above' : 'below'} the deck; is it a piston of this engine?`,
  );
}

/** No crown holds half of what its cylinder sweeps. */
function checkCrown({ crownVolume }: PistonStock, { crankTrain }: Engine, path: Path, reader: SheetReader): void {
  const { bore, stroke } = crankTrain;
  if (crownVolume === undefined || bore === undefined || stroke === undefined) return;
  const swept = (Math.PI / 4) * bore.value ** 2 * stroke.value;
  if (Math.abs(crownVolume) < swept / 2) return;
  const text = (volume: number) => formatQuantity('volume', volume, 'cm3', 1);
  reader.fault(
    'impossible-size',
    [...path, 'crownVolume'],
    `${text(crownVolume)} in the crown of a cylinder that sweeps ${text(swept)}; is the point or the unit right?`,
  );
}
