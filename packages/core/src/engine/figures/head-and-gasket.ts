import { figuresOf } from './kind.js';

const group = 'head-and-gasket';

/** What closes the cylinder, and the faces that move when metal is taken. */
export const headFigures = [
  ...figuresOf(
    { group, quantity: 'volume', per: 'cylinder' },
    {
      'chamber-volume': {
        title: 'chamber volume',
        meaning: 'Room in the head with valves and plug in, by burette.',
        sign: 'not-negative',
        stands: 'crankTrain.chamberVolume',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'length', per: 'cylinder' },
    {
      'gasket-bore': { title: 'gasket bore', meaning: 'Diameter of the opening of the head gasket.' },
      'gasket-thickness': {
        title: 'gasket thickness',
        meaning: 'Of the head gasket, compressed at full torque.',
        sign: 'not-negative',
      },
      'gasket-thickness-before': {
        title: 'gasket thickness before',
        meaning: 'Of the gasket with which the intake faces fitted.',
        sign: 'not-negative',
      },
      'chamber-perimeter': {
        title: 'chamber perimeter',
        meaning: 'Round the edge of the chamber on the face of the head.',
      },
      'head-thickness': { title: 'head thickness', meaning: 'Gasket face to the upper face, as it is now.' },
      'head-cut': { title: 'head cut', meaning: 'Still to be taken off the face of the head.', sign: 'not-negative' },
    },
  ),
  ...figuresOf(
    { group, quantity: 'area', per: 'cylinder' },
    { 'chamber-area': { title: 'chamber area', meaning: 'Area of the chamber on the face of the head, traced.' } },
  ),
  ...figuresOf(
    { group, quantity: 'length', per: 'engine' },
    {
      'intake-gasket-change': {
        title: 'intake gasket change',
        meaning: 'Intake gasket new less old; thicker positive.',
        sign: 'any',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'angle', per: 'engine' },
    {
      'intake-face-angle': {
        title: 'intake face angle',
        meaning:
          'Intake face of the head from vertical, engine upright; a face square to the deck has the angle of the bank.',
        sign: 'not-negative',
      },
    },
  ),
];
