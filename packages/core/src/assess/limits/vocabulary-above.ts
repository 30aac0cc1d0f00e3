/** Words for camshaft, followers, heads, valves and springs. */
import type { InspectionLimit } from '../../engine/index.js';
import { type Phrase, phrase } from './phrase.js';

const isAngle = (limit: InspectionLimit) => limit.quantity === 'angle';

/** A lift of more than 20 mm at the lobe is the height of the whole cam: no lobe of an engine of this kind lifts so far. */
const LARGEST_LOBE_LIFT = 0.02;
const tooHigh = ({ whenNew }: InspectionLimit) =>
  (whenNew?.window.low ?? whenNew?.window.high ?? 0) > LARGEST_LOBE_LIFT;

export const SPRINGS: readonly Phrase[] = [
  phrase('retainer-to-guide.room', ['retainer', 'guide']),
  phrase('retainer-to-rocker.room', ['retainer', 'rocker']),
  phrase('spring-pocket.room', ['spring', 'pocket']),
  phrase('spring-bind-height.height', ['spring', 'bind']),
  phrase('spring-free-length.length', ['spring', 'free']),
  { gives: ['spring-lean.angle'], words: ['spring', 'square'], only: isAngle },
  phrase('spring-lean.angle', ['spring', 'lean']),
  phrase('spring-squareness.gap', ['spring', 'square']),
  phrase('spring-load-open.load', ['spring', 'load', 'open']),
  phrase('spring-load-closed.load', ['spring', 'load']),
  phrase('installed-height.height', ['spring', 'height'], ['stem']),
];

export const FOLLOWERS: readonly Phrase[] = [
  phrase('injector-lifter-bore.*', ['lifter', 'injector', 'bore']),
  phrase('lifter.clearance', ['lifter', 'clearance']),
  phrase('lifter-bore.*', ['lifter', 'bore']),
  phrase('lifter-crown.height', ['lifter', 'crown']),
  phrase('lifter.diameter', ['lifter', 'diameter']),
  phrase('lifter.taper', ['lifter', 'taper']),
  phrase('bucket.clearance', ['bucket', 'clearance']),
  phrase('bucket-bore.*', ['bucket', 'bore']),
  phrase('bucket.diameter', ['bucket', 'diameter']),
  phrase('bucket.taper', ['bucket', 'taper']),
  phrase('shim-thickness.thickness', ['shim', 'thickness'], ['spring', 'liner']),
  phrase('pushrod-length.length', ['pushrod', 'length']),
  phrase('pushrod-runout.total', ['pushrod', 'run-out']),
  phrase('rocker.clearance', ['rocker', 'clearance']),
  phrase('rocker-bore.*', ['rocker', 'bore']),
  phrase('rocker-shaft.*', ['rocker', 'shaft', 'diameter']),
];

export const CAMSHAFT: readonly Phrase[] = [
  phrase('injector-lobe-lift.lift', ['lobe', 'injector', 'lift']),
  phrase('lobe-base-runout.total', ['cam', 'base', 'run-out']),
  phrase('lobe-height.height', ['lobe', 'over the lobe']),
  { gives: ['lobe-height.height'], words: ['lobe', 'lift'], only: tooHigh },
  phrase('lobe-lift.lift', ['lobe', 'lift']),
  phrase('cam-end-float.float', ['cam', 'end float']),
  phrase('timing-backlash.backlash', ['cam', 'backlash'], ['valve']),
  phrase('cam-runout.total', ['cam', 'run-out']),
  phrase('cam-bearing.clearance', ['cam', 'clearance']),
  phrase('cam-housing.*', ['cam', 'bore', 'block']),
  phrase('cam-bearing.*', ['cam', 'bore'], ['block']),
  phrase('cam-bearing.*', ['cam', 'bearing'], ['block', 'journal']),
  phrase('cam-journal.*', ['cam', 'journal']),
];

export const VALVES: readonly Phrase[] = [
  phrase('stem.clearance', ['stem', 'clearance']),
  phrase('stem.clearance', ['valve', 'guide', 'clearance']),
  phrase('valve-stem.taper', ['stem', 'taper']),
  phrase('valve-stem.diameter', ['stem', 'diameter']),
  phrase('stem-height.height', ['stem', 'height']),
  phrase('valve-guide.*', ['guide', 'bore'], ['outside']),
  phrase('valve-guide.*', ['guide', 'out of round'], ['outside']),
  phrase('valve-guide.*', ['guide', 'taper'], ['outside']),
  phrase('seat-width.width', ['seat', 'width']),
  phrase('seat-runout.total', ['seat', 'run-out']),
  phrase('seat-angle.angle', ['seat', 'angle']),
  phrase('face-angle.angle', ['valve', 'face', 'angle']),
  phrase('face-runout.total', ['valve', 'face', 'run-out']),
  phrase('valve-margin.thickness', ['valve', 'margin']),
  phrase('valve-recess.depth', ['valve', 'recess']),
  phrase('valve-head-diameter.diameter', ['valve', 'head', 'diameter']),
  phrase('valve-length.length', ['valve', 'length']),
  phrase('valve-lash.lash', ['valve', 'lash']),
];

export const HEADS: readonly Phrase[] = [
  phrase('manifold-flatness.gap', ['manifold', 'flat']),
  phrase('head-flatness.gap', ['head', 'flat']),
  phrase('head-thickness.thickness', ['head', 'thickness'], ['gasket']),
  phrase('chamber-volume.between', ['chamber', 'volume', 'spread']),
  phrase('chamber-volume.volume', ['chamber', 'volume']),
  phrase('gasket-thickness.thickness', ['gasket', 'thickness']),
];
