/** The subjects of the combination with the question that each answers. */
import type { SubjectId } from '../combination-views.js';

export interface SubjectWords {
  readonly title: string;
  readonly question: string;
}
export const SUBJECTS: Readonly<Record<SubjectId, SubjectWords>> = {
  compression: { title: 'Compression', question: 'What makes the ratio of each cylinder, and is it the one wanted?' },
  degreeing: { title: 'Degreeing the cam', question: 'Does the cam stand where its card puts it?' },
  'valve-room': { title: 'Valve room', question: 'Do the valves keep clear of the pistons?' },
  motion: { title: 'Valve motion', question: 'How fast and how sharply does the valve move?' },
  springs: { title: 'Valve springs', question: 'Do the springs hold the gear on its lobes, with room to spare?' },
  rockers: {
    title: 'Rockers and pushrods',
    question: 'Where does the rocker bear on the stem, and which pushrod fits?',
  },
  timing: { title: 'Timing', question: 'When is each valve open, and for how long are both?' },
  balance: { title: 'Balance', question: 'What do the bobweights weigh, and what still shakes?' },
  find: { title: 'Find a combination', question: 'Which parts and cuts keep everything that must hold?' },
};
export const SUBJECT_IDS = Object.keys(SUBJECTS) as readonly SubjectId[];
