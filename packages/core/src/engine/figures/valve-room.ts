import { figuresOf } from './kind.js';

/** What the room between valve and piston, the pushrod and the preload follow, besides the valve gear itself. */
const ofValves = [
  ...figuresOf(
    { group: 'valve-gear', quantity: 'length', per: 'valve-kind' },
    {
      'valve-drop-gasket': {
        title: 'gasket when the valve room was taken',
        meaning:
          'Thickness of the gasket, as it was clamped, when the valve to piston room at the top was taken; 0 for none.',
        sign: 'not-negative',
      },
      'valve-recess': {
        title: 'valve above the face of the head',
        meaning: 'Along the stem, closed valve to the face of the head where the piston comes; standing out negative.',
        sign: 'any',
      },
      'pocket-depth': {
        title: 'pocket depth',
        meaning: 'Valve pocket below the crown flat, square to its floor; 0 for a flat crown.',
        sign: 'not-negative',
      },
      'valve-sunk': {
        title: 'valve sunk',
        meaning: 'Still to be sunk into its seat, along the stem.',
        sign: 'not-negative',
      },
      'lifter-preload': {
        title: 'lifter preload',
        meaning: 'Plunger of a hydraulic lifter below its stop, valve closed.',
        sign: 'not-negative',
      },
      'pushrod-zero-lash': {
        title: 'pushrod length at zero lash',
        meaning: 'By a checking pushrod: over the ends, with neither lash nor preload.',
      },
      'base-circle-smaller': {
        title: 'base circle smaller',
        meaning: 'Radius of the base circle, old less new, since the length at zero lash was taken.',
        sign: 'any',
      },
      'tip-higher': {
        title: 'valve tip higher',
        meaning: 'Over the spring seat since the length at zero lash was taken, as by cutting the seat.',
        sign: 'any',
      },
      'pivot-higher': {
        title: 'rocker pivot higher',
        meaning: 'Over the head since the length at zero lash was taken, as by a stand.',
        sign: 'any',
      },
      'pushrod-gasket': {
        title: 'gasket when the pushrod was measured',
        meaning: 'Thickness of the head gasket when the length at zero lash was taken; 0 for none.',
        sign: 'not-negative',
      },
    },
  ),
  ...figuresOf(
    { group: 'cam', quantity: 'angle', per: 'valve-kind' },
    {
      'centreline-wanted': {
        title: 'wanted centreline',
        meaning:
          'Middle of the lobe in crank angle, by the card or as wanted: intake after, exhaust before the top dead centre of overlap.',
        stands: 'cam.events',
      },
      'duration-at-lift': {
        title: 'duration at the checking lift',
        meaning: 'Crank angle for which the lobe is above the checking lift.',
        stands: 'cam.events',
      },
    },
  ),
  ...figuresOf(
    { group: 'cam', quantity: 'length', per: 'engine' },
    {
      'checking-lift': {
        title: 'checking lift',
        meaning: 'Lift at the lobe at which the card takes its events.',
        stands: 'cam.checkingLift',
      },
    },
  ),
  ...figuresOf(
    { group: 'valve-gear', quantity: 'angle', per: 'engine' },
    {
      'preload-turns': {
        title: 'turns past zero lash',
        meaning: 'Of the adjuster, more preload positive.',
        sign: 'not-negative',
        stands: 'valveGear.preload.turns',
      },
    },
  ),
  ...figuresOf(
    { group: 'limits', quantity: 'length', per: 'valve-kind' },
    {
      'lifter-preload-least': {
        title: 'least lifter preload',
        meaning: 'Plunger below its stop.',
        sign: 'not-negative',
      },
      'lifter-preload-most': { title: 'most lifter preload', meaning: 'Plunger below its stop.' },
    },
  ),
];

const group = 'moving-parts';
const per = 'engine';
/** What brings a piston nearer when it is hot and at speed. */
const ofHotPistons = [
  ...figuresOf(
    { group, quantity: 'area', per },
    { 'rod-section': { title: 'rod section', meaning: 'Section of the shank of the rod, mean.' } },
  ),
  ...figuresOf(
    { group, quantity: 'mass', per },
    {
      'rod-shank-share': {
        title: 'share of the rod’s shank',
        meaning: 'About a third of the shank, where the weighed small end does not hold it.',
        sign: 'not-negative',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'pressure', per },
    { 'rod-modulus': { title: 'modulus of the rod', meaning: 'Steel about 205 GPa, aluminium 71, titanium 114.' } },
  ),
  ...figuresOf(
    { group, quantity: 'length', per },
    {
      'running-play': {
        title: 'play taken up',
        meaning: 'Half of the clearance of main bearing, big end and pin together.',
        sign: 'not-negative',
      },
    },
  ),
  ...figuresOf(
    { group, quantity: 'temperature-difference', per },
    {
      'rod-warmer': { title: 'rod warmer', meaning: 'Than when it was measured.', sign: 'any' },
      'piston-warmer': { title: 'piston warmer', meaning: 'Mean between pin and crown.', sign: 'any' },
      'block-warmer': { title: 'block warmer', meaning: 'Than when it was measured.', sign: 'any' },
    },
  ),
  ...figuresOf(
    { group, quantity: 'thermal-expansion', per },
    {
      'rod-expansion': { title: 'expansion of the rod', meaning: 'Of rod and crank.', sign: 'not-negative' },
      'piston-expansion': { title: 'expansion of the piston', meaning: 'Mean over the range.', sign: 'not-negative' },
      'block-expansion': {
        title: 'expansion of the block',
        meaning: 'Iron about 11 ppm/K, aluminium 23.',
        sign: 'not-negative',
      },
    },
  ),
];

export const valveRoomFigures = [...ofValves, ...ofHotPistons];
