/** Inputs that several entries of this subject share. */
import { mm, turns } from '../../../quantity/index.js';

export const ratio = {
  kind: 'ratio',
  symbol: 'R',
  meaning: 'rocker ratio: valve lift over lobe lift',
  unit: '',
  range: { above: 0, to: 5 },
} as const;

export const place = {
  kind: 'choice',
  symbol: 'place',
  meaning: 'where the adjusting thread acts',
  choices: ['stud-nut', 'pushrod-end-screw', 'valve-end-screw'],
} as const;

export const pitch = {
  kind: 'length',
  symbol: 'P',
  meaning: 'pitch of the adjusting thread; write a 24-per-inch thread as "1/24 in"',
  unit: 'mm',
  range: { above: 0, to: mm(5) },
} as const;

export const turned = {
  kind: 'angle',
  symbol: 'n',
  meaning: 'turned past zero lash, such as "1/2 turn"',
  unit: 'turn',
  range: { from: 0, to: turns(20) },
} as const;

export const smallLength = { kind: 'length', unit: 'mm', range: { from: 0, to: mm(50) } } as const;
