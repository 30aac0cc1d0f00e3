import { cam, type Drawn, type Setting, TIP } from './gear-setting.js';
import { at, hull, plus } from './geometry.js';
import { circle, polygon, rectangle } from './shapes.js';
import { VALVE_LENGTH, valveAssembly } from './valve-parts.js';

export function fingerGear(setting: Setting): Drawn {
  const { motion, base, roller, adjuster, valve } = setting;
  const arm = 46;
  const pad = roller > 0 ? roller : 11;
  const share = 1 / Math.min(2.4, Math.max(1.15, motion.ratio));
  const pivot = at(-arm, 0);
  const lean = Math.asin((motion.valveLift - motion.fullLift / 2) / arm);
  const on = (part: number, lift: number) => plus(pivot, at(arm * part * Math.cos(lift), arm * part * Math.sin(lift)));
  const rest = Math.asin(-motion.fullLift / 2 / arm);
  const contact = on(share, lean);
  const camCentre = plus(on(share, rest), at(0, -(base + pad)));
  const tip = on(1, lean);
  const assembly = valveAssembly({
    x: 0,
    shutTip: on(1, rest).y + TIP,
    lift: motion.valveLift,
    headDiameter: setting.headDiameter,
    kind: valve.kind,
  });
  const lit = adjuster === 'finger-pivot' ? ({ state: 'lit' } as const) : {};
  const post = polygon(rectangle(-arm - 6, 4, 12, 40), 'visible', { fill: 'metal', part: 'finger pivot', ...lit });
  return {
    shapes: [
      ...assembly,
      post,
      polygon(hull(pivot, 7.5, tip, TIP), 'visible', { fill: 'metal', part: 'finger' }),
      circle(pivot, 4, 'visible', { fill: 'void', part: 'finger pivot', ...lit }),
      circle(contact, pad, 'visible', { fill: roller > 0 ? 'void' : 'metal', part: roller > 0 ? 'roller' : 'pad' }),
      ...cam(camCentre, 180, { ...setting, roller: pad }),
    ],
    names: [
      { text: 'cam', at: plus(camCentre, at(base + motion.lobe.lift + 4, 0)), anchor: 'start' },
      { text: adjuster === 'finger-pivot' ? 'adjust here' : 'pivot', at: plus(pivot, at(-4, -14)), anchor: 'middle' },
      { text: 'finger', at: plus(tip, at(10, -6)), anchor: 'start' },
      { text: 'spring', at: at(18, 32), anchor: 'start' },
      { text: 'valve', at: at(6, on(1, rest).y + TIP + VALVE_LENGTH + motion.fullLift + 9), anchor: 'start' },
    ],
  };
}
