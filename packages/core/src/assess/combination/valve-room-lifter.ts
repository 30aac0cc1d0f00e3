/** Room with a hydraulic lifter bled down, and pumped up. */
import { gapOfTravel } from '../../calc/valvetrain/index.js';
import type { ValveKind } from '../../engine/index.js';
import type { Length, Ratio } from '../../quantity/index.js';
import { answered, type Naming, toldSurely } from './answering.js';
import { type Computed, computed, type Known, type Look } from './look.js';
import type { AnsweredFigure, Makeup } from './model.js';
import { preloadNeeded } from './preload-read.js';
import { leastRoom, roomModel, type ValveRoomOptions } from './valve-room-model.js';

export interface LifterRoom {
  readonly figures: readonly AnsweredFigure[];
  readonly computed: readonly Computed[];
  readonly working: readonly string[];
  /** Lift at the valve that is lost bled down [m]. */
  readonly bled?: number;
}
const NOTHING: LifterRoom = { figures: [], computed: [], working: [] };
const BLED: Naming = { key: 'valve-room-bled-down', name: 'least room, lifter bled down', quantity: 'length' };
const PUMPED: Naming = {
  key: 'valve-room-pumped-up',
  name: 'least room, lifter pumped up',
  quantity: 'length',
  low: 'valve-room-least',
};
const FOR = 'room with the lifter bled down or pumped up';

/** Lift that a bled-down lifter loses at the valve: as the gap was measured, else from its travel less the preload. */
function bledOf(look: Look): number | undefined {
  const gap = look.read('lifter-collapsed-gap');
  if (gap !== undefined) return gap;
  const [travel, ratio] = ['lifter-travel', 'rocker-ratio'].map((key) => look.need(key, FOR));
  const preload = preloadNeeded(look, FOR);
  if (travel === undefined || preload === undefined || ratio === undefined) return undefined;
  return gapOfTravel((travel - preload) as Length, ratio as Ratio);
}

/** Lift that a pumped-up lifter adds: its plunger comes up by the preload. */
function pumpedOf(look: Look): number | undefined {
  const preload = preloadNeeded(look, FOR);
  const ratio = look.need('rocker-ratio', FOR);
  return preload === undefined || ratio === undefined ? undefined : gapOfTravel(preload as Length, ratio as Ratio);
}

/** Nothing for solid lifters. `known`: the least room with the lifter full, whose doubt both have besides their own. */
export function lifterRoom(makeup: Makeup, kind: ValveKind, options: ValveRoomOptions, known: Known): LifterRoom {
  if (makeup.engine.valveGear?.adjustment !== 'hydraulic') return NOTHING;
  const { advance = 0 } = options;
  const found = computed(makeup, kind, (look) => {
    const model = roomModel(look, kind, options);
    const [bled, pumped] = [bledOf(look), pumpedOf(look)];
    return {
      bled,
      'bled-room': model && bled !== undefined ? leastRoom(model, advance, bled).gap : undefined,
      'pumped-room': model && pumped !== undefined ? leastRoom(model, advance, -pumped).gap : undefined,
    };
  });
  const figures = (
    [
      ['bled-room', BLED],
      ['pumped-room', PUMPED],
    ] as const
  ).flatMap(([key, naming]) => {
    const value = found.values.get(key);
    return value === undefined ? [] : [answered(makeup, naming, asSure(value, known), { kind }, kind)];
  });
  const bled = found.values.get('bled')?.value;
  return {
    figures,
    computed: [found],
    working: figures.map((one) => `${kind}: ${one.name} ${toldSurely('length', one)}`),
    ...(bled !== undefined && { bled }),
  };
}

/** A room that rests on one of unknown doubt has none either. */
const asSure = ({ u, ...value }: Known, { u: base }: Known): Known =>
  u === undefined || base === undefined ? value : { ...value, u: Math.max(u, base) };
