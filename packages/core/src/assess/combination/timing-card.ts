/** What the cam card says of each lobe, as figures: another cam can then be tried figure by figure. */
import { lobesFromEvents } from '../../calc/cam/index.js';
import type { Engine } from '../../engine/index.js';
import { figureKey } from '../../engine/index.js';
import { fromHalfWidth } from '../../quantity/index.js';
import type { GivenFigure } from './model.js';
import { printedDoubt } from './sheet-figures.js';

/** Cards print whole degrees; the cam itself is made to about one (common practice, no source). */
const CARD_DOUBT = fromHalfWidth(Math.PI / 180);

/** Centreline and duration of both lobes, and the lift at which the card takes its events; nothing where it prints none. */
export function cardFigures({ cam }: Engine): readonly GivenFigure[] {
  const lift = cam?.checkingLift;
  const lobes = cam?.events && lobesFromEvents(cam.events);
  if (cam === undefined || !lobes?.ok) return [];
  const angle = (key: string, value: number): GivenFigure => ({
    key,
    value,
    u: CARD_DOUBT,
    origin: 'sheet',
    from: `${cam.from.text}, from its events`,
  });
  const { intakeCentreline, exhaustCentreline, intakeDuration, exhaustDuration } = lobes.value;
  const doubt = lift && printedDoubt('length', lift);
  return [
    angle(figureKey('centreline-wanted', 'intake'), intakeCentreline),
    angle(figureKey('centreline-wanted', 'exhaust'), exhaustCentreline),
    ...(cam.basis === 'seat'
      ? []
      : [
          angle(figureKey('duration-at-lift', 'intake'), intakeDuration),
          angle(figureKey('duration-at-lift', 'exhaust'), exhaustDuration),
        ]),
    ...(cam.basis === 'seat' || lift === undefined
      ? []
      : [
          {
            key: 'checking-lift',
            value: lift.value,
            ...(doubt !== undefined && { u: doubt }),
            origin: 'sheet',
            from: lift.from.text,
          } as const,
        ]),
  ];
}
