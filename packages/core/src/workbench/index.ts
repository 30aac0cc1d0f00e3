export { assessmentOf } from './assessment.js';
export { type Bench, givenBy, openBench, shownTime } from './bench.js';
export * from './combination/index.js';
export { type CombinationReadings, combinationReadings } from './combination-readings.js';
export type * from './combination-views.js';
export { decisionsAt, decisionViewOf } from './decision-view.js';
export { fastenersView } from './fasteners-view.js';
export { findingView, worstVerdict } from './finding-view.js';
export { fitStanding, fitView } from './fit-view.js';
export { judgeGap, lengthGate, lengthReading, usualGap, usualShim } from './gap-verdict.js';
export { gasketView } from './gasket-view.js';
export { measureStanding, measureView } from './measure-view.js';
export type * from './measure-views.js';
export {
  type ChoiceWish,
  type InstrumentWish,
  type MeasuredWish,
  occasionOf,
  proposeCheck,
  proposeDecided,
  proposeInstrument,
  proposeMeasured,
  proposeReturned,
  proposeTemperature,
  typedReading,
} from './measuring-commands.js';
export { nextAction } from './next-action.js';
export { type OrderReturn, orderReturn, orderStanding } from './order-return.js';
export { orderView } from './order-view.js';
export { LUBRICANTS, NOT_AGAIN, partChoices } from './part-choices.js';
export { partsView } from './parts-view.js';
export { type PlacedPhoto, photoPlace, photosAbout } from './photo-rows.js';
export { preloadTravel, turnsForTypedTravel } from './preload-turns.js';
export { type Proposal, propose, proposeLook, proposeReturn, type ReturnAnswer } from './propose.js';
export { gateQuestion, judgeKeyed, type Keying } from './reading-gate.js';
export { readingsOf } from './readings.js';
export { recordView } from './record-view.js';
export * from './running/index.js';
export type * from './running-views.js';
export { bothLengths, preloadWorking, settingRule } from './setting-rule.js';
export { type SlotPlace, slotName, slotsOf } from './slot-names.js';
export {
  fastenersStanding,
  gasketStanding,
  partsStanding,
  type Standing,
  tighteningStanding,
  valvesStanding,
} from './standings.js';
export { tightenView } from './tighten-view.js';
export { turnCount } from './turn-words.js';
export { crankApproach } from './valve-approach.js';
export { gapConditions, gapGauge, valveAsk } from './valve-ask.js';
export { lookAnswers, valveResume } from './valve-look.js';
export { valveTask } from './valve-task.js';
export { planDegrees, timingOf, type ValveChoices } from './valve-timing.js';
export { hereView, valvesView } from './valves-view.js';
export type * from './views.js';
export {
  type AnsweredBy,
  actView,
  answeredBy,
  type BenchAsked,
  operationView,
  proposeWork,
  registersView,
  reopenedPreview,
  reopeningViews,
  type Work,
  type WorkAsked,
  workAt,
  workBenchView,
  workReturnView,
  workStandingOf,
  workView,
} from './work/index.js';
export type * from './work-views.js';
export {
  type ImportStyle,
  importWorksheet,
  type TableFault,
  type TableQuestion,
  type TableRead,
} from './worksheet-import.js';
export { type TableStyle, worksheetTable } from './worksheet-table.js';
export { type WorksheetOptions, worksheetView } from './worksheet-view.js';
