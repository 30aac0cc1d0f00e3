import type { PhotoTaken } from '@gudgeon/core/record';
import { photosAbout } from '@gudgeon/core/workbench';
import { useEffect, useRef } from 'react';
import { ActButton } from '../../bench/index.js';
import { type Action, afterFrame, useActions } from '../../keys/index.js';
import { PhotoField, PhotoStrip } from '../../photos/index.js';
import { methodsFor } from './methods.js';
import { type StepProps, usual } from './step.js';

/** A photo, kept with its place; the newest one of this act answers it. */
export function PhotoStep({ act, desk, give }: StepProps) {
  const { job, bench, recorder } = desk;
  const box = useRef<HTMLDivElement>(null);
  const newest = photosAbout(bench, act.photos).at(-1);
  const method = methodsFor(act)[0] ?? 'by camera';
  const answer = (result: 'good' | 'bad') => {
    if (newest === undefined) return;
    const { photo, words } = newest;
    const told = words.trim() === '' ? 'photo taken' : words.trim();
    give(
      { kind: 'photo', photo, ...(words.trim() !== '' && { words: words.trim() }), result },
      method,
      result === 'good' ? told : `not good, ${told}`,
    );
  };
  const kept = (photo: PhotoTaken) => {
    if (!recorder.record({ kind: 'photo-taken', data: photo }, 'Photo kept')) return false;
    // The field is ready for another one; the pedal's next press says that this one is good.
    afterFrame(() => {
      if (document.activeElement instanceof HTMLElement) document.activeElement.blur();
    });
    return true;
  };
  const good = usual('Good: it shows what is asked', () => answer('good'));
  const bad: Action = { name: 'bad', label: 'Not good', keys: ['n'], available: true, run: () => answer('bad') };
  const run = useActions(newest === undefined ? [] : [good, bad]);
  // A pedal then opens the camera at once.
  useEffect(() => {
    if (newest === undefined) box.current?.querySelector<HTMLElement>('input[type="file"]')?.focus();
  }, [newest]);
  return (
    <div className="bench" ref={box}>
      {newest && <ActButton action={good} run={run} />}
      <PhotoStrip job={job} bench={bench} about={act.photos} />
      <PhotoField job={job} about={act.photos} ask={newest === undefined ? act.ask : 'Another photo'} onKept={kept} />
      {newest && (
        <div className="apart">
          <ActButton action={bad} run={run} second />
        </div>
      )}
    </div>
  );
}
