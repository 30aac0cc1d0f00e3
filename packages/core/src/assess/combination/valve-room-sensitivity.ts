/** What moves the least room, and by how much. */
import { type LeastRoom, leastRoom, netLift, type RoomModel } from './valve-room-model.js';

export interface RoomSensitivity {
  readonly key: 'gasket' | 'cut' | 'lash' | 'advance' | 'bled-down';
  readonly name: string;
  /** Change of the room [m]. */
  readonly effect: number;
}
const TENTH = 1e-4;
const DEGREE = Math.PI / 180;

/** `bled` [m]: lift that a lifter loses when it bleeds down, where it is known. */
export function sensitivitiesOf(
  model: RoomModel,
  least: LeastRoom,
  advance: number,
  bled: number | undefined,
): readonly RoomSensitivity[] {
  const open = netLift(model, least.angle, advance) > 0;
  const after = (more: number, less = 0) => leastRoom(model, advance + more, less).gap;
  return [
    { key: 'gasket', name: 'gasket 0.1 mm thicker', effect: model.perTravel * TENTH },
    { key: 'cut', name: 'deck or head cut by 0.1 mm', effect: -model.perTravel * TENTH },
    { key: 'lash', name: 'lash 0.1 mm more', effect: open ? after(0, TENTH) - least.gap : 0 },
    { key: 'advance', name: 'cam 1° earlier', effect: after(DEGREE) - least.gap },
    ...(bled === undefined
      ? []
      : [{ key: 'bled-down', name: 'lifter bled down', effect: after(0, bled) - least.gap } as const]),
  ];
}
