export { answerKey, answerRows, chanceWords, placeOfAnswer } from './answers.js';
export { type BalanceView, balanceView } from './balance-view.js';
export type { LiftFrom } from './cam-as-read.js';
export { combinationStanding, combinationView } from './combination-view.js';
export { type CompressionView, type CompressionWish, compressionView } from './compression-view.js';
export { combinationSeen, proposeCombination } from './decide-combination.js';
export { degreeingView } from './degreeing-view.js';
export type * from './degreeing-views.js';
export {
  type CutForm,
  type FindForm,
  firstForm,
  formUnit,
  gasketWords,
  NO_PISTON,
  type PistonForm,
  type RangeForm,
  stockGaskets,
} from './find-form.js';
export { findInput } from './find-input.js';
export { LIMIT_KEYS, type WantedRow, wantedRows } from './find-wanted.js';
export { foundAsScratch } from './found-scratch.js';
export { chancesView, type FoundCombinationView, type FoundView, foundId, foundView } from './found-view.js';
export { type InputWish, inputViews, slid, spotOfPlace, titleOfFigure } from './inputs.js';
export { judgeLift, type LiftKeyed } from './lift-gate.js';
export { highestSpeed, type MotionView, type MotionWish, motionMoving, motionView } from './motion-view.js';
export { type RockersView, type RockersWish, rockersView } from './rockers-view.js';
export { scratchRows } from './scratch-rows.js';
export { shownEnds, shownNumber, shownQuantity, shownWay, systemOf } from './shown.js';
export { type SpringsView, springsView } from './springs-view.js';
export { type PistonChoice, type PistonsOfStock, pistonsOfStock, pistonWords } from './stock-pistons.js';
export { missingOf, type SubjectParts, subjectView } from './subject.js';
export { SUBJECT_IDS, SUBJECTS, type SubjectWords } from './subjects.js';
export { PART_MARKINGS, type PartMarking, type PartTyped, timingPart, USUAL_PARTS } from './timing-part.js';
export { type TimingView, timingView } from './timing-view.js';
export { asIfSure, type Tried, triedOf } from './tried.js';
export {
  angleKeyed,
  type CamWish,
  camSaid,
  proposeCamRead,
  proposeRoom,
  proposeStop,
  proposeTrial,
  type RoomWish,
  type TrialWish,
} from './turning-commands.js';
export { type FigureWish, proposeFigure, typedFigure } from './typed-figure.js';
export type { CamCarries, ValveRoomWish } from './valve-room-asked.js';
export { type ValveRoomMoving, valveRoomMoving } from './valve-room-moving.js';
export { type SensitivityRow, type ValveRoomView, valveRoomView } from './valve-room-view.js';
