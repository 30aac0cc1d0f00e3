import { figuresOf } from './kind.js';

/** The cam as far as the combination needs it. */
export const camFigures = [
  ...figuresOf(
    { group: 'cam', quantity: 'angle', per: 'engine' },
    {
      'intake-closes': {
        title: 'intake closes',
        meaning: 'Crank angle after bottom dead centre at which the intake valve closes, as the card prints it.',
        sign: 'any',
        stands: 'cam.events.ic',
      },
      'closing-allowance': {
        title: 'allowance to closing',
        meaning: 'Crank angle from the printed closing to the one that counts, e.g. from 0.050 in to the seat.',
        sign: 'any',
      },
      'cam-advance': {
        title: 'cam advance',
        meaning: 'Crank angle by which the cam is moved from its card; earlier positive.',
        sign: 'any',
      },
    },
  ),
  ...figuresOf(
    { group: 'cam', quantity: 'angle', per: 'valve-kind' },
    {
      'lobe-duration': {
        title: 'duration',
        meaning: 'Crank angle from seat to seat.',
        stands: 'cam.advertisedDuration',
      },
    },
  ),
  ...figuresOf(
    { group: 'cam', quantity: 'length', per: 'valve-kind' },
    { 'lobe-lift': { title: 'lobe lift', meaning: 'Nose above the base circle.', stands: 'cam.lobeLift' } },
  ),
  ...figuresOf(
    { group: 'cam', quantity: 'ratio', per: 'valve-kind' },
    {
      'lobe-fullness': {
        title: 'fullness of the lobe',
        meaning: 'First exponent of the modelled lobe; larger stays open longer at its nose.',
      },
    },
  ),
];

const group = 'valve-gear';

export const valveGearFigures = [
  ...figuresOf(
    { group, quantity: 'ratio', per: 'valve-kind' },
    {
      'rocker-ratio': { title: 'rocker ratio', meaning: 'Valve lift over lobe lift.', stands: 'valveGear.ratio' },
      crown: {
        title: 'crown under the valve',
        meaning: 'Whether the valve meets the flat crown or a pocket that lies parallel to its head.',
        sign: 'not-negative',
        choices: ['parallel-pocket', 'flat-crown'],
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'angle', per: 'valve-kind' },
    {
      'valve-angle': { title: 'valve angle', meaning: 'Stem from the axis of the bore.', sign: 'not-negative' },
      'valve-arm-above': {
        title: 'valve arm above square',
        meaning:
          'Valve closed: tip centre above the line through the pivot square to the stem, as an angle at the pivot.',
        sign: 'any',
      },
      'pushrod-arm-below': {
        title: 'pushrod arm below square',
        meaning: 'Valve closed: cup below the line through the pivot square to the pushrod, as an angle at the pivot.',
        sign: 'any',
      },
      'pushrod-tilt': {
        title: 'pushrod tilt',
        meaning: 'Pushrod from the travel of the lifter, in the plane of the rocker.',
        sign: 'any',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'length', per: 'valve-kind' },
    {
      'valve-drop': {
        title: 'valve to piston at the top, closed',
        meaning: 'Along the stem from the closed valve to the piston at top dead centre.',
        sign: 'any',
      },
      'valve-diameter': { title: 'valve diameter', meaning: 'Of the head of the valve.' },
      'valve-lash': {
        title: 'valve lash',
        meaning: 'At the valve, cold.',
        sign: 'not-negative',
        stands: 'valveGear.lash',
      },
      'lifter-travel': { title: 'lifter travel', meaning: 'Whole plunger travel of a hydraulic lifter.' },
      'lifter-collapsed-gap': {
        title: 'gap with the lifter collapsed',
        meaning: 'Stem to rocker with the plunger at its stop.',
        sign: 'not-negative',
      },
      'valve-arm': { title: 'valve arm', meaning: 'Rocker pivot to the centre of the arc that bears on the stem.' },
      'pushrod-arm': { title: 'pushrod arm', meaning: 'Rocker pivot to the middle of the pushrod cup.' },
      'pivot-height': {
        title: 'pivot height',
        meaning: 'Rocker pivot above the valve tip, along the stem, valve closed.',
        sign: 'any',
      },
      'pushrod-length': { title: 'pushrod length', meaning: 'Over the ends.' },
    },
  ),
];
