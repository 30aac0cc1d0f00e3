/** What a size of a search is called. */
import type { FixedFigures } from './model.js';
import type { Place } from './sizes-in.js';

const WORDS: Readonly<Record<string, string>> = {
  crownVolume: 'piston volume',
  other: 'crevice and other small rooms',
  gapAtTop: 'valve room at the top',
  angle: 'valve angle',
  lash: 'valve lash',
  preload: 'lifter preload',
  halfDuration: 'half of the duration',
  bindHeight: 'height at coil bind',
  retainerRoom: 'room under the retainer',
  faceAngle: 'angle of the intake face',
  zeroLashPushrod: 'pushrod at zero lash',
  chamber: 'chamber volume',
  gasket: 'head gasket',
  chambers: 'chamber volume',
};

/** "compressionHeight" as "compression height", "rocker-ratio" as "rocker ratio". */
const plain = (name: string): string =>
  WORDS[name] ??
  name
    .replaceAll(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
    .replaceAll('-', ' ')
    .trim();
const together = (names: readonly string[]): string =>
  names
    .filter((name) => name !== 'value' && name !== 'lobe')
    .map(plain)
    .join(' ');

/** "bore, cylinder 3", "valve lash, intake", "head gasket thickness", "deck cut, bank left". */
export function sizeWords(place: Place, { cylinders }: FixedFigures): string {
  const [root = '', first = '', second = '', ...rest] = place;
  if (root !== 'fixed') {
    const [choice = '', bank] = root.split('@');
    const name = together([choice, first, second, ...rest].filter((step) => step !== ''));
    return bank === undefined ? name : `${name}, bank ${bank}`;
  }
  if (first === 'cylinders') return `${together(rest)}, cylinder ${cylinders[Number(second)]?.number ?? second}`;
  if (first === 'cuts') return `${together(rest)} cut, bank ${second}`;
  if (first === 'intake' || first === 'exhaust') return `${together([second, ...rest])}, ${first}`;
  if (first === 'measuredWith') return `${together([second, ...rest])} as measured with`;
  return together([first, second, ...rest].filter((step) => step !== ''));
}
