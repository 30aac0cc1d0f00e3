import { memo, useEffect, useState } from 'react';
import { useBehind } from '../keys/index.js';
import { copyWords, type JobState } from '../log/index.js';

/** Whether every entry has its second copy. Stands on each screen of a job, in words; it follows a frame behind what is recorded. */
export function CopyState({ state }: { readonly state: JobState }) {
  return <Words state={useBehind(state)} />;
}

const Words = memo(function Words({ state }: { readonly state: JobState }) {
  const [now, setNow] = useState(() => Date.now());
  useEffect(() => {
    const timer = window.setInterval(() => setNow(Date.now()), 20_000);
    return () => window.clearInterval(timer);
  }, []);
  const waits = state.waiting.length > 0;
  return (
    <div className="copy-state" role="status" data-copies={waits || state.trouble ? 'waiting' : 'saved'}>
      <strong>{copyWords(state, now)}</strong>
      {waits && state.trouble && <span> · {state.trouble}</span>}
    </div>
  );
});
