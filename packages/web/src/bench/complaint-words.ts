import type { Complaint } from './key-buffer.js';

const words: Record<Complaint, string> = {
  'second-mark': 'There is a decimal point already. The second one was not taken.',
  'sign-not-first': 'A minus can only stand first. It was not taken.',
  'no-sign-here': 'This reading cannot be less than nothing. The minus was not taken.',
  'too-long': 'That is more digits than any gauge shows. The last one was not taken.',
  'not-a-digit': 'Only digits and one decimal point. The other key was not taken.',
  'digit-after-unit': 'A digit came after the unit. It was not taken.',
};
export const complaintWords = (complaint: Complaint): string => words[complaint];
