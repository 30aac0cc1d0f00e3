import { figuresOf } from './kind.js';

const group = 'moving-parts';

export const movingFigures = [
  ...figuresOf(
    { group, quantity: 'mass', per: 'valve-kind' },
    {
      'valve-mass': { title: 'valve mass', meaning: 'One valve.' },
      'retainer-mass': {
        title: 'retainer mass',
        meaning: 'Retainer, locks and cap of one valve.',
        sign: 'not-negative',
      },
      'spring-mass': {
        title: 'spring mass',
        meaning: 'The whole spring, inner and damper too; a third of it moves.',
        sign: 'not-negative',
      },
      'rocker-mass': {
        title: 'rocker at the valve',
        meaning: 'Rocker or finger referred to its valve end: moment of inertia over the square of the valve arm.',
        sign: 'not-negative',
      },
      'pushrod-mass': { title: 'pushrod mass', meaning: 'One pushrod.', sign: 'not-negative' },
      'lifter-mass': { title: 'lifter mass', meaning: 'One lifter, or bucket with its shim.', sign: 'not-negative' },
    },
  ),
  ...figuresOf(
    { group, quantity: 'mass', per: 'cylinder' },
    {
      'piston-mass': { title: 'piston mass', meaning: 'Bare piston.' },
      'pin-mass': {
        title: 'pin mass',
        meaning: 'Piston pin; with its locks, where they were weighed together.',
        sign: 'not-negative',
      },
      'lock-mass': {
        title: 'pin lock mass',
        meaning: 'Both locks, where the pin was weighed without them.',
        sign: 'not-negative',
      },
      'ring-mass': { title: 'ring set mass', meaning: 'All rings of one piston.', sign: 'not-negative' },
      'rod-small-end-mass': { title: 'rod small end', meaning: 'As weighed with the rod level.' },
      'rod-big-end-mass': { title: 'rod big end', meaning: 'As weighed with the rod level, cap and bolts on.' },
      'rod-shell-mass': { title: 'rod shell mass', meaning: 'Both halves of one rod bearing.', sign: 'not-negative' },
    },
  ),
  ...figuresOf(
    { group, quantity: 'mass', per: 'engine' },
    {
      'oil-mass': {
        title: 'oil allowance',
        meaning: 'Oil in one crankpin, by the maker or the balancer.',
        sign: 'not-negative',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'ratio', per: 'engine' },
    {
      'balance-factor': {
        title: 'balance factor',
        meaning: 'Share of the reciprocating mass that the counterweights carry.',
        sign: 'not-negative',
      },
    },
  ),
];
