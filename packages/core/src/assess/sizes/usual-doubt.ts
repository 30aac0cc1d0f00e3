/** What an instrument can be trusted to in practised hands, where neither its maker nor a certificate says so. */
import { cubicCentimetres, degrees, grams, inch, mm, newtonMetres, poundsForce } from '../../quantity/index.js';
import type { InstrumentKind } from '../model.js';

export interface UsualDoubt {
  /** Expanded uncertainty (k = 2) of one reading, setting and feel together. SI. */
  readonly expanded: number;
  readonly from: string;
}

const UNCERTAINTY = 'trade map, section 3, "Uncertainty that matters"';
const usual = (what: string) => `common practice, no source: ${what}`;

/** One row for each kind of instrument. Each reading and the setting of the gauge have half of the variance (common practice, no source). */
export const USUAL_DOUBTS: Readonly<Record<InstrumentKind, UsualDoubt>> = {
  'outside-micrometer': { expanded: inch(0.0002), from: UNCERTAINTY },
  'bore-gauge': { expanded: inch(0.0002), from: UNCERTAINTY },
  'gauging-strip': { expanded: inch(0.0005), from: UNCERTAINTY },
  'small-bore-gauge': { expanded: inch(0.0003), from: usual('transferred to a micrometer') },
  'depth-micrometer': { expanded: inch(0.0004), from: usual('twice a micrometer') },
  'dial-indicator': { expanded: inch(0.0004), from: usual('twice a micrometer') },
  'height-gauge': { expanded: inch(0.001), from: usual('a thou') },
  'straightedge-and-feeler': { expanded: mm(0.02), from: usual('one step of the feelers') },
  'feeler-gauge': { expanded: inch(0.0005), from: usual('half a step of the feelers') },
  caliper: { expanded: inch(0.001), from: usual('a thou') },
  burette: { expanded: cubicCentimetres(0.2), from: usual('0.1 to 0.2 cm3') },
  scale: { expanded: grams(0.5), from: usual('half a gram') },
  'spring-tester': { expanded: poundsForce(2), from: usual('1 to 2 lbf') },
  protractor: { expanded: degrees(0.5), from: usual('half a degree') },
  'radius-gauge': { expanded: mm(0.25), from: usual('half a step of the set') },
  'ultrasonic-gauge': { expanded: inch(0.01), from: usual('its last digit') },
  'torque-wrench': { expanded: newtonMetres(4), from: usual('4 % at 100 N·m') },
};

/** Standards against which gauges are set, expanded (k = 2), as a share of the instrument's own. Common practice, no source. */
export const STANDARD_SHARE = 0.25;

/** Rules by which a person measures; the usual ones unless a caller has better. */
export interface Habits {
  readonly doubts: Readonly<Record<InstrumentKind, UsualDoubt>>;
  /** Half widths of what is not known about temperatures [K]. */
  readonly workshop: number;
  readonly apart: number;
  readonly thermometer: number;
  /** Share by which an expansion may differ from the table. */
  readonly expansion: number;
  /** Guard band as a share of the expanded uncertainty. */
  readonly guardFactor: number;
}

/**
 * Workshop 15 to 25 °C where no temperature was noted; part and gauge within 2 K (trade map M63) where they lay together;
 * thermometer within 1 K (common practice, no source); expansion within 10 % (calc/metrology/materials).
 */
export const USUAL_HABITS: Habits = {
  doubts: USUAL_DOUBTS,
  workshop: 5,
  apart: 2,
  thermometer: 1,
  expansion: 0.1,
  guardFactor: 1,
};
