import { type ReopeningRule, rule } from './rule.js';

/** What came off or was let out: its tightening, gasket and setting count no more. */
export const REMOVALS: readonly ReopeningRule[] = [
  rule(
    'head-removed',
    'head',
    'A head came off',
    'its gasket was crushed, its bolts count one use more, its valves are set anew',
    'gasket-held-up',
    'head-bolts-laid-out',
  ),
  rule('main-cap-removed', 'main', 'A main cap came off', 'its tightening counts no more', 'main-cap-on'),
  rule('rod-cap-removed', 'cylinder', 'A rod cap came off', 'its tightening counts no more', 'rod-cap-on'),
  rule('piston-removed', 'cylinder', 'A piston came out', 'rings, shells and cap go in anew', 'rod-shell-in'),
  rule('crank-removed', 'engine', 'The crank came out', 'everything on it goes in anew', 'saddles-wiped'),
  rule('cam-removed', 'engine', 'A camshaft came out', 'lube, timing and setting are new', 'cam-lubed', 'cam-laid-in'),
  rule('timing-drive-removed', 'engine', 'The timing drive came off', 'the cam may stand elsewhere', 'drive-fitted'),
  rule('timing-cover-removed', 'engine', 'The timing cover came off', 'its seal and gasket go on anew', 'cover-clear'),
  rule(
    'pan-removed',
    'engine',
    'The oil pan came off',
    'its gasket goes on anew; look at the bottom once more',
    'bottom-last-seen',
  ),
  rule('pump-removed', 'engine', 'The oil pump came off', 'drive, pickup and prime are new', 'pump-packed'),
  rule(
    'intake-removed',
    'engine',
    'The intake came off',
    'its gaskets go on anew; the valley was open',
    'valley-counted',
  ),
  rule('rockers-removed', 'head', 'Rockers came off', 'the setting is lost', 'rockers-tightened', 'valve-set'),
  rule('valve-covers-removed', 'engine', 'A valve cover came off', 'it was open: count again', 'covers-counted'),
  rule(
    'distributor-moved',
    'engine',
    'Distributor or its clamp was moved',
    'the timing stands elsewhere',
    'rotor-placed',
  ),
  rule(
    'injection-pump-moved',
    'engine',
    'The injection pump was moved',
    'the timing stands elsewhere',
    'injection-set',
  ),
  rule('fuel-joint-opened', 'engine', 'A fuel joint was opened', 'it may leak', 'fuel-joints-closed'),
  rule('oil-drained', 'engine', 'The oil was drained', 'nothing may turn without oil', 'oil-filled'),
  rule('coolant-drained', 'engine', 'The coolant was drained', 'air is in it', 'coolant-filled'),
];
