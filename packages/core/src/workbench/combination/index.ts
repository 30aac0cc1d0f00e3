export { answerKey, answerRows, chanceWords, placeOfAnswer } from './answers.js';
export { type InputWish, inputViews, slid, spotOfPlace, titleOfFigure } from './inputs.js';
export { shownEnds, shownNumber, shownQuantity, shownWay, systemOf } from './shown.js';
export { missingOf, type SubjectParts, subjectView } from './subject.js';
export { SUBJECT_IDS, SUBJECTS, type SubjectWords } from './subjects.js';
export { type Tried, triedOf } from './tried.js';
