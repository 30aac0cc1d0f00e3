import type { EntryData } from '@gudgeon/core/record';
import type { ValveAsk, ValveSettingView } from '@gudgeon/core/workbench';
import type { Desk } from './desk.js';

/** What a step adds to the entry of a set valve. */
export type Setting = Pick<EntryData['valve-set'], 'adjustment'> &
  Partial<Pick<EntryData['valve-set'], 'turns' | 'plungerTravel' | 'lash' | 'shim'>>;
export interface SettingStepProps {
  readonly desk: Desk;
  readonly valve: ValveSettingView;
  readonly ask: ValveAsk;
  /** Asks the core and records; false when it was refused. */
  readonly set: (setting: Setting, words: string, raw?: string) => boolean;
}
