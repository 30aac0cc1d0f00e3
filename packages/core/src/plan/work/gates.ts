/**
 * What must precede what, beyond the order of the operations and of the acts in each. `built-on` gates also carry a re-opening: redo the
 * earlier act and the later one is open again. Acts are linked place by place: the bore of cylinder 3 with the rings of cylinder 3.
 * Common practice, no source.
 */
import type { EdgeKind, Trait } from './model.js';

export interface Gate {
  readonly from: string;
  readonly to: readonly string[];
  readonly kind: EdgeKind;
  readonly why: string;
  /** Holds only where the sheet says that the engine has it. */
  readonly when?: Trait;
}
const first = (from: string, to: readonly string[], why: string, when?: Trait): Gate => ({
  from,
  to,
  kind: 'order',
  why,
  ...(when && { when }),
});
const carries = (from: string, to: readonly string[], why: string, when?: Trait): Gate => ({
  ...first(from, to, why, when),
  kind: 'built-on',
});

const BEFORE_CUTTING: readonly Gate[] = [
  first('block-cracks', ['block-machined', 'mains-honed', 'bore-honed'], 'no money is put into a cracked block'),
  first('head-cracks', ['head-machined'], 'no money is put into a cracked head'),
  first('crank-cracks', ['crank-ground'], 'no money is put into a cracked crank'),
  first('rod-cracks', ['rods-resized'], 'no money is put into a cracked rod'),
  first('bolts-told-apart', ['fasteners-final'], 'the final fasteners are in hand'),
  first('new-piston-read', ['bore-honed'], 'a bore is honed to the piston in hand'),
  first(
    'fasteners-final',
    ['mains-honed', 'bore-honed', 'rods-resized'],
    'final fasteners pull the bores out of round, so they are in',
  ),
  first('mains-honed', ['bore-honed'], 'bores are set square to the line of the mains'),
  first('block-machined', ['bore-honed'], 'the deck is the face that the bores are set to'),
];
const SIZES: readonly Gate[] = [
  carries('mains-honed', ['main-room'], 'the clearance rests on the bore'),
  carries('crank-ground', ['main-room', 'rod-room'], 'the clearance rests on the journal'),
  carries('rods-resized', ['rod-room'], 'the clearance rests on the big end'),
  carries('main-bearing-worksheet', ['main-room'], 'the clearance rests on the readings'),
  carries('rod-bearing-worksheet', ['rod-room'], 'the clearance rests on the readings'),
  carries('main-room', ['main-shell-in'], 'the shells were chosen by this clearance'),
  carries('rod-room', ['rod-shell-in'], 'the shells were chosen by this clearance'),
  carries('bore-honed', ['rings-laid-to-bore', 'bore-white'], 'the gap rests on the bore, and honing leaves grit'),
  carries(
    'block-machined',
    ['compression-figured', 'squish-figured', 'block-washed'],
    'a cut deck moves the piston to the head, and leaves chips',
  ),
  carries(
    'head-machined',
    ['compression-figured', 'piston-room-tried', 'spring-margin-tried', 'head-washed'],
    'a cut head changes chamber and room, and leaves chips',
  ),
  carries('combination-worksheet', ['compression-figured', 'squish-figured'], 'it is worked out from these readings'),
  carries('combination-worksheet', ['gasket-grade-chosen'], 'the grade goes by the highest piston'),
  first('gasket-grade-chosen', ['gasket-held-up'], 'the grade decides which gasket it is'),
  first('trial-dead-centre', ['cam-phase-tried', 'piston-room-tried'], 'angles count from true dead centre'),
  carries('cam-phase-tried', ['piston-room-tried'], 'the room rests on where the cam stands'),
  carries('rings-kept', ['piston-set-washed'], 'a ring that was filed is washed'),
];
const CLEAN: readonly Gate[] = [
  carries(
    'block-washed',
    [
      'bore-white',
      'gallery-plugs-in',
      'hidden-plug-in',
      'galleries-rodded',
      'liner-in',
      'cam-bearings-in',
      'cam-in',
      'saddles-wiped',
    ],
    'it goes into a clean block',
  ),
  carries('bore-white', ['piston-in'], 'it goes into a clean bore'),
  carries('crank-washed', ['crank-laid-in'], 'the crank goes in clean'),
  carries('head-washed', ['seat-proved'], 'the head is assembled clean'),
  carries('piston-set-washed', ['piston-to-rod'], 'the set is assembled clean'),
  carries('small-parts-washed', ['follower-in', 'pump-packed'], 'they go in clean'),
];
const BOTTOM: readonly Gate[] = [
  first(
    'gallery-plugs-in',
    ['drive-fitted', 'cover-tightened', 'flywheel-tightened'],
    'the plugs behind it cannot be seen afterwards',
  ),
  first(
    'hidden-plug-in',
    ['crank-laid-in', 'main-cap-on', 'flywheel-tightened'],
    'the plug behind it cannot be seen afterwards',
  ),
  carries('galleries-rodded', ['cam-bearings-in', 'saddles-wiped'], 'the oil reaches it through these galleries'),
  carries('liner-height', ['piston-in', 'gasket-down'], 'it rests on the height of the liner'),
  carries('cam-turns-in-bearings', ['cam-lubed'], 'the cam runs in these bearings'),
  carries('crank-float', ['piston-in', 'drive-fitted', 'rear-seal-told'], 'it is carried by the crank'),
  carries('ring-ends-placed', ['piston-in'], 'this piston goes in'),
  carries('piston-in', ['rod-side-room'], 'the rod runs beside its mate'),
  carries('rods-tightened', ['bottom-last-seen', 'turning-drag'], 'the pan closes on these bolts'),
  carries('mains-tightened', ['bottom-last-seen', 'turning-drag'], 'the pan closes on these bolts'),
  carries('rear-corners-sealed', ['pan-sealed'], 'the pan seals on it'),
  carries('cam-float', ['drive-fitted'], 'the drive turns this cam'),
  carries('cam-caps-tightened', ['drive-fitted'], 'the drive turns this cam', 'overhead-cam'),
  first('head-tightened', ['drive-fitted'], 'the cam to be timed lies in the head', 'overhead-cam'),
  carries('dead-centre-found', ['cam-read', 'pointer-proved'], 'every angle counts from dead centre'),
  carries('drive-fitted', ['cover-clear'], 'the cover goes on over this drive'),
  first('cam-timing-accepted', ['cover-clear'], 'the cover hides the timing'),
  first('timed-two-turns', ['cover-tightened'], 'the drive was turned before it is hidden'),
];
const TOP: readonly Gate[] = [
  first('squish-figured', ['gasket-held-up'], 'the gasket was chosen by this figure'),
  first('piston-room-tried', ['gasket-held-up'], 'the room was accepted with this gasket and cam'),
  first('spring-margin-tried', ['spring-shimmed'], 'the springs were accepted at this lift'),
  carries('pushrod-length-tried', ['pushrod-in'], 'the length was accepted with these parts'),
  first(
    'combination-accepted',
    ['gasket-down', 'spring-shimmed', 'cam-lubed'],
    'all of it can still be changed before',
  ),
  carries('head-covered', ['head-down'], 'this head goes on'),
  carries('head-washed', ['head-covered'], 'it goes on clean'),
  carries('seat-proved', ['head-covered'], 'it goes on with these valves'),
  carries('locks-seated', ['valve-set'], 'the setting is on this valve'),
  carries('piston-in', ['gasket-down'], 'the gasket closes on this cylinder'),
  carries('dowels-in', ['gasket-down'], 'the dowels place the gasket'),
  carries('head-tightened', ['pushrod-in', 'valve-set', 'ports-meet', 'coolant-filled'], 'it rests on this head'),
  carries('head-tightened', ['follower-in', 'cam-laid-in'], 'it lies in this head', 'overhead-cam'),
  carries('cam-in', ['follower-in'], 'it runs on this cam'),
  carries('drive-fitted', ['valve-set'], 'the valve is set by where the cam stands'),
  first('rockers-tightened', ['valve-set'], 'the rocker carries the adjustment'),
  carries('pushrod-in', ['valve-set'], 'the setting is through this pushrod'),
  carries('follower-in', ['valve-set'], 'the setting is through this follower'),
  carries('cam-caps-tightened', ['valve-set'], 'the setting is through this cam'),
  carries('valve-set', ['set-two-turns', 'valve-read-again', 'valves-spot-checked', 'covers-counted'], 'it was set'),
  carries('valves-spot-checked', ['covers-counted'], 'the covers hide the settings'),
  first('set-two-turns', ['covers-tightened'], 'turned over two turns before it is hidden'),
  first('valve-read-again', ['covers-tightened'], 'read again before it is hidden'),
  first('pushrod-in', ['intake-tightened'], 'the intake closes on followers and pushrods'),
  first('follower-turns', ['intake-tightened'], 'followers are seen turning before they are hidden'),
];
const START: readonly Gate[] = [
  carries('pointer-proved', ['spark-set', 'injection-set'], 'it is set by this mark'),
  carries('drive-fitted', ['firing-centre'], 'firing dead centre is told by the valves'),
  carries('firing-centre', ['rotor-placed', 'spark-set', 'injection-set'], 'it counts from firing dead centre'),
  carries('rotor-placed', ['spark-set', 'leads-placed'], 'it counts from where the rotor stands'),
  first('spark-set', ['drive-home'], 'it goes back to where it was set'),
  carries('pan-tightened', ['oil-filled'], 'the oil stands in this pan'),
  carries('cover-tightened', ['oil-filled'], 'the oil runs down behind this cover'),
  carries('intake-tightened', ['coolant-filled', 'throttle-returns'], 'water and air pass through it'),
  carries('pushrod-in', ['oil-at-valve'], 'the oil comes up through it'),
  carries('oil-at-valve', ['covers-counted'], 'the covers hide it'),
  carries('primed', ['started'], 'it starts on this oil'),
  carries('covers-tightened', ['started'], 'oil would be thrown out'),
  carries('fuel-joints-closed', ['timing-nipped'], 'fuel comes on'),
  carries('spark-set', ['timing-nipped', 'spark-again'], 'the timing was set'),
  carries('injection-set', ['timing-nipped'], 'the timing was set'),
  first('pressure-seen', ['run-in-step'], 'no revolutions without oil pressure'),
  carries('piston-in', ['run-in-step'], 'these rings have to bed'),
  carries('follower-in', ['run-in-step', 'followers-turn-running'], 'this follower has to bed'),
  carries('run-in-step', ['filter-cut'], 'the filter holds what the run-in shed'),
  first('filter-cut', ['head-again', 'lash-again'], 'it is tightened and set after the run-in'),
  carries('head-tightened', ['head-again', 'compression-read', 'leakage-read'], 'it rests on this gasket'),
  carries('valve-set', ['lash-again', 'compression-read', 'leakage-read'], 'it rests on this setting'),
  carries('piston-in', ['compression-read', 'leakage-read'], 'it rests on these rings'),
  carries('first-leaks-seen', ['run-in-leaks', 'leaks-again'], 'it was opened and started again'),
  first('spark-again', ['compression-read'], 'the engine is as it will stay'),
];

export const GATES: readonly Gate[] = [...BEFORE_CUTTING, ...SIZES, ...CLEAN, ...BOTTOM, ...TOP, ...START];
