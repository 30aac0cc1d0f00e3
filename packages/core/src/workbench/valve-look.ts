/** Looking again: the answers after two turns of the crank, and the last valves to touch after an interruption. */
import { type Engine, valveKey } from '../engine/index.js';
import { valveRecord } from '../plan/index.js';
import type { Bench } from './bench.js';
import { settingRule } from './setting-rule.js';
import type { Answer, ResumeView, SettingRule, ValveSettingView, ValvesView } from './views.js';

const seenWords: Readonly<Record<SettingRule['adjustment'], { readonly good: string; readonly bad: string }>> = {
  preload: { good: 'No play, pushrod turns by hand', bad: 'Play, or it is held tight' },
  lash: { good: 'Same feeler, light drag', bad: 'The gap has changed' },
  shim: { good: 'Gap as it was set', bad: 'The gap has changed' },
  fixed: { good: 'Tight, rocker free at rest', bad: 'Loose, or it binds' },
};

/** What was seen at a valve after two turns: the state itself, not "checked". Common practice, no source. */
export function lookAnswers(engine: Engine): readonly Answer[] {
  const { good, bad } = seenWords[settingRule(engine).adjustment];
  return [
    { id: 'good', label: good, key: 'Enter', unlike: false },
    { id: 'bad', label: bad, key: 'b', unlike: true },
  ];
}

const STEPS_BACK = 3;

/**
 * The last valves that were set or looked at, most recent last, to be touched again by a person who comes back; undefined
 * where nothing is under way. Three steps back: reference bench-ergonomics, section 7.
 */
export function valveResume(bench: Bench, view: ValvesView): ResumeView | undefined {
  if (view.finished) return undefined;
  const entryOf = new Map<string, string>(
    valveRecord(bench.engine, bench.facts).valves.flatMap(({ valve, set, recheck }) => {
      const latest = recheck?.entry ?? set?.entry;
      return latest === undefined ? [] : [[valveKey(valve), latest] as const];
    }),
  );
  const place = new Map([...bench.entries.keys()].map((id, at) => [id, at]));
  const when = (one: ValveSettingView) => place.get(entryOf.get(one.key) ?? '') ?? -1;
  const done = view.valves.filter((one) => when(one) >= 0).sort((a, b) => when(a) - when(b));
  if (done.length === 0) return undefined;
  return {
    words: `${view.progress.words}. Touch each rocker or bucket named here and see that it is as recorded; nothing is set anew.`,
    verify: done
      .slice(-STEPS_BACK)
      .map((one) => ({ key: one.key, hole: one.key, words: `${one.place}: ${one.given?.words ?? one.state}` })),
    roundAgain: false,
  };
}
