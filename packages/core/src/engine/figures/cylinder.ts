import { figuresOf } from './kind.js';

const group = 'cylinder';

/** Bore, crank train and crown: what is swept and how high the piston comes. */
export const cylinderFigures = [
  ...figuresOf(
    { group, quantity: 'length', per: 'cylinder' },
    {
      bore: { title: 'cylinder bore', meaning: 'Mean diameter of the bore.', stands: 'crankTrain.bore' },
      stroke: { title: 'stroke', meaning: 'Twice the throw of the crank.', stands: 'crankTrain.stroke' },
      'rod-length': { title: 'rod length', meaning: 'Centre to centre.', stands: 'crankTrain.rodLength' },
      'compression-height': {
        title: 'compression height',
        meaning: 'Pin centre to the flat of the crown.',
        stands: 'crankTrain.compressionHeight',
      },
      'deck-height': {
        title: 'deck height',
        meaning: 'Crank centre to the deck of the bank.',
        stands: 'crankTrain.deckHeight',
      },
      'deck-clearance': {
        title: 'deck clearance',
        meaning: 'Crown flat below the deck at dead centre, over the pin axis; proud of the deck negative.',
        sign: 'any',
      },
      'deck-cut': { title: 'deck cut', meaning: 'Still to be taken off the deck.', sign: 'not-negative' },
      'land-diameter': { title: 'top land diameter', meaning: 'Across the land above the top ring, cold.' },
      'land-height': { title: 'top land height', meaning: 'Crown edge to the upper side of the top ring.' },
      'downfill-depth': {
        title: 'downfill depth',
        meaning: 'How far the piston was lowered for the downfill.',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'volume', per: 'cylinder' },
    {
      'piston-volume': {
        title: 'crown volume',
        meaning: 'Dish and valve reliefs positive, dome negative; 0 for a flat crown.',
        sign: 'any',
      },
      'pocket-volume': {
        title: 'pocket volume',
        meaning: 'Valve pockets, where the crown volume does not hold them.',
        sign: 'not-negative',
      },
      'crevice-volume': {
        title: 'crevice volume',
        meaning: 'Room round the top land down to the ring, in place of its diameter and height.',
        sign: 'not-negative',
      },
      'other-volume': {
        title: 'other volume',
        meaning: 'Plug, chamfer, anything else; what takes up room is negative.',
        sign: 'any',
      },
      'downfill-volume': {
        title: 'downfill volume',
        meaning: 'What the room above the lowered piston took, up to the deck.',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'length', per: 'engine' },
    {
      'pin-offset': {
        title: 'pin offset',
        meaning: 'Piston pin from the cylinder axis, positive toward the side the crankpin moves to after the top.',
        sign: 'any',
        stands: 'crankTrain.pinOffset',
      },
      'cylinder-pitch': {
        title: 'cylinder pitch',
        meaning: 'From one cylinder of a bank to the next, along the crank.',
        stands: 'layout.borePitch',
      },
      'bank-offset': {
        title: 'bank offset',
        meaning: 'How far the second bank stands behind the first, along the crank.',
        sign: 'any',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'ratio', per: 'engine' },
    {
      'downfill-zero': {
        title: 'zero of the downfill depth',
        meaning: 'Whether the depth counts from the highest place of the piston or from the deck to the crown flat.',
        sign: 'not-negative',
        choices: ['own-top', 'deck'],
      },
      'printed-ratio': {
        title: 'printed compression ratio',
        meaning: 'As the maker prints it for the engine.',
        stands: 'crankTrain.compressionRatio',
      },
    },
  ),
];
