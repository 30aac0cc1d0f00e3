import type { Command } from '@gudgeon/core/record';
import { type Bench, type Proposal, propose, type ValveChoices } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import { say, toneAccepted, toneRefused } from '../bench/index.js';
import type { OpenJob } from './with-job.js';

export interface Recorder {
  /**
   * Asks the core, then writes; false when it was refused. `spoken` is shown and said back; `raw` is what was keyed;
   * `instrument` is what the act was done with.
   */
  readonly record: (
    command: Command,
    spoken: string,
    raw?: string,
    choices?: ValveChoices,
    instrument?: string,
  ) => boolean;
  /** Writes what the core has proposed already, or shows why it does not. */
  readonly take: (proposal: Proposal, spoken: string, raw?: string, instrument?: string) => boolean;
  readonly strikeOut: (entry: string, reason: string) => boolean;
  /** What was written last, in words, or why it was not. */
  readonly said: string;
  readonly refused: boolean;
  readonly complain: (words: string) => void;
}

/** How a screen writes to the log: on this device at once, with a tone, and the words read back. */
export function useRecord({ store }: OpenJob, bench: Bench): Recorder {
  const [{ said, refused }, setAnswer] = useState({ said: '', refused: false });
  return useMemo(() => {
    const complain = (words: string) => {
      toneRefused();
      setAnswer({ said: words, refused: true });
      say(words);
    };
    const take: Recorder['take'] = (proposal, spoken, raw, instrument) => {
      if (!proposal.ok) {
        complain(proposal.fault);
        return false;
      }
      for (const entry of proposal.value) {
        const beside = { ...(raw !== undefined && { raw }), ...(instrument !== undefined && { instrument }) };
        const written = store.write({ ...entry, ...beside });
        if (!written.ok) {
          complain(written.fault);
          return false;
        }
      }
      toneAccepted();
      setAnswer({ said: proposal.value.length === 0 ? `${spoken}: recorded before` : spoken, refused: false });
      say(spoken);
      return true;
    };
    return {
      take,
      record: (command, spoken, raw, choices, instrument) =>
        take(propose(bench, command, choices), spoken, raw, instrument),
      strikeOut: (entry, reason) =>
        take(
          propose(bench, { kind: 'struck-out', data: { entry, reason } }),
          'Struck out; the old entry stays readable',
        ),
      said,
      refused,
      complain,
    };
  }, [store, bench, said, refused]);
}
