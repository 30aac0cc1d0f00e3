/** Preload as it is given, or as turns of the adjuster make it. */
import { type Adjuster, plungerTravel, type ScrewPlace } from '../../calc/valvetrain/index.js';
import type { Engine } from '../../engine/index.js';
import type { Angle, Ratio } from '../../quantity/index.js';
import type { Look } from './look.js';

const PLACES: readonly ScrewPlace[] = ['stud-nut', 'pushrod-end-screw', 'valve-end-screw'];

/** The adjusting thread of the sheet at a rocker ratio; undefined where it has none that turns. */
export function adjusterAt({ valveGear }: Engine, ratio: number | undefined): Adjuster | undefined {
  const place = PLACES.find((one) => one === valveGear?.adjuster.place);
  const pitch = valveGear?.adjuster.pitch?.value;
  if (place === undefined || pitch === undefined || ratio === undefined) return undefined;
  return { place, pitch, ratio: ratio as Ratio };
}

/** Plunger below its stop: as given, else by the turns of the adjuster; undefined where neither tells it. Nothing is noted as missing. */
export function preloadRead(look: Look): number | undefined {
  const given = look.read('lifter-preload');
  if (given !== undefined) return given;
  const turns = look.read('preload-turns');
  const adjuster = turns === undefined ? undefined : adjusterAt(look.makeup.engine, look.read('rocker-ratio'));
  return adjuster === undefined ? undefined : plungerTravel(adjuster, turns as Angle);
}

/** The same, noted as missing where it is not known. */
export function preloadNeeded(look: Look, lacking: string): number | undefined {
  const preload = preloadRead(look);
  if (preload === undefined) look.lack('lifter-preload', lacking);
  return preload;
}
