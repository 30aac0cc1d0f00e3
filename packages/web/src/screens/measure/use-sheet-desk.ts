import {
  type Bench,
  gateQuestion,
  judgeKeyed,
  type NumberGate,
  type Proposal,
  proposeMeasured,
  type WorksheetView,
  worksheetView,
} from '@gudgeon/core/workbench';
import { useCallback, useMemo, useState } from 'react';
import type { EntryMode } from '../../bench/index.js';
import { useShownWidth } from '../../figures/index.js';
import { type Recorder, today, useShownIn } from '../../shell/index.js';
import { nextEmpty } from './walk.js';

/** One worksheet with what the person is doing at it. */
export interface SheetDesk {
  readonly view: WorksheetView;
  readonly recorder: Recorder;
  /** Slot that is armed or looked at; absent when everything is read. */
  readonly slot?: string;
  /** True while a second reading is taken without seeing the first. */
  readonly repeat: boolean;
  /** Slot that was recorded last. */
  readonly last?: string;
  readonly choose: (slot: string | undefined) => void;
  readonly again: (slot: string) => void;
  readonly takeGauge: (id: string) => void;
  readonly check: (shown: string) => NumberGate;
  readonly record: (raw: string, shown: string, mode: EntryMode) => void;
  readonly strike: (slot: string, entry: string, reason: string) => void;
}

/** The drawing stands in the narrower of two columns on a laptop: its words are sized for that [CSS px]. */
const DESK_WIDTH = 440;

/** Undefined where the engine has no such feature. */
export function useSheetDesk(
  bench: Bench,
  recorder: Recorder,
  feature: string,
  first: string | undefined,
): SheetDesk | undefined {
  const shownIn = useShownIn();
  const shownWidth = Math.min(useShownWidth(), DESK_WIDTH);
  const [chosen, setChosen] = useState(first);
  const [repeat, setRepeat] = useState<string>();
  const [last, setLast] = useState<string>();
  const [gauge, setGauge] = useState<string>();
  const current = repeat ?? chosen;
  const view = useMemo(
    () =>
      worksheetView(bench, feature, {
        shownIn,
        shownWidth,
        today: today(),
        ...(current !== undefined && { current }),
        ...(last !== undefined && { about: last }),
        ...(repeat !== undefined && { hidden: repeat }),
        ...(gauge !== undefined && { instrument: gauge }),
      }),
    [bench, feature, shownIn, shownWidth, current, last, repeat, gauge],
  );
  const choose = useCallback((next: string | undefined) => {
    setRepeat(undefined);
    setChosen(next);
  }, []);
  const again = useCallback((next: string) => {
    setChosen(next);
    setRepeat(next);
  }, []);
  return useMemo(
    () =>
      view && {
        view,
        recorder,
        ...(view.current !== undefined && { slot: view.current }),
        repeat: repeat !== undefined,
        ...(last !== undefined && { last }),
        choose,
        again,
        takeGauge: setGauge,
        ...keyingAt(bench, view, recorder, repeat !== undefined, (slot) => {
          setLast(slot);
          choose(nextEmpty(view, slot));
        }),
        strike: (struck, entry, reason) => {
          if (recorder.strikeOut(entry, reason)) choose(struck);
        },
      },
    [bench, view, recorder, repeat, last, choose, again],
  );
}

/** How the current slot of a sheet judges what is keyed and writes it. */
function keyingAt(
  bench: Bench,
  view: WorksheetView,
  recorder: Recorder,
  repeat: boolean,
  taken: (slot: string) => void,
): Pick<SheetDesk, 'check' | 'record'> {
  const slot = view.current;
  const keying = view.instrument ? { instrument: view.instrument.id } : {};
  const judge = (text: string) => (slot ? judgeKeyed(bench, slot, text, keying) : ({ level: 'fine' } as const));
  const propose = (at: string, text: string, source: 'keyed' | 'gauge', gate: NumberGate) => {
    // The field has put the gate's question to the person; recording means that it was answered with yes.
    const question = gateQuestion(text, gate);
    return proposeMeasured(bench, {
      slot: at,
      text,
      source,
      repeat,
      ...keying,
      ...(question && { answered: [question] }),
    });
  };
  /** Made while the hand is still on its way to Enter. */
  let ready: { readonly text: string; readonly proposal: Proposal } | undefined;
  return {
    check: (shown) => {
      const text = `${shown} ${view.unit}`;
      const gate = judge(text);
      if (slot !== undefined && gate.level === 'fine' && ready?.text !== text)
        ready = { text, proposal: propose(slot, text, 'keyed', gate) };
      return gate;
    },
    record: (raw, shown, mode) => {
      if (slot === undefined) return;
      const text = `${shown} ${view.unit}`;
      const source = mode === 'gauge' ? 'gauge' : 'keyed';
      const made =
        source === 'keyed' && ready?.text === text ? ready.proposal : propose(slot, text, source, judge(text));
      if (recorder.take(made, text, raw)) taken(slot);
    },
  };
}
