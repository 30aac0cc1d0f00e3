import { formatQuantity } from '../../../quantity/index.js';
import type { Engine, Stated } from '../../model.js';
import type { Path } from '../document.js';
import type { SheetReader } from '../reader.js';

/** Smallest and largest that is not questioned, in metres or as a ratio. From memory: model engines to ships' auxiliaries. */
const BANDS = {
  bore: [0.02, 0.6],
  stroke: [0.015, 0.8],
  rodLength: [0.03, 1.6],
  compressionHeight: [0.01, 0.4],
  deckHeight: [0.05, 2.5],
  compressionRatio: [4, 26],
} as const;

/** Bore, stroke, rod and deck are of this world, and agree with each other. */
export function checkSizes(engine: Engine, reader: SheetReader): void {
  const train = engine.crankTrain;
  for (const [name, [least, most]] of Object.entries(BANDS)) {
    const stated = train[name as keyof typeof BANDS];
    if (stated === undefined) continue;
    const path: Path = ['crankTrain', name];
    if (stated.value <= 0) reader.fault('not-positive', path, `"${stated.text}" is not more than zero`);
    else if (stated.value < least || stated.value > most) {
      const kind = name === 'compressionRatio' ? 'ratio' : 'length';
      const unit = kind === 'ratio' ? ':1' : 'mm';
      const show = (value: number) => formatQuantity(kind, value, unit, 0);
      reader.fault(
        'impossible-size',
        path,
        `"${stated.text}" is outside ${show(least)} to ${show(most)}; is the unit right?`,
      );
    }
  }
  checkRod(engine, reader);
  checkDeck(engine, reader);
  checkDisplacement(engine, reader);
}

function checkRod(engine: Engine, reader: SheetReader): void {
  const { rodLength, stroke, pinOffset } = engine.crankTrain;
  if (rodLength === undefined || stroke === undefined) return;
  const needed = stroke.value / 2 + Math.abs(pinOffset?.value ?? 0);
  if (rodLength.value > needed) return;
  reader.fault(
    'rod-too-short',
    ['crankTrain', 'rodLength'],
    `"${rodLength.text}" is shorter than the throw (half of ${stroke.text}): the crank could not turn`,
  );
}

function checkDeck(engine: Engine, reader: SheetReader): void {
  const { rodLength, stroke, compressionHeight, deckHeight } = engine.crankTrain;
  if (rodLength === undefined || stroke === undefined || compressionHeight === undefined || deckHeight === undefined)
    return;
  const reach = stroke.value / 2 + rodLength.value + compressionHeight.value;
  const over = reach - deckHeight.value;
  // Pistons stand up to a few millimetres out of diesel decks, and down in petrol ones: from memory.
  if (Math.abs(over) <= 0.005) return;
  const where = over > 0 ? 'above' : 'below';
  const by = formatQuantity('length', Math.abs(over), 'mm', 1);
  reader.caution(
    'deck-disagrees',
    ['crankTrain', 'deckHeight'],
    `half the stroke, rod and compression height put the crown ${by} ${where} the deck; one of the four is doubtful`,
  );
}

/** Bore area x stroke x cylinders against the printed displacement, to half a unit of the print and one part in two hundred. */
function checkDisplacement(engine: Engine, reader: SheetReader): void {
  const { bore, stroke, displacement } = engine.crankTrain;
  if (bore === undefined || stroke === undefined || displacement === undefined) return;
  const count = engine.layout.cylinders.length;
  const volume = (Math.PI / 4) * bore.value ** 2 * stroke.value * count;
  if (Math.abs(volume - displacement.value) <= displacement.value / 200 + halfStep(displacement)) return;
  const computed = formatQuantity('volume', volume, 'cm3', 0);
  reader.caution(
    'displacement-disagrees',
    ['crankTrain', 'displacement'],
    `${displacement.text} is printed, but bore ${bore.text}, stroke ${stroke.text} and ${count} cylinders give ${computed}; one of the three is misprinted or belongs to another engine`,
  );
}

/** Half a unit in the last printed place, taken from the text's own decimals in proportion. */
function halfStep(stated: Stated<number>): number {
  const number = /\d+(?:[.,](\d+))?/.exec(stated.text);
  const shown = Number(number?.[0].replace(',', '.'));
  if (!(shown > 0)) return 0;
  return ((stated.value / shown) * 10 ** -(number?.[1]?.length ?? 0)) / 2;
}
