/**
 * What was read on the invented engine, sheet by sheet: a used engine that was looked after, with one worn cylinder, one tired
 * main bearing and one worn lobe. Every figure is invented. Figures are in the unit of the gauge.
 */

/** Gauges by their id in the log; each is kept, and held against its standard before and after. */
export type GaugeId =
  | 'mic-25'
  | 'mic-50'
  | 'mic-75'
  | 'mic-100'
  | 'mic-125'
  | 'bore'
  | 'small-bore'
  | 'dial'
  | 'depth'
  | 'height'
  | 'feelers'
  | 'straightedge'
  | 'caliper'
  | 'burette'
  | 'scale'
  | 'spring-tester'
  | 'wall';

export interface ReadSheet {
  readonly feature: string;
  readonly gauge: GaugeId;
  /** Usual figure; two where intake and exhaust differ. */
  readonly usual: number | { readonly intake: number; readonly exhaust: number };
  /** How far parts differ from each other, and readings of one part, to either side. */
  readonly between: number;
  readonly within: number;
  /** Added at a station, for parts that do not wear evenly. */
  readonly at?: Readonly<Record<string, number>>;
  /** Added at a place: the parts that are worn more than the others. */
  readonly worn?: Readonly<Record<string, number>>;
  /** Only these places were read; all when left out. */
  readonly only?: (place: string) => boolean;
}

const sheet = (
  feature: string,
  gauge: GaugeId,
  usual: ReadSheet['usual'],
  between: number,
  within: number,
  more: Pick<ReadSheet, 'at' | 'worn' | 'only'> = {},
): ReadSheet => ({ feature, gauge, usual, between, within, ...more });

/** Bores wear most where the top ring turns, across the engine. */
const BORE_WEAR = {
  'top-thrust': 0.026,
  'top-axial': 0.014,
  'middle-thrust': 0.01,
  'middle-axial': 0.005,
  'bottom-thrust': 0.003,
};
const leftHead = (place: string): boolean => /^[1357]-/.test(place);

export const READ_SHEETS: readonly ReadSheet[] = [
  sheet('crank-end-float', 'dial', 0.26, 0, 0),
  sheet('cam-end-float', 'dial', 0.14, 0, 0),
  sheet('rod-side-clearance', 'feelers', 0.33, 0.05, 0),
  sheet('chain-slack', 'caliper', 10.5, 0, 0),
  sheet('deck-clearance', 'dial', 0.41, 0.04, 0.02),
  sheet('deck-flatness', 'straightedge', 0.03, 0, 0.012),
  sheet('deck-height', 'height', 231.18, 0.01, 0.005),
  sheet('cylinder-bore', 'bore', 98.624, 0.004, 0.001, { at: BORE_WEAR, worn: { 7: 0.042 } }),
  sheet('bore-wall', 'wall', 7.4, 0.3, 0.2),
  sheet('main-housing', 'bore', 68.0066, 0, 0.0005),
  sheet('main-bearing-bore', 'bore', 63.524, 0.002, 0.001, { worn: { 'main-4': 0.006 } }),
  sheet('cam-bearing', 'bore', 50.056, 0.003, 0.002),
  sheet('main-journal', 'mic-75', 63.473, 0.002, 0.001, { worn: { 'main-4': -0.022 } }),
  sheet('crankpin', 'mic-75', 53.468, 0.002, 0.001),
  sheet('crank-runout', 'dial', 0.03, 0, 0.01),
  sheet('thrust-width', 'depth', 27.05, 0, 0.005),
  sheet('thrust-bearing-width', 'mic-50', 26.862, 0, 0.003),
  sheet('big-end-bore', 'bore', 57.0066, 0, 0.0005),
  sheet('rod-bearing-bore', 'bore', 53.516, 0.002, 0.001),
  sheet('big-end-width', 'mic-25', 22.87, 0.015, 0),
  sheet('small-end-bore', 'small-bore', 24.0122, 0.0003, 0.0005),
  sheet('rod-big-end-mass', 'scale', 488.2, 1.4, 0),
  sheet('rod-small-end-mass', 'scale', 197.1, 0.7, 0),
  sheet('piston-skirt', 'mic-100', 98.556, 0.004, 0, { worn: { 7: -0.018, 8: -0.008 } }),
  sheet('compression-height', 'height', 35.6, 0.02, 0),
  sheet('crown-volume', 'burette', 3.8, 0.04, 0),
  sheet('piston-mass', 'scale', 601.2, 1.2, 0),
  sheet('pin-mass', 'scale', 143.6, 0.4, 0),
  sheet('ring-gap-top', 'feelers', 0.58, 0.03, 0, { worn: { 7: 0.14 } }),
  sheet('ring-gap-second', 'feelers', 0.68, 0.03, 0, { worn: { 7: 0.14 } }),
  sheet('cam-journal', 'mic-50', 49.984, 0.004, 0.001),
  sheet('lobe-lift', 'dial', { intake: 7.34, exhaust: 7.58 }, 0.02, 0, { worn: { '6-intake-1': -0.19 } }),
  sheet('lobe-base-runout', 'dial', 0.015, 0.006, 0),
  sheet('cam-runout', 'dial', 0.02, 0, 0.01),
  sheet('lifter', 'mic-25', 21.684, 0.003, 0.001),
  sheet('lifter-crown', 'dial', 0.035, 0.008, 0, { worn: { '6-intake-1': -0.03 } }),
  sheet('pushrod-length', 'caliper', 199.78, 0.06, 0),
  sheet('pushrod-runout', 'dial', 0.08, 0.04, 0),
  sheet('head-flatness', 'straightedge', 0.04, 0.01, 0.012),
  sheet('head-thickness', 'mic-125', 118.03, 0.01, 0.01),
  sheet('chamber-volume', 'burette', 68.4, 0.3, 0),
  sheet('gasket-thickness', 'mic-25', 1.152, 0.006, 0.006),
  sheet('valve-guide', 'small-bore', 8.018, 0.004, 0.002, { only: leftHead }),
  sheet('valve-stem', 'mic-25', { intake: 7.958, exhaust: 7.948 }, 0.004, 0.001, { only: leftHead }),
  sheet('spring-free-length', 'caliper', 50.8, 0.3, 0),
  sheet('spring-load-closed', 'spring-tester', 372, 10, 0),
];

export interface Gauge {
  readonly id: GaugeId;
  readonly name: string;
  readonly kind: string;
  readonly measured: 'length' | 'volume' | 'mass' | 'force';
  readonly unit: string;
  readonly step: string;
  readonly range: readonly [string, string];
  /** As its certificate says, k = 2; left out where it has none. */
  readonly expanded?: string;
  /** What it was held against, and what it read before and after. */
  readonly standard?: readonly [standard: string, before: string, after: string];
}
const gauge = (
  id: GaugeId,
  name: string,
  kind: string,
  step: string,
  range: readonly [string, string],
  standard?: Gauge['standard'],
): Gauge => ({ id, name, kind, measured: 'length', unit: 'mm', step, range, ...(standard && { standard }) });

const micrometer = (id: GaugeId, low: number, standard: string, after = standard): Gauge => ({
  ...gauge(
    id,
    `micrometer ${low} to ${low + 25}`,
    'outside-micrometer',
    '0.001 mm',
    [`${low} mm`, `${low + 25} mm`],
    [standard, standard, after],
  ),
  expanded: '0.001 mm',
});

export const GAUGES: readonly Gauge[] = [
  micrometer('mic-25', 0, '10.000 mm'),
  micrometer('mic-50', 25, '25.000 mm'),
  micrometer('mic-75', 50, '50.000 mm'),
  micrometer('mic-100', 75, '75.000 mm', '75.001 mm'),
  gauge(
    'mic-125',
    'micrometer 100 to 125',
    'outside-micrometer',
    '0.01 mm',
    ['100 mm', '125 mm'],
    ['100.00 mm', '100.00 mm', '100.00 mm'],
  ),
  {
    ...gauge(
      'bore',
      'bore gauge 50 to 150',
      'bore-gauge',
      '0.001 mm',
      ['50 mm', '150 mm'],
      ['98.600 mm', '98.600 mm', '98.601 mm'],
    ),
    expanded: '0.0015 mm',
  },
  {
    ...gauge(
      'small-bore',
      'small bore gauges',
      'small-bore-gauge',
      '0.001 mm',
      ['3 mm', '30 mm'],
      ['24.000 mm', '24.000 mm', '24.000 mm'],
    ),
    expanded: '0.0015 mm',
  },
  gauge('dial', 'dial indicator', 'dial-indicator', '0.005 mm', ['0 mm', '10 mm']),
  gauge('depth', 'depth micrometer', 'depth-micrometer', '0.01 mm', ['0 mm', '75 mm']),
  gauge('height', 'height gauge', 'height-gauge', '0.01 mm', ['0 mm', '300 mm']),
  gauge('feelers', 'feelers', 'feeler-gauge', '0.01 mm', ['0.03 mm', '1 mm']),
  gauge('straightedge', 'straightedge and feelers', 'straightedge-and-feeler', '0.01 mm', ['0 mm', '1 mm']),
  gauge('wall', 'wall gauge', 'ultrasonic-gauge', '0.1 mm', ['1 mm', '50 mm'], ['10.0 mm', '10.0 mm', '10.0 mm']),
  gauge('caliper', 'caliper', 'caliper', '0.02 mm', ['0 mm', '200 mm'], ['50.00 mm', '50.00 mm', '50.00 mm']),
  {
    ...gauge('burette', 'burette', 'burette', '0.1 cm3', ['0 cm3', '100 cm3']),
    measured: 'volume',
    unit: 'cm3',
    expanded: '0.1 cm3',
  },
  {
    ...gauge('scale', 'scale', 'scale', '0.1 g', ['0 g', '3000 g'], ['500.0 g', '500.0 g', '500.1 g']),
    measured: 'mass',
    unit: 'g',
  },
  {
    ...gauge('spring-tester', 'spring tester', 'spring-tester', '2 N', ['0 N', '2500 N']),
    measured: 'force',
    unit: 'N',
  },
];
