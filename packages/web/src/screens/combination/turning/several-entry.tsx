import { type ReactNode, useState } from 'react';
import type { Gate } from '../../../bench/index.js';
import { Armed, type EntryMode, EntryModes, NumberEntry, SILENCE, useEntryMode } from '../../../bench/index.js';

/** One of the numbers that are keyed one after the other for a reading. */
export interface AskedNumber {
  /** "wheel", "lift": how it is called once it is keyed. */
  readonly name: string;
  readonly slot: string;
  readonly unit: string;
  readonly ghost: string;
  /** A gauge may type it and send no Enter; a wheel is read by eye and always ends with Enter. */
  readonly gauge?: boolean;
  readonly sign?: boolean;
  readonly places?: number;
  readonly check?: (shown: string) => Gate;
}
export interface KeyedNumber {
  readonly raw: string;
  /** As shown, without its unit. */
  readonly shown: string;
}

interface SeveralEntryProps {
  readonly asked: readonly AskedNumber[];
  /** Called with all numbers once the last is recorded; false keeps them, so that the last can be keyed again. */
  readonly record: (keyed: readonly KeyedNumber[], mode: EntryMode) => boolean;
  /** Changes when another thing is to be read: what was keyed for the one before is let go. */
  readonly about: string;
  readonly onKeyed?: (keyed: readonly KeyedNumber[]) => void;
  readonly children?: ReactNode;
}

/** A wheel that was keyed is still there when the page is loaded anew before its lift. */
const place = (about: string) => `gudgeon.keyed.${window.location.pathname}.${about}`;
function keptOf(about: string): readonly KeyedNumber[] {
  try {
    const kept: unknown = JSON.parse(sessionStorage.getItem(place(about)) ?? '[]');
    return Array.isArray(kept) ? kept.filter(isKeyed) : [];
  } catch {
    return [];
  }
}
const isKeyed = (one: unknown): one is KeyedNumber =>
  typeof one === 'object' && one !== null && 'raw' in one && 'shown' in one && typeof one.shown === 'string';
function write(about: string, keyed: readonly KeyedNumber[]): void {
  try {
    if (keyed.length === 0) sessionStorage.removeItem(place(about));
    else sessionStorage.setItem(place(about), JSON.stringify(keyed));
  } catch {
    // A window that keeps nothing still takes the reading.
  }
}

/** Numbers that belong together, one Enter each; what was keyed already stands above the field and can be keyed anew. */
export function SeveralEntry(props: SeveralEntryProps) {
  return <Several key={props.about} {...props} />;
}

function Several({ asked, record, onKeyed, children, about }: SeveralEntryProps) {
  const [mode, setMode] = useEntryMode();
  const [keyed, setKeyed] = useState(() => keptOf(about));
  const [round, setRound] = useState(0);
  const now = asked[keyed.length] ?? asked[0];
  const keep = (all: readonly KeyedNumber[]) => {
    setKeyed(all);
    write(about, all);
    onKeyed?.(all);
  };
  const take = (raw: string, shown: string) => {
    const all = [...keyed, { raw, shown }];
    if (all.length < asked.length) return keep(all);
    if (!record(all, mode)) return;
    keep([]);
    setRound(round + 1);
  };
  if (!now) return null;
  const last = keyed.length === asked.length - 1;
  return (
    <div className="bench several" data-asked={now.name}>
      {keyed.length > 0 && (
        <div className="several-keyed">
          {keyed.map(({ shown }, at) => (
            <span key={asked[at]?.name}>
              {asked[at]?.name} <strong>{shown}</strong> {asked[at]?.unit}
            </span>
          ))}
          <button type="button" className="button" onClick={() => keep(keyed.slice(0, -1))}>
            Key the {asked[keyed.length - 1]?.name} again
          </button>
        </div>
      )}
      <Armed again={`${about} ${keyed.length} ${round} ${mode}`} scroll={mode === 'pad'}>
        <NumberEntry
          key={`${keyed.length} ${round}`}
          slot={now.slot}
          unit={now.unit}
          ghost={[...keyed.map(({ shown }, at) => `${asked[at]?.name} ${shown} ${asked[at]?.unit}`), now.ghost].join(
            '; ',
          )}
          sign={now.sign ?? false}
          pad={mode === 'pad'}
          recordLabel={last ? 'Record' : `Next: ${asked[keyed.length + 1]?.name}`}
          {...(now.places === undefined ? {} : { places: now.places })}
          {...(now.check === undefined ? {} : { check: now.check })}
          {...(mode === 'gauge' && now.gauge ? { silence: SILENCE } : {})}
          onRecord={take}
        >
          {children}
        </NumberEntry>
      </Armed>
      <div className="sheet-tools">
        <EntryModes mode={mode} setMode={setMode} />
      </div>
    </div>
  );
}
