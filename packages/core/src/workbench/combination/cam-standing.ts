/** Where the cam stands against its card, and how far a what-if turns it from there. */
import { figure, type GivenFigure, type Makeup } from '../../assess/index.js';
import type { Bench } from '../bench.js';
import type { InputView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { ADVANCE, camAtRest, degreeingOf } from './cam-as-read.js';
import { wantedMiddle } from './degreeing-lobe.js';
import { inputViews } from './inputs.js';
import type { Tried } from './tried.js';
import type { CamCarries } from './valve-room-asked.js';

export interface CamStanding {
  /** Figures with the cam that is moved where it stands now: by its lobes as degreed, else as card and decision have it. */
  readonly carried: Makeup;
  /** The same for valves that it does not carry. */
  readonly others: Makeup;
  /** Crank angle by which the scratch copy turns it ahead of there [rad]. */
  readonly move: number;
}

/** The cam that carries the valves named. A lobe that was read tells where the whole cam stands. */
export function camStanding(bench: Bench, tried: Tried, carries: CamCarries): CamStanding {
  const others = camAtRest(tried);
  const carried = standingMakeup(bench, tried, others, carries);
  const tries = tried.figures.get(ADVANCE);
  const now = figure(carried, ADVANCE)?.value ?? 0;
  return { carried, others, move: tries?.origin === 'scratch' ? tries.value - now : 0 };
}

const kept = new WeakMap<Makeup, Map<CamCarries, Makeup>>();
function standingMakeup(bench: Bench, tried: Tried, rest: Makeup, carries: CamCarries): Makeup {
  const known = kept.get(rest) ?? new Map<CamCarries, Makeup>();
  kept.set(rest, known);
  const before = known.get(carries);
  if (before !== undefined) return before;
  const given = asDegreed(bench, tried, rest, carries);
  const made = given === undefined ? rest : { ...rest, figures: new Map(rest.figures).set(ADVANCE, given) };
  known.set(carries, made);
  return made;
}

/** Mean over the lobes of that cam that have a middle; undefined where none has. */
function asDegreed(bench: Bench, tried: Tried, rest: Makeup, carries: CamCarries): GivenFigure | undefined {
  const ahead = degreeingOf(bench, tried).lobes.flatMap(({ lobe, middle }) => {
    const wanted = wantedMiddle(rest, lobe);
    const own = carries === 'both' || carries === lobe.kind;
    return own && middle !== undefined && wanted !== undefined ? [{ by: wanted - middle.value, u: middle.u }] : [];
  });
  if (ahead.length === 0) return undefined;
  const mean = ahead.reduce((sum, { by }) => sum + by, 0) / ahead.length;
  const doubts = ahead.map(({ u }) => u);
  const known = doubts.every((u) => u !== undefined);
  return {
    key: ADVANCE,
    value: (figure(rest, ADVANCE)?.value ?? 0) + mean,
    ...(known && { u: Math.max(...doubts.map((u) => u ?? 0)) }),
    origin: 'measured',
    from: ahead.length === 1 ? 'as degreed by one lobe' : `as degreed, mean of ${ahead.length} lobes`,
  };
}

/** The slider of the cam: it begins where the cam stands. */
export function camInput(tried: Tried, { carried }: CamStanding, shownIn: ShownIn): InputView {
  const tries = tried.figures.get(ADVANCE);
  const figures = tries?.origin === 'scratch' ? new Map(carried.figures).set(ADVANCE, tries) : carried.figures;
  return inputViews({ ...tried, figures, before: carried }, [ADVANCE], shownIn)[0]!;
}
