/** The 38 operations, in the two orders in which engines are put together. */
import type { Known, Operation } from '../model.js';
import { externalStrip } from './as-found/external-strip.js';
import { identify } from './as-found/identify.js';
import { crackTest } from './inspection/crack-test.js';
import { firstClean } from './inspection/first-clean.js';
import { machining } from './inspection/machining.js';
import { measuring } from './inspection/measuring.js';
import { partsChoice } from './inspection/parts-choice.js';
import { partsReceived } from './inspection/parts-received.js';
import { camBearings } from './permanent-parts/cam-bearings.js';
import { camTiming } from './permanent-parts/cam-timing.js';
import { camshaft } from './permanent-parts/camshaft.js';
import { crankshaft } from './permanent-parts/crankshaft.js';
import { finalWash } from './permanent-parts/final-wash.js';
import { frontAndRear } from './permanent-parts/front-and-rear.js';
import { pistonsInBlock } from './permanent-parts/pistons-in-block.js';
import { pistonsOnRods } from './permanent-parts/pistons-on-rods.js';
import { plugsAndLiners } from './permanent-parts/plugs-and-liners.js';
import { pumpAndPan } from './permanent-parts/pump-and-pan.js';
import { rearSeal } from './permanent-parts/rear-seal.js';
import { breakIn } from './start-and-run-in/break-in.js';
import { firstStart } from './start-and-run-in/first-start.js';
import { leakDown } from './start-and-run-in/leak-down.js';
import { prime } from './start-and-run-in/prime.js';
import { reCheck } from './start-and-run-in/re-check.js';
import { signingOff } from './start-and-run-in/sign-off.js';
import { failureReading } from './tear-down/failure-reading.js';
import { tearDown } from './tear-down/tear-down.js';
import { followers } from './top-end/followers.js';
import { headAssembly } from './top-end/head-assembly.js';
import { headsOn } from './top-end/heads-on.js';
import { ignition } from './top-end/ignition.js';
import { intake } from './top-end/intake.js';
import { valveSetting } from './top-end/valve-setting.js';
import { balance } from './trial-assembly/balance.js';
import { bearingMockUp } from './trial-assembly/bearing-mock-up.js';
import { combinationMockUp } from './trial-assembly/combination-mock-up.js';
import { lastCuts } from './trial-assembly/last-cuts.js';
import { ringGaps } from './trial-assembly/ring-gaps.js';

/** Parts are chosen and received before the shop cuts to them; rings are filed before the last wash. */
const TO_THE_PISTONS: readonly Operation[] = [
  identify,
  externalStrip,
  tearDown,
  failureReading,
  firstClean,
  crackTest,
  measuring,
  partsChoice,
  partsReceived,
  machining,
  bearingMockUp,
  combinationMockUp,
  balance,
  lastCuts,
  ringGaps,
  finalWash,
  plugsAndLiners,
  camBearings,
  camshaft,
  crankshaft,
  rearSeal,
  pistonsOnRods,
  pistonsInBlock,
];
const FROM_THE_VALVES: readonly Operation[] = [
  valveSetting,
  intake,
  ignition,
  prime,
  firstStart,
  breakIn,
  reCheck,
  leakDown,
  signingOff,
];

/**
 * The operations in working order. A camshaft in the block is timed before the heads go on; an overhead camshaft can only be timed
 * with the heads on. Where the sheet does not say, the order is that of a camshaft in the block.
 */
export function operationsInOrder(overheadCam: Known): readonly Operation[] {
  const between =
    overheadCam === 'yes'
      ? [pumpAndPan, headAssembly, headsOn, followers, camTiming, frontAndRear]
      : [camTiming, pumpAndPan, frontAndRear, headAssembly, headsOn, followers];
  return [...TO_THE_PISTONS, ...between, ...FROM_THE_VALVES];
}
