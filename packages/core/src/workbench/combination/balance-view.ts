/** Balance as its screen shows it: bobweights with each part's share, and what shakes over one turn. */
import { type BalanceAnswer, type PinStack, type ShakingTurn, shakingTurn } from '../../assess/index.js';
import type { SharesShown, TurningShown } from '../../drawing/combination/index.js';
import { roundPaths, shakingPlot } from '../../drawing/plots/index.js';
import type { Bench } from '../bench.js';
import type { PlaceView, SubjectView } from '../combination-views.js';
import type { ShownIn } from '../measure-views.js';
import { titleOfFigure } from './inputs.js';
import { shownQuantity, systemOf } from './shown.js';
import { subjectView } from './subject.js';
import { answerOfSubject } from './subject-answers.js';
import type { Tried } from './tried.js';

export interface BalanceView extends SubjectView {
  /** Each crankpin whose bobweight is known. */
  readonly pins: readonly { readonly place: PlaceView; readonly shares: SharesShown }[];
  /** Forces, and couples where they are known, in the round; absent while a slider moves. */
  readonly turning?: readonly TurningShown[];
}
const INPUTS = [
  'highest-speed',
  'balance-factor',
  'piston-mass',
  'pin-mass',
  'lock-mass',
  'ring-mass',
  'rod-small-end-mass',
  'rod-big-end-mass',
  'rod-shell-mass',
  'oil-mass',
  'stroke',
  'rod-length',
  'pin-offset',
  'cylinder-pitch',
  'bank-offset',
  'mass-match-most',
] as const;

/** Places of a turn that are enough for the eye while a slider moves. */
const COARSE = 40;

/** `moving`: a slider moves; curves have fewer places and nothing is drawn in the round. */
export function balanceView(bench: Bench, tried: Tried, shownIn: ShownIn, moving = false): BalanceView {
  const answered = answerOfSubject(bench, tried, 'balance') as BalanceAnswer;
  const turn = moving ? shakingTurn(tried, COARSE) : shakingTurn(tried);
  const system = systemOf(shownIn);
  const first = tried.engine.layout.cylinders[0]?.number ?? 1;
  const ofEngine = (['force', 'torque'] as const).flatMap((one) => (turn && shakingPlot(turn, one, system)) ?? []);
  return {
    ...subjectView(
      bench,
      tried,
      { id: 'balance', inputs: INPUTS.map((key) => ({ key, at: first })), answered, plots: ofEngine },
      shownIn,
    ),
    pins: pinsOf(answered.pins, shownIn),
    ...(!moving && { turning: turn === undefined ? [] : turningOf(turn, shownIn) }),
  };
}

const ROUND = { force: 'Forces as they turn', torque: 'Couples as they turn' } as const;
function turningOf(turn: ShakingTurn, shownIn: ShownIn): readonly TurningShown[] {
  return (['force', 'torque'] as const).flatMap((quantity) => {
    const paths = roundPaths(turn, quantity, systemOf(shownIn));
    return paths.length === 0 ? [] : [{ title: ROUND[quantity], paths }];
  });
}

const pinsOf = (pins: readonly PinStack[], shownIn: ShownIn): BalanceView['pins'] =>
  pins.map(({ pin, bobweight, parts }) => ({
    place: { id: `${pin}`, name: `${pin}`, value: shownQuantity('mass', bobweight, shownIn) },
    shares: {
      title: `Bobweight of crankpin ${pin}`,
      parts: parts.map(({ part, mass, share }) => ({
        part,
        name: titleOfFigure(part),
        share,
        words: `${shownQuantity('mass', mass, shownIn)}, ${(share * 100).toFixed(1)} %`,
      })),
      whole: `bobweight ${shownQuantity('mass', bobweight, shownIn)}`,
    },
  }));
