import type { InspectionLimit } from '../../engine/index.js';
import type { Word } from './words.js';

/**
 * One line of the vocabulary. `gives` are properties; in them `*` stands for the form that the row names (diameter, out-of-round,
 * taper) and `?` for the ring. The first line whose words are all there, and none of the others, is taken.
 */
export interface Phrase {
  readonly gives: readonly string[];
  readonly words: readonly Word[];
  readonly without?: readonly Word[];
  readonly only?: (limit: InspectionLimit) => boolean;
}

const says = (gives: string | readonly string[], words: readonly Word[], without: readonly Word[] = []): Phrase => ({
  gives: typeof gives === 'string' ? [gives] : gives,
  words,
  without,
});
const isAngle = (limit: InspectionLimit) => limit.quantity === 'angle';

/** A lift of more than 20 mm at the lobe is the height of the whole cam: no lobe of an engine of this kind lifts so far. */
const LARGEST_LOBE_LIFT = 0.02;
const tooHigh = ({ whenNew }: InspectionLimit) =>
  (whenNew?.window.low ?? whenNew?.window.high ?? 0) > LARGEST_LOBE_LIFT;

const SPRINGS: readonly Phrase[] = [
  says('spring-bind-height.height', ['spring', 'bind']),
  says('spring-free-length.length', ['spring', 'free']),
  { gives: ['spring-lean.angle'], words: ['spring', 'square'], only: isAngle },
  says('spring-lean.angle', ['spring', 'lean']),
  says('spring-squareness.gap', ['spring', 'square']),
  says('spring-load-open.load', ['spring', 'load', 'open']),
  says('spring-load-closed.load', ['spring', 'load']),
  says('installed-height.height', ['spring', 'height']),
];

const DRIVE: readonly Phrase[] = [
  says('chain-slack.movement', ['chain', 'slack']),
  says('timing-backlash.backlash', ['gear', 'backlash']),
  says('flywheel-runout.total', ['flywheel', 'run-out']),
];

const HEIGHTS: readonly Phrase[] = [
  says('liner-protrusion.between', ['liner', 'protrusion', 'spread']),
  says('liner-protrusion.height', ['liner', 'protrusion'], ['fire']),
  says('piston-protrusion.between', ['piston', 'protrusion', 'spread']),
  says('piston-protrusion.height', ['piston', 'protrusion'], ['gasket']),
  says('injector-protrusion.height', ['injector', 'protrusion']),
  says('deck-clearance.between', ['deck', 'clearance', 'spread']),
  says('deck-clearance.depth', ['deck', 'clearance']),
  says('deck-clearance.depth', ['piston', 'below the deck']),
];

const LINERS: readonly Phrase[] = [
  says('dry-liner.*', ['liner', 'repair', 'outside']),
  says('liner-fire-rim.height', ['liner', 'fire']),
  says('liner-flange.thickness', ['liner', 'flange', 'thickness']),
  says('liner.clearance-upper', ['liner', 'clearance', 'below the flange']),
  says('liner.clearance-upper', ['liner', 'clearance', 'upper']),
  says('liner.clearance-lower', ['liner', 'clearance', 'lower']),
  says('liner.clearance-flange', ['liner', 'clearance', 'flange']),
  says('liner-upper-outside.*', ['liner', 'outside', 'below the flange']),
  says('liner-upper-outside.*', ['liner', 'outside', 'upper'], ['flange']),
  says('liner-lower-outside.*', ['liner', 'outside', 'lower']),
  says('liner-flange-outside.*', ['liner', 'outside', 'flange']),
  says('counterbore-depth.depth', ['counterbore', 'depth']),
  says('counterbore.*', ['counterbore']),
  says('liner-upper-seat.*', ['block', 'liner', 'bore', 'upper']),
  says('liner-lower-seat.*', ['block', 'liner', 'bore', 'lower']),
];

const FOLLOWERS: readonly Phrase[] = [
  says('injector-lifter-bore.*', ['lifter', 'injector', 'bore']),
  says('lifter.clearance', ['lifter', 'clearance']),
  says('lifter-bore.*', ['lifter', 'bore']),
  says('lifter-crown.height', ['lifter', 'crown']),
  says('lifter.diameter', ['lifter', 'diameter']),
  says('bucket.clearance', ['bucket', 'clearance']),
  says('bucket-bore.*', ['bucket', 'bore']),
  says('bucket.diameter', ['bucket', 'diameter']),
  says('shim-thickness.thickness', ['shim', 'thickness'], ['spring', 'liner']),
  says('pushrod-length.length', ['pushrod', 'length']),
  says('pushrod-runout.total', ['pushrod', 'run-out']),
  says('rocker.clearance', ['rocker', 'clearance']),
  says('rocker-bore.*', ['rocker', 'bore']),
  says('rocker-shaft.*', ['rocker', 'shaft', 'diameter']),
];

const CAMSHAFT: readonly Phrase[] = [
  says('injector-lobe-lift.lift', ['lobe', 'injector', 'lift']),
  says('lobe-base-runout.total', ['cam', 'base', 'run-out']),
  says('lobe-height.height', ['lobe', 'over the lobe']),
  { gives: ['lobe-height.height'], words: ['lobe', 'lift'], only: tooHigh },
  says('lobe-lift.lift', ['lobe', 'lift']),
  says('cam-end-float.float', ['cam', 'end float']),
  says('timing-backlash.backlash', ['cam', 'backlash'], ['valve']),
  says('cam-runout.total', ['cam', 'run-out']),
  says('cam-bearing.clearance', ['cam', 'clearance']),
  says('cam-housing.*', ['cam', 'bore', 'block']),
  says('cam-bearing.*', ['cam', 'bore'], ['block']),
  says('cam-bearing.*', ['cam', 'bearing'], ['block', 'journal']),
  says('cam-journal.*', ['cam', 'journal']),
];

const VALVES: readonly Phrase[] = [
  says('stem.clearance', ['stem', 'clearance']),
  says('stem.clearance', ['valve', 'guide', 'clearance']),
  says('valve-stem.diameter', ['stem', 'diameter']),
  says('stem-height.height', ['stem', 'height']),
  says('valve-guide.*', ['guide', 'bore'], ['outside']),
  says('seat-width.width', ['seat', 'width']),
  says('seat-runout.total', ['seat', 'run-out']),
  says('seat-angle.angle', ['seat', 'angle']),
  says('face-angle.angle', ['valve', 'face', 'angle']),
  says('face-runout.total', ['valve', 'face', 'run-out']),
  says('valve-margin.thickness', ['valve', 'margin']),
  says('valve-recess.depth', ['valve', 'recess']),
  says('valve-head-diameter.diameter', ['valve', 'head', 'diameter']),
  says('valve-length.length', ['valve', 'length']),
  says('valve-lash.lash', ['valve', 'lash']),
];

const PINS: readonly Phrase[] = [
  says('pin.clearance-in-rod', ['piston pin', 'clearance', 'rod'], ['ring']),
  says('pin.clearance-in-piston', ['piston pin', 'clearance', 'piston'], ['ring', 'deck']),
  says('small-end-bush.*', ['rod', 'bush', 'outside']),
  says('pin-bore.*', ['piston', 'piston pin', 'bore'], ['rod']),
  says('pin-length.length', ['piston pin', 'length'], ['rod']),
  says('piston-pin.*', ['piston pin', 'diameter'], ['rod', 'crank']),
];

const RINGS: readonly Phrase[] = [
  says('ring-tension-?.pull', ['ring', 'tension']),
  says('ring-gap-?.gap', ['ring', 'gap']),
  says('ring-groove-?.clearance', ['ring', 'clearance']),
  says('ring-groove-?.clearance', ['groove', 'clearance']),
  says('groove-width-?.width', ['groove', 'width']),
  says('ring-width-?.width', ['ring', 'width']),
  says('ring-width-?.width', ['ring', 'thickness']),
];

const PISTONS: readonly Phrase[] = [
  says('piston-mass.between', ['piston', 'mass', 'spread']),
  says('piston-mass.mass', ['piston', 'mass']),
  says('compression-height.height', ['piston', 'compression']),
  says('crown-volume.volume', ['piston', 'dish', 'volume']),
  says('piston.clearance', ['piston', 'clearance']),
  says('piston-skirt.diameter', ['piston', 'diameter']),
];

const CRANKSHAFT: readonly Phrase[] = [
  says('crank-end-float.float', ['crank', 'end float']),
  says('crank-runout.total', ['crank', 'run-out']),
  says('thrust-washer.thickness', ['thrust', 'thickness']),
  says('thrust-width.width', ['crank', 'thrust', 'width']),
  says('thrust-bearing-width.width', ['thrust', 'width']),
  says('crankpin-width.width', ['crank', 'crankpin', 'width']),
  says('main-shell.wall', ['main', 'wall']),
  says('main-bearing.clearance', ['main', 'clearance'], ['cam', 'rod']),
  says(['main-journal.*', 'crankpin.*'], ['crank', 'main', 'crankpin']),
  says('main-journal.*', ['main', 'journal']),
  says('main-journal.*', ['crank', 'main', 'diameter'], ['bore']),
  says('main-bearing-bore.diameter', ['main', 'bore', 'installed']),
  says('main-housing.*', ['main', 'bore']),
  says('crankpin.*', ['crank', 'crankpin'], ['rod']),
  says('crankpin.*', ['crank', 'rod', 'journal']),
  says(['main-journal.*', 'crankpin.*'], ['crank', 'journal']),
  says('fillet-radius.largest', ['fillet']),
  says('stroke.length', ['stroke']),
];

const RODS: readonly Phrase[] = [
  says('rod-shell.wall', ['rod', 'bearing', 'wall']),
  says('rod-side-clearance.clearance', ['rod', 'side']),
  says('rod-bearing.clearance', ['rod', 'clearance']),
  says('rod-mass.between', ['rod', 'mass', 'spread']),
  says('rod-bend.offset', ['rod', 'bend']),
  says('rod-twist.offset', ['rod', 'twist']),
  says('rod-length.length', ['rod', 'length'], ['bearing', 'bush']),
  says('big-end-width.width', ['rod', 'big end', 'width']),
  says('small-end-housing.*', ['rod', 'no bush']),
  says('small-end-bore.*', ['rod', 'small end', 'bore'], ['big end']),
  says('rod-bearing-bore.diameter', ['rod', 'big end', 'bore', 'installed']),
  says('big-end-bore.*', ['rod', 'big end', 'bore']),
  says('big-end-bore.*', ['rod', 'big end', 'out of round']),
];

const HEADS: readonly Phrase[] = [
  says('manifold-flatness.gap', ['manifold', 'flat']),
  says('head-flatness.gap', ['head', 'flat']),
  says('head-thickness.thickness', ['head', 'thickness'], ['gasket']),
  says('chamber-volume.between', ['chamber', 'volume', 'spread']),
  says('chamber-volume.volume', ['chamber', 'volume']),
  says('gasket-thickness.thickness', ['gasket', 'thickness']),
];

const BLOCK: readonly Phrase[] = [
  says('deck-flatness.gap', ['deck', 'flat']),
  says('deck-flatness.gap', ['block', 'flat']),
  says('deck-height.spread', ['deck', 'height', 'spread']),
  says('deck-height.height', ['deck', 'height']),
  says('cylinder-bore.*', ['cylinder', 'bore']),
  says('cylinder-bore.*', ['block', 'bore']),
  says('cylinder-bore.*', ['liner', 'bore']),
  says('cylinder-bore.*', ['cylinder', 'out of round']),
  says('cylinder-bore.*', ['cylinder', 'taper']),
  says('cylinder-bore.*', ['liner', 'out of round']),
];

/** The whole vocabulary; what is more special stands before what is more general. */
export const PHRASES: readonly Phrase[] = [
  ...SPRINGS,
  ...DRIVE,
  ...HEIGHTS,
  ...LINERS,
  ...FOLLOWERS,
  ...CAMSHAFT,
  ...VALVES,
  ...RINGS,
  ...PINS,
  ...CRANKSHAFT,
  ...RODS,
  ...PISTONS,
  ...HEADS,
  ...BLOCK,
];
