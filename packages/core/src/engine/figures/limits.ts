import { figuresOf } from './kind.js';

const group = 'limits';

/** What is wanted: windows that a combination has to keep, each end a figure of its own. */
export const limitFigures = [
  ...figuresOf(
    { group, quantity: 'angular-speed', per: 'engine' },
    { 'highest-speed': { title: 'highest speed', meaning: 'Crank speed that the engine is to stand.' } },
  ),
  ...figuresOf(
    { group, quantity: 'ratio', per: 'engine' },
    {
      'ratio-least': { title: 'least compression ratio', meaning: 'Wanted at least.' },
      'ratio-most': { title: 'most compression ratio', meaning: 'What fuel or boost allows.' },
      'ratio-spread-most': {
        title: 'most spread of the ratio',
        meaning: 'Between the cylinders of the engine.',
        sign: 'not-negative',
      },
      'effective-ratio-least': { title: 'least effective ratio', meaning: 'From intake closing; wanted at least.' },
      'effective-ratio-most': { title: 'most effective ratio', meaning: 'From intake closing; what the fuel allows.' },
      'cranking-exponent': {
        title: 'exponent of the cranking pressure',
        meaning: '1.2 to 1.3: a fit that stands for heat lost and leakage.',
      },
      'follow-margin-least': {
        title: 'least spring margin',
        meaning: 'Spring load over the load that the lobe needs at the highest speed, least over the lobe.',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'length', per: 'engine' },
    {
      'quench-least': { title: 'least quench', meaning: 'Piston to head at the top.' },
      'quench-most': { title: 'most quench', meaning: 'Piston to head at the top.' },
      'deck-height-least': {
        title: 'least deck height',
        meaning: 'That may be left.',
        stands: 'machining.leastDeckHeight',
      },
      'head-thickness-least': {
        title: 'least head thickness',
        meaning: 'That may be left.',
        stands: 'machining.leastHeadThickness',
      },
      'site-height': { title: 'height above the sea', meaning: 'Where the engine runs.', sign: 'any' },
    },
  ),
  ...figuresOf(
    { group, quantity: 'mass', per: 'engine' },
    {
      'mass-match-most': {
        title: 'most spread of masses',
        meaning: 'Parts of one kind, heaviest less lightest.',
        sign: 'not-negative',
        stands: 'machining.massMatch',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'length', per: 'valve-kind' },
    {
      'valve-room-least': { title: 'least valve room', meaning: 'Valve to piston, least over the turn.' },
      'bind-margin-least': { title: 'least room to coil bind', meaning: 'At full lift.' },
      'bind-margin-most': {
        title: 'most room to coil bind',
        meaning: 'At full lift; a spring with too much of it surges.',
      },
      'retainer-room-least': { title: 'least room under the retainer', meaning: 'At full lift.' },
    },
  ),
  ...figuresOf(
    { group, quantity: 'force', per: 'valve-kind' },
    {
      'seat-load-least': { title: 'least seat load', meaning: 'Valve closed.' },
      'seat-load-most': { title: 'most seat load', meaning: 'Valve closed.' },
      'open-load-most': { title: 'most open load', meaning: 'At full lift; what lobe and follower stand.' },
    },
  ),
];
