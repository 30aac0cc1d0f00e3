/** Inputs that several entries of this subject share. */
import { kilonewtons, mm, newtonMetres } from '../../../quantity/index.js';
import { readThread, type Thread } from '../thread.js';

export const thread = {
  kind: 'text',
  symbol: 'thread',
  meaning: 'thread with its pitch',
  expected: 'a thread with its pitch, such as "M10 x 1.5" or "3/8-24"; the diameter alone does not tell the pitch',
  read: (text: string): Thread | undefined => {
    const found = readThread(text);
    return found.ok ? found.value : undefined;
  },
} as const;

export const nominalDiameter = {
  kind: 'length',
  symbol: 'D',
  meaning: 'nominal diameter',
  unit: 'mm',
  range: { above: 0, to: mm(200) },
} as const;

export const preload = {
  kind: 'force',
  symbol: 'F',
  meaning: 'preload',
  unit: 'kN',
  range: { above: 0, to: kilonewtons(5000) },
} as const;

export const torque = {
  kind: 'torque',
  symbol: 'T',
  meaning: 'tightening torque',
  unit: 'N·m',
  range: { above: 0, to: newtonMetres(50_000) },
} as const;

export const nutFactor = {
  kind: 'ratio',
  symbol: 'K',
  meaning: 'nut factor of this lubricant, finish and both faces',
  unit: '',
  range: { above: 0, to: 1 },
} as const;

export const friction = { kind: 'ratio', unit: '', range: { from: 0, to: 1 } } as const;
export const threadFriction = { ...friction, symbol: 'μG', meaning: 'friction in the thread' } as const;
export const headFriction = { ...friction, symbol: 'μK', meaning: 'friction under the head or nut' } as const;

export const ring = {
  bearingOutside: {
    kind: 'length',
    symbol: 'dw',
    meaning: 'outside of the bearing face: the washer face, not across corners',
    unit: 'mm',
    range: { above: 0, to: mm(500) },
  },
  bearingHole: {
    kind: 'length',
    symbol: 'dh',
    meaning: 'clearance hole or its chamfer',
    unit: 'mm',
    range: { above: 0, to: mm(500) },
  },
} as const;

export const form = {
  kind: 'choice',
  symbol: 'form',
  meaning: 'which form of the long equation: exact screw theory, the printed one with 0.16 and 0.58, or linear',
  choices: ['exact', 'printed', 'linear'],
  default: 'exact',
} as const;

export const torsion = {
  kind: 'choice',
  symbol: 'torsion',
  meaning: 'how the twist counts: plastic in current tables, elastic in older ones',
  choices: ['plastic', 'elastic'],
  default: 'plastic',
} as const;
