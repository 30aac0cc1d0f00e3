import type { Shape } from './figure.js';
import { cam, type Drawn, type Setting } from './gear-setting.js';
import { at } from './geometry.js';
import { polygon, rectangle } from './shapes.js';
import { VALVE_LENGTH, valveAssembly } from './valve-parts.js';

export function bucketGear(setting: Setting): Drawn {
  const { motion, base, adjuster, valve } = setting;
  const top = base + motion.lobeLift;
  const over = adjuster === 'shim-over-bucket' ? 3 : 0;
  const under = adjuster === 'shim-under-bucket' ? 3 : 0;
  const crown = 4;
  const half = 17;
  const shutTip = base + over + crown + under;
  const assembly = valveAssembly({
    x: 0,
    shutTip,
    lift: motion.valveLift,
    headDiameter: setting.headDiameter,
    kind: valve.kind,
  });
  const bucketTop = top + over;
  const bucket = [
    at(-half, bucketTop),
    at(half, bucketTop),
    at(half, bucketTop + 26),
    at(half - 3, bucketTop + 26),
    at(half - 3, bucketTop + crown),
    at(3 - half, bucketTop + crown),
    at(3 - half, bucketTop + 26),
    at(-half, bucketTop + 26),
  ];
  const shim = (y: number, width: number): Shape =>
    polygon(rectangle(-width, y, width * 2, 3), 'visible', { fill: 'gasket', part: 'shim', state: 'lit' });
  const shimAt = over > 0 ? top + 1.5 : bucketTop + crown + 1.5;
  return {
    shapes: [
      ...assembly,
      polygon(bucket, 'visible', { fill: 'metal', part: 'bucket' }),
      ...(over > 0 ? [shim(top, 14)] : []),
      ...(under > 0 ? [shim(bucketTop + crown, 5)] : []),
      ...cam(at(0, 0), 180, setting),
    ],
    names: [
      { text: 'cam', at: at(base + motion.lobe.lift + 4, 0), anchor: 'start' },
      ...(over + under > 0 ? [{ text: 'shim', at: at(-half - 4, shimAt), anchor: 'end' as const }] : []),
      { text: 'bucket', at: at(half + 4, bucketTop + 14), anchor: 'start' },
      { text: 'spring', at: at(half + 4, shutTip + 38), anchor: 'start' },
      { text: 'valve', at: at(6, shutTip + VALVE_LENGTH + motion.fullLift + 9), anchor: 'start' },
    ],
  };
}
