import type { Recorder } from './use-record.js';

/** What was recorded last, read back; a refusal is an alert. */
export function Said({ recorder }: { readonly recorder: Recorder }) {
  return (
    <p
      className={recorder.refused ? 'said said-refused' : 'said'}
      role={recorder.refused ? 'alert' : 'status'}
      data-said
    >
      {recorder.said}
    </p>
  );
}
