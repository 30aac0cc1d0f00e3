/** The problem of finder.mjs by loops that try every combination, written for it alone. */
import { lobeLift } from '../../packages/core/dist/calc/cam/index.js';
import { lowest } from '../../packages/core/dist/calc/numeric/index.js';
import { gapCurve, valveLift } from '../../packages/core/dist/calc/valvetrain/index.js';

const row = ({ from, to, step }) =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, at) => from + at * step);
const cuts = ({ limit, step }) => row({ from: 0, to: limit, step });
const LOOKS = Array.from({ length: 97 }, (_, at) => ((-120 + at * 2.5) * Math.PI) / 180);

/** Room that the motion takes, for every place of the cam and every ratio. */
function rooms(fixed, side, cams, ratios) {
  const valve = fixed[side];
  const lift = lobeLift(valve.lobe);
  const nose = valve.lobe.centreline * (side === 'intake' ? 1 : -1);
  const place = {
    crank: { crankRadius: fixed.stroke / 2, rodLength: fixed.rodLength, pinOffset: 0 },
    valveAngle: valve.angle,
    crown: valve.crown,
    gapAtTop: valve.gapAtTop,
  };
  return cams.map((cam) =>
    ratios.map(
      (ratio) => lowest(gapCurve(place, (angle) => valveLift(lift(angle + cam - nose), ratio, 0)).value, LOOKS).value,
    ),
  );
}

const SLACK = 1e-9;
const share = (value, low, high) => Math.min(value - low, high - value) / ((high - low) / 2);
const over = (value, least) => (value - least) / least;

export function enumerate({ fixed, offer, wanted }) {
  const [gaskets, pistons] = [offer.gaskets.options, offer.pistons.options];
  const [decks, heads] = [cuts(offer.deckCut), cuts(offer.headCut)];
  const [cams, pushrods] = [row(offer.camAdvance), row(offer.pushrods)];
  const rockers = offer.rockerRatio.values;
  const ratios = rockers.map(({ value }) => value);
  const room = { intake: rooms(fixed, 'intake', cams, ratios), exhaust: rooms(fixed, 'exhaust', cams, ratios) };
  const area = (Math.PI / 4) * fixed.cylinders[0].bore ** 2;
  const swept = area * fixed.stroke;
  const heights = [fixed.cylinders[0].deckHeight, fixed.cylinders[1].deckHeight];
  const along = Math.sin(fixed.bankAngle) / Math.cos(fixed.faceAngle);
  const per = Math.cos(fixed.intake.angle);
  const peak = fixed.intake.lobe.peakLift;
  const { chamber, other } = fixed.cylinders[0];
  const found = { raw: 0, feasible: 0, metal: Infinity, cost: Infinity, worst: -Infinity };

  for (const gasket of gaskets)
    for (const piston of pistons)
      for (const left of decks)
        for (const right of decks)
          for (const leftHead of heads)
            for (const rightHead of heads)
              for (let cam = 0; cam < cams.length; cam += 1)
                for (let rocker = 0; rocker < ratios.length; rocker += 1)
                  for (const pushrod of pushrods) {
                    found.raw += 1;
                    let worst = 1;
                    for (let bank = 0; bank < 2; bank += 1) {
                      const [deck, head] = bank === 0 ? [left, leftHead] : [right, rightHead];
                      const height = heights[bank];
                      const clear = height - fixed.stroke / 2 - fixed.rodLength - piston.compressionHeight - deck;
                      const volume =
                        chamber -
                        fixed.chamberArea * head +
                        (Math.PI / 4) * gasket.bore ** 2 * gasket.thickness +
                        area * clear +
                        piston.crownVolume +
                        other;
                      const closer = head + deck - (gasket.thickness - fixed.gasket.thickness);
                      const up = piston.compressionHeight - fixed.piston.compressionHeight;
                      worst = Math.min(
                        worst,
                        share((swept + volume) / volume, wanted.ratio.low, wanted.ratio.high),
                        share(clear + gasket.thickness, wanted.quench.low, wanted.quench.high),
                        (height - deck - wanted.deckHeight) / (height - wanted.deckHeight),
                        (fixed.headThickness - head - wanted.headThickness) /
                          (fixed.headThickness - wanted.headThickness),
                        share(closer * along, -wanted.intakeShift, wanted.intakeShift),
                        share(pushrod - fixed.zeroLashPushrod + closer, wanted.preload.low, wanted.preload.high),
                        over(room.intake[cam][rocker] - per * (closer + up), wanted.valveRoom.intake),
                        over(room.exhaust[cam][rocker] - per * (closer + up), wanted.valveRoom.exhaust),
                      );
                      if (worst < -SLACK) break;
                    }
                    const { springHeight, bindHeight, retainerRoom } = fixed.intake;
                    const lift = peak * ratios[rocker];
                    worst = Math.min(worst, over(springHeight - lift - bindHeight, wanted.bindRoom.intake));
                    worst = Math.min(worst, over(retainerRoom - lift, wanted.retainerRoom.intake));
                    if (worst < -SLACK) continue;
                    found.feasible += 1;
                    const metal = left + right + leftHead + rightHead;
                    const cut = (depth, { price }) => (depth > 0 ? price : 0);
                    const cost =
                      gasket.price +
                      piston.price +
                      cut(left, offer.deckCut) +
                      cut(right, offer.deckCut) +
                      cut(leftHead, offer.headCut) +
                      cut(rightHead, offer.headCut) +
                      offer.camAdvance.price +
                      rockers[rocker].price +
                      offer.pushrods.price;
                    found.metal = Math.min(found.metal, metal);
                    found.cost = Math.min(found.cost, cost);
                    found.worst = Math.max(found.worst, worst);
                  }
  const sizes = { gaskets, pistons, decks, heads, pushrods, ratios };
  return { ...found, tables: { fixed, wanted, room, heights, ...sizes } };
}
