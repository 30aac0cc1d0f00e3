import type { WorkActView } from '@gudgeon/core/workbench';
import { offeredWords } from '../work/kept.js';

/** How a thing is usually found. Common practice, no source; the last one used on this device stands first. */
const METHODS: Readonly<Record<string, readonly string[]>> = {
  'felt-or-seen': ['by feel', 'by eye', 'with lamp and mirror', 'by feeler gauge', 'by ear'],
  photo: ['by camera', 'by eye'],
  list: ['by eye', 'by count', 'as told'],
  register: ['by eye', 'by rule'],
  length: ['by micrometer', 'by feeler gauge', 'by dial indicator', 'by bore gauge', 'by gauging strip'],
  angle: ['by degree wheel', 'by mark and pointer'],
  torque: ['by torque wrench', 'by spring scale'],
  pressure: ['by gauge'],
  mass: ['by scale'],
  force: ['by spring tester', 'by spring scale'],
  volume: ['by burette', 'by measuring jug'],
  ratio: ['worked out'],
  time: ['by clock'],
  speed: ['by tachometer'],
  temperature: ['by thermometer'],
  count: ['by count'],
};
const LOOKS = ['by eye', 'by feel', 'with lamp and mirror', 'mark seen', 'second gauge'] as const;

export const methodName = ({ asked, answer }: Pick<WorkActView, 'asked' | 'answer'>): string =>
  `method.${asked ?? answer}`;

export const methodsFor = (act: Pick<WorkActView, 'asked' | 'answer'>): readonly string[] =>
  offeredWords(methodName(act), METHODS[act.asked ?? act.answer] ?? ['by eye']);

/** For a second look: what was not used by who did it stands first. */
export const lookMethods = (used: string): readonly string[] => {
  const plain = used.trim().toLowerCase();
  return LOOKS.filter((method) => method !== plain);
};
