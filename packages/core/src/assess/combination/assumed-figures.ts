/** What is taken for granted where nobody says it, each with the reason. A size of a part is never assumed. */
import type { Engine, ValveKind } from '../../engine/index.js';
import { figureKey } from '../../engine/index.js';
import { inch, kilogramsPerCubicMetre, megapascals } from '../../quantity/index.js';
import { crankpinsOf } from '../features/journals.js';
import type { GivenFigure } from './model.js';
import { VALVE_ROOM_ASSUMED } from './valve-room-assumed.js';

const assumed = (key: string, value: number, from: string): GivenFigure => ({
  key,
  value,
  u: 0,
  origin: 'assumed',
  from,
});
const PRACTICE = 'common practice, no source';
/** Least gap of valve and piston: bibliography `piston-to-valve`. */
const VALVE_ROOM: Readonly<Record<ValveKind, number>> = { intake: inch(0.08), exhaust: inch(0.1) };

export const assumedFigures = (engine: Engine): readonly GivenFigure[] => [
  assumed('pin-offset', 0, 'the sheet states no pin offset'),
  assumed('downfill-zero', 0, 'the depth of a downfill counts from the highest place of the piston'),
  assumed('cranking-exponent', 1.3, 'a fit of 1.2 to 1.3; bibliography cranking-pressure'),
  assumed('site-height', 0, 'at the height of the sea'),
  assumed('spring-modulus', megapascals(79_300), `steel of ordinary valve springs; ${PRACTICE}`),
  assumed('spring-density', kilogramsPerCubicMetre(7850), `steel of ordinary valve springs; ${PRACTICE}`),
  ...(['intake', 'exhaust'] as const).flatMap((kind) => [
    assumed(figureKey('valve-room-least', kind), VALVE_ROOM[kind], 'magazine text, bibliography piston-to-valve'),
    assumed(figureKey('bind-margin-least', kind), inch(0.06), `0.060 in, ${PRACTICE}`),
    assumed(figureKey('retainer-room-least', kind), inch(0.05), `0.050 in, ${PRACTICE}`),
  ]),
  assumed('lobe-fullness', 6, 'a modelled lobe with the exponents 6, 8, 10; bibliography polydyne-cam'),
  ...VALVE_ROOM_ASSUMED,
  ...hydraulicLash(engine),
  ...bankFigures(engine),
];

const hydraulicLash = ({ valveGear }: Engine): readonly GivenFigure[] =>
  valveGear?.adjustment === 'hydraulic' ? [assumed('valve-lash', 0, 'hydraulic lifters leave no lash')] : [];

const RIGHT_ANGLE = Math.PI / 2;
const NEAR = 1e-6;

/** A right-angled vee with shared pins: half of what reciprocates can be balanced on the crank, all of its first order. */
function bankFigures(engine: Engine): readonly GivenFigure[] {
  const { layout } = engine;
  const pins = crankpinsOf(engine);
  const shared = layout.form === 'vee' && pins.every(({ cylinders }) => cylinders.length === 2);
  const [one, other] = layout.banks;
  const square =
    one !== undefined && other !== undefined && Math.abs(Math.abs(one.angle - other.angle) - RIGHT_ANGLE) < NEAR;
  return [
    ...(layout.form === 'inline' ? [assumed('bank-offset', 0, 'one bank')] : []),
    ...(shared ? [assumed('bank-offset', 0, 'two rods on one pin are taken as in one plane')] : []),
    ...(shared && square
      ? [assumed('balance-factor', 0.5, `a right-angled vee with shared pins; derived, and ${PRACTICE}`)]
      : []),
  ];
}
