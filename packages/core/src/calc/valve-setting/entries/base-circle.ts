import { degrees } from '../../../quantity/index.js';
import { answer, conflict, defineCalculation } from '../../catalogue/index.js';
import { type BaseCircleSpan, baseCircleSpans } from '../neighbour.js';
import { camEvents, margin } from './inputs.js';
import { readyTiming } from './ready.js';

const output = (symbol: string, meaning: string) =>
  ({ kind: 'angle', symbol, meaning, unit: 'deg', places: 1 }) as const;

const noRoom = ({ valve, length }: BaseCircleSpan): string =>
  `the ${valve} valve is open too long for this margin: ${-length} degrees of base circle are missing`;

export const baseCircleWindows = defineCalculation({
  id: 'valve-setting.base-circle-windows',
  subject: 'valve-setting',
  title: 'Crank angles at which the valves of a cylinder may be set',
  summary:
    'From each closing to the next opening, less the margin, counted from the cylinder’s own firing dead centre.',
  inputs: { ...camEvents, margin },
  outputs: {
    intakeFrom: output('I₁', 'intake may be set from here'),
    intakeTo: output('I₂', 'intake may be set up to here, in the next cycle when it is smaller'),
    intakeSpan: output('ΔI', 'length of the intake span'),
    exhaustFrom: output('E₁', 'exhaust may be set from here'),
    exhaustTo: output('E₂', 'exhaust may be set up to here, in the next cycle when it is smaller'),
    exhaustSpan: output('ΔE', 'length of the exhaust span'),
  },
  formula: 'I₁ = 540° + IC + m; I₂ = 360° − IO − m; E₁ = 360° + EC + m; E₂ = 180° − EO − m; each modulo 720°',
  assumptions: ['Four-stroke: one cycle is 720° of the crank.', 'Events are seat to seat, not at a checking lift.'],
  sources: ['derived-here'],
  example: {
    inputs: {
      intakeOpens: '10 deg',
      intakeCloses: '50 deg',
      exhaustOpens: '50 deg',
      exhaustCloses: '10 deg',
      margin: '0 deg',
    },
    outputs: {
      intakeFrom: '590.0 deg',
      intakeTo: '350.0 deg',
      intakeSpan: '480.0 deg',
      exhaustFrom: '370.0 deg',
      exhaustTo: '130.0 deg',
      exhaustSpan: '480.0 deg',
    },
    from: 'hand arithmetic on the events of reference mechanism-open.md section 8.2',
  },
  compute: (v) => {
    const ready = readyTiming({ ...v, firingOrder: [1] });
    if (!ready.ok) return ready;
    const spans = baseCircleSpans(ready.value.timing);
    const short = spans.find(({ length }) => length < 0);
    if (short) return conflict(['margin', ...Object.keys(camEvents)], noRoom(short));
    const [intake, exhaust] = spans as readonly [BaseCircleSpan, BaseCircleSpan];
    const outputs = {
      intakeFrom: degrees(intake.from),
      intakeTo: degrees(intake.to),
      intakeSpan: degrees(intake.length),
      exhaustFrom: degrees(exhaust.from),
      exhaustTo: degrees(exhaust.to),
      exhaustSpan: degrees(exhaust.length),
    };
    return answer(outputs, ready.value.cautions);
  },
});
