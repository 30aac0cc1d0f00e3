import { afterFrame } from '../keys/index.js';
import { deviceSettings } from './device-settings.js';

let audio: AudioContext | undefined;

function beep(frequency: number, start: number, length: number): void {
  if (!audio) return;
  const tone = audio.createOscillator();
  const loudness = audio.createGain();
  tone.frequency.value = frequency;
  loudness.gain.setValueAtTime(0.0001, audio.currentTime + start);
  loudness.gain.exponentialRampToValueAtTime(0.5, audio.currentTime + start + 0.02);
  loudness.gain.exponentialRampToValueAtTime(0.0001, audio.currentTime + start + length);
  tone.connect(loudness).connect(audio.destination);
  tone.start(audio.currentTime + start);
  tone.stop(audio.currentTime + start + length);
}

function ready(): boolean {
  if (!deviceSettings().tones || typeof AudioContext === 'undefined') return false;
  audio ??= new AudioContext();
  void audio.resume();
  return true;
}

/** Short and high: taken. What is seen comes first; ears do not notice a frame. */
export function toneAccepted(): void {
  afterFrame(() => {
    if (ready()) beep(1800, 0, 0.3);
  });
}

/** Two, low and longer: refused. */
export function toneRefused(): void {
  afterFrame(() => {
    if (!ready()) return;
    beep(620, 0, 0.35);
    beep(520, 0.42, 0.4);
  });
}

/** Three long ones, not too high for ears that are covered: stop it at once. */
export function toneStop(): void {
  if (!ready()) return;
  for (const start of [0, 0.6, 1.2]) beep(1000, start, 0.5);
}
