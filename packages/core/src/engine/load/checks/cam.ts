import { DEGREE } from '../../angles.js';
import type { CamCard, Engine } from '../../model.js';
import type { SheetReader } from '../reader.js';

/** Widest windows that are not questioned, in crank degrees. From memory: from stationary diesels to racing cams. */
const EVENTS = {
  intakeOpens: ['io', -40, 100],
  intakeCloses: ['ic', -20, 130],
  exhaustOpens: ['eo', -20, 130],
  exhaustCloses: ['ec', -40, 100],
} as const;
const SHORTEST = 140;
const LONGEST = 380;

/** Cam events and durations are possible and agree; what valve gear has is what its sheet asks for. */
export function checkCam(engine: Engine, reader: SheetReader): void {
  const cam = engine.cam;
  if (cam !== undefined) {
    checkEvents(cam, reader);
    if (cam.basis === 'at-lift' && cam.checkingLift === undefined) {
      reader.caution('checking-lift', ['cam'], 'events at a lift without the lift itself; give checkingLift');
    }
  }
  checkGear(engine, reader);
}

function checkEvents(cam: CamCard, reader: SheetReader): void {
  const events = cam.events;
  if (events === undefined) return;
  for (const [name, [key, least, most]] of Object.entries(EVENTS)) {
    const degrees = events[name as keyof typeof EVENTS] / DEGREE;
    if (degrees >= least && degrees <= most) continue;
    reader.fault(
      'cam-event',
      ['cam', 'events', key],
      `${Math.round(degrees)}° is outside ${least}° to ${most}°; events are crank degrees, counted from the usual side of the dead centre`,
    );
  }
  if (reader.faults.length > 0) return;
  const durations = {
    intake: (events.intakeOpens + Math.PI + events.intakeCloses) / DEGREE,
    exhaust: (events.exhaustOpens + Math.PI + events.exhaustCloses) / DEGREE,
  };
  for (const [kind, duration] of Object.entries(durations)) {
    if (duration < SHORTEST || duration > LONGEST) {
      reader.fault(
        'cam-duration',
        ['cam', 'events'],
        `the ${kind} events leave the valve open for ${Math.round(duration)}°; ${SHORTEST}° to ${LONGEST}° is possible`,
      );
    }
    const advertised = cam.advertisedDuration?.[kind as 'intake' | 'exhaust'];
    if (advertised === undefined) continue;
    const card = advertised / DEGREE;
    const wrong = cam.basis === 'seat' ? Math.abs(card - duration) > 1 : card < duration;
    if (wrong) {
      const basis = cam.basis === 'seat' ? 'seat to seat' : 'at the checking lift';
      reader.caution(
        'duration-disagrees',
        ['cam', 'advertisedDuration', kind],
        `${Math.round(card)}° is printed, but the events ${basis} give ${Math.round(duration)}°`,
      );
    }
  }
}

function checkGear(engine: Engine, reader: SheetReader): void {
  const gear = engine.valveGear;
  if (gear === undefined) return;
  if (gear.adjustment === 'hydraulic' && gear.lash !== undefined) {
    reader.caution(
      'lash-on-hydraulic',
      ['valveGear', 'lash'],
      'hydraulic followers take up the lash; a printed lash belongs to another engine or to a check',
    );
  }
  if (gear.adjustment === 'mechanical' && gear.preload !== undefined) {
    reader.caution('preload-on-mechanical', ['valveGear', 'preload'], 'mechanical followers have lash, not preload');
  }
  if (gear.adjuster.place.startsWith('shim') && gear.shims === undefined) {
    reader.caution('no-shims', ['valveGear'], 'valves set by shims, but the sizes of shim that exist are not given');
  }
  if (gear.ratio !== undefined && (gear.ratio.value < 0.5 || gear.ratio.value > 3)) {
    reader.fault('impossible-size', ['valveGear', 'ratio'], `"${gear.ratio.text}" is outside 0.5:1 to 3:1`);
  }
}
