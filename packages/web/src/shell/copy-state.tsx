import { memo, useEffect, useState } from 'react';
import { useBehind } from '../keys/index.js';
import { copyWords, type JobState } from '../log/index.js';
import { useWaitingPhotos, type WaitingPhotos } from '../photos/keeping/index.js';

interface CopyStateProps {
  readonly job: string;
  readonly state: JobState;
}

/** Whether every entry and photo has its second copy. Stands on each screen of a job, in words; it follows a frame behind what is recorded. */
export function CopyState({ job, state }: CopyStateProps) {
  return <Words state={useBehind(state)} photos={useWaitingPhotos(job)} />;
}

const Words = memo(function Words({ state, photos }: { readonly state: JobState; readonly photos: WaitingPhotos }) {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = window.setInterval(() => setNow(Date.now()), 20_000);
    return () => window.clearInterval(timer);
  }, []);
  const entriesWait = state.waiting.length > 0;
  const trouble = (entriesWait && state.trouble) || photos.trouble;
  const waits = entriesWait || photos.waiting.length > 0;
  return (
    <div className="copy-state" role="status" data-copies={waits || state.trouble ? 'waiting' : 'saved'}>
      <strong>{copyWords(state, now, photos.waiting.length)}</strong>
      {trouble && <span> · {trouble}</span>}
    </div>
  );
});
