import { type Angle, apart, degrees } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { TURN } from '../angle.js';
import { firingTops } from '../firing.js';
import { type PinDifference, pinDifferences } from '../throws.js';
import { firingFault } from './faults.js';
import { firingOrder, intervals } from './inputs.js';

const TOLERANCE = degrees(0.5);

export const sharedPins = defineCalculation({
  id: 'crank.shared-pins',
  subject: 'crank',
  title: 'Firing order against shared crankpins of a vee',
  summary: 'Checks that the two cylinders of every crankpin reach top dead centre the same bank angle apart.',
  inputs: {
    firingOrder,
    intervals,
    firstOfPin: {
      kind: 'count',
      symbol: 'a',
      meaning: 'of each crankpin, the cylinder on the first bank',
      range: { from: 1, to: 99 },
      list: true,
    },
    secondOfPin: {
      kind: 'count',
      symbol: 'b',
      meaning: 'of each crankpin in the same sequence, the cylinder on the second bank',
      range: { from: 1, to: 99 },
      list: true,
    },
    veeAngle: {
      kind: 'angle',
      symbol: 'V',
      meaning: 'angle between the banks',
      unit: 'deg',
      range: { from: 0, to: degrees(180) },
    },
  },
  outputs: {
    differences: {
      kind: 'angle',
      symbol: 'Δ',
      meaning: 'of each crankpin, top dead centre of the second cylinder after the first, 0 to 360°',
      unit: 'deg',
      places: 2,
      list: true,
    },
    verdict: { kind: 'text', symbol: 'verdict', meaning: 'whether crank and firing order can belong together' },
  },
  formula: 'Δ = A(b) − A(a) modulo 360°; all Δ = V or all Δ = 360° − V',
  assumptions: ['Common pins without splay. Each pair is named in one fixed sense, first bank before second bank.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      firingOrder: [1, 8, 4, 3, 6, 5, 7, 2],
      firstOfPin: [1, 3, 5, 7],
      secondOfPin: [2, 4, 6, 8],
      veeAngle: '90 deg',
    },
    outputs: { differences: ['270 deg', '270 deg', '270 deg', '270 deg'], verdict: 'agrees' },
    from: 'reference row MO-36',
  },
  compute: (v) => {
    const tops = firingTops(v.firingOrder, v.intervals);
    if (!tops.ok) return firingFault(tops.fault);
    const pins = v.firstOfPin.flatMap((first, at): [number, number][] => {
      const second = v.secondOfPin[at];
      return second === undefined ? [] : [[first, second]];
    });
    const found = pinDifferences(tops.value, pins);
    if (v.firstOfPin.length !== v.secondOfPin.length || found.length !== pins.length) {
      return conflict(
        ['firingOrder', 'firstOfPin', 'secondOfPin'],
        'each crankpin needs two cylinders and both must be in the firing order',
      );
    }
    return answer({ differences: found.map((pin) => pin.difference), verdict: verdictOf(found, v.veeAngle) });
  },
});

function verdictOf(pins: readonly PinDifference[], veeAngle: Angle): string {
  const allAt = (wanted: number) => pins.every((pin) => apart(pin.difference, wanted, TURN) <= TOLERANCE);
  if (allAt(veeAngle) || allAt(-veeAngle)) return 'agrees';
  // One sense may be the right one: name the pins that disagree with the sense most pins have.
  const against = (wanted: number) => pins.filter((pin) => apart(pin.difference, wanted, TURN) > TOLERANCE);
  const [one, other] = [against(veeAngle), against(-veeAngle)];
  const fewest = other.length < one.length ? other : one;
  return `does not agree: see crankpin ${fewest.map((pin) => `${pin.first}-${pin.second}`).join(', ')}`;
}
