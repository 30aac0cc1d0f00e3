import { deviceSettings } from './device-settings.js';
import { spokenNumber } from './spoken-number.js';

export const speechPossible = (): boolean =>
  typeof speechSynthesis !== 'undefined' && typeof SpeechSynthesisUtterance !== 'undefined';

let lastSaid = '';

/** Says a line if this device can and the person wants it; what is said always stands on the screen as well. */
export function say(line: string): void {
  lastSaid = line;
  if (!deviceSettings().speech || !speechPossible()) return;
  const words = new SpeechSynthesisUtterance(spokenNumber(line));
  words.rate = 0.9;
  words.lang = 'en';
  speechSynthesis.cancel();
  speechSynthesis.speak(words);
}

export function sayAgain(): void {
  if (lastSaid) say(lastSaid);
}
