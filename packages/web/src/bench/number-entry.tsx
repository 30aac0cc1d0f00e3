import { type KeyboardEvent, type ReactNode, useEffect, useId, useLayoutEffect, useRef, useState } from 'react';
import type { Action } from '../keys/index.js';
import { afterFrame, notABounce, useSteady } from '../keys/index.js';
import { ActButton } from './act-button.js';
import { complaintWords } from './complaint-words.js';
import { heardNumber } from './heard-number.js';
import { emptyBuffer, hasDigits, type KeyBuffer, type Keyed, pressKey, shownNumber, takeText } from './key-buffer.js';
import { Keypad } from './keypad.js';
import { NumberField } from './number-field.js';
import { type Barrier, barrierFor, type GateRules } from './number-gate.js';
import { NumberQuestion } from './number-question.js';
import { SayIt } from './say-it.js';
import { say } from './speech.js';
import { toneRefused } from './tones.js';

interface NumberEntryProps extends GateRules {
  /** What is being measured and where, e.g. "Cylinder 3, lash, intake". */
  readonly slot: string;
  /** Changes when the field is about something else: digits half keyed must not land there. */
  readonly about?: string;
  readonly sign?: boolean;
  /** What to expect, shown small beneath, e.g. "0.000 in: three places". */
  readonly ghost?: string;
  readonly recordLabel?: string;
  /** False where a keyboard or a gauge types: the number keys would only take room. */
  readonly pad?: boolean;
  /** For a gauge that sends no Enter: the whole value is taken after this much silence [ms]; Tab takes it as well. */
  readonly silence?: number;
  /** Offers to hear the figure where this browser can; it is read back and waits for Record like any other. */
  readonly spoken?: boolean;
  /** A pedal may send this key in place of Enter. */
  readonly pedal?: string;
  /** Stands between the field and the number keys. */
  readonly children?: ReactNode;
  /** Called once per confirmed reading with the keys as keyed and the number as shown. */
  readonly onRecord: (raw: string, shown: string) => void;
}

/** What is in the field, and what was said of it. */
interface Keying {
  readonly about: string;
  readonly buffer: KeyBuffer;
  readonly cleared?: KeyBuffer;
  readonly complaint: string;
  readonly question?: Barrier & { kind: 'ask' };
  readonly answered: ReadonlySet<string>;
}
const isNothing = ({ buffer, cleared, complaint }: Keying): boolean =>
  buffer.raw === '' && buffer.letters === '' && cleared === undefined && complaint === '';
const nothingKeyed: Keying = { about: '', buffer: emptyBuffer, complaint: '', answered: new Set() };

/** Takes one number by own keypad, keyboard or a gauge that types. Nothing is stored until Record. */
export function NumberEntry({
  slot,
  about = '',
  sign = false,
  ghost,
  recordLabel = 'Record',
  pad = true,
  silence,
  spoken = false,
  pedal,
  children,
  onRecord,
  ...rules
}: NumberEntryProps) {
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [keying, setKeying] = useState<Keying>({ ...nothingKeyed, about });
  // Kept in the same field, so that keyboard and gauge never lose it between two readings.
  if (keying.about !== about && !isNothing(keying)) setKeying({ ...nothingKeyed, about });
  const { buffer, cleared, complaint, question, answered } = keying.about === about ? keying : nothingKeyed;
  /** Something was keyed since the last Record: then the next one is meant, however soon it comes. */
  const meant = useRef(false);

  const take = (keyed: Keyed, before?: KeyBuffer) => {
    const words = keyed.complaint ? complaintWords(keyed.complaint) : '';
    setKeying({ ...nothingKeyed, about, buffer: keyed.buffer, complaint: words, ...(before && { cleared: before }) });
    meant.current = true;
    if (keyed.complaint) toneRefused();
  };
  const press = (key: string) => {
    if (key === 'Undo') take({ buffer: cleared ?? emptyBuffer });
    else take(pressKey(buffer, key, sign), key === 'Clear' && buffer.raw !== '' ? buffer : undefined);
    field.current?.focus();
  };
  const typed = (text: string) => {
    const before = buffer.raw + buffer.letters;
    if (text.startsWith(before)) take(takeText(buffer, text.slice(before.length), sign));
    else take(takeText(emptyBuffer, text, sign));
  };
  const hear = (words: string) => {
    const figure = heardNumber(words);
    if (figure === undefined) {
      toneRefused();
      setKeying({ ...nothingKeyed, about, buffer, complaint: `Heard “${words}”: no figure. Say it digit by digit.` });
      return;
    }
    take(takeText(emptyBuffer, figure, sign));
    say(`${figure} ${rules.unit}`);
    field.current?.focus();
  };
  const record = (agreed: ReadonlySet<string>) => {
    const barrier = barrierFor(buffer, rules, agreed);
    if (!barrier) {
      onRecord(buffer.raw, shownNumber(buffer));
      setKeying({ ...nothingKeyed, about });
      return;
    }
    toneRefused();
    const { question: _, ...rest } = keying;
    if (barrier.kind === 'ask') setKeying({ ...rest, answered: agreed, question: barrier, complaint: '' });
    else setKeying({ ...rest, answered: agreed, complaint: barrier.words });
  };
  const recordAction: Action = {
    name: 'record',
    label: recordLabel,
    keys: ['Enter'],
    available: true,
    run: () => record(answered),
  };
  const guarded = () => {
    const keyed = meant.current;
    meant.current = false;
    if (notABounce('record', keyed)) record(answered);
  };
  const onKey = (event: KeyboardEvent) => {
    // A held Backspace would wipe a reading that the person cannot see being wiped.
    if (event.key === 'Backspace' && event.repeat) event.preventDefault();
    const taken =
      event.key === 'Enter' ||
      event.key === pedal ||
      (event.key === 'Tab' && silence !== undefined && hasDigits(buffer) && !question);
    if (!taken) return;
    event.preventDefault();
    if (!event.repeat) guarded();
  };
  const onPress = useSteady(press);
  const onHeard = useSteady(hear);
  const lookAhead = useSteady((shown: string) => void rules.check?.(shown));
  // What is keyed so far is judged once the digit is seen; the core keeps its answer, and Record finds it ready.
  useEffect(() => {
    if (hasDigits(buffer)) return afterFrame(() => lookAhead(shownNumber(buffer)));
  }, [buffer, lookAhead]);
  const onText = useSteady((text: string) => typed(rawFrom(text, buffer)));
  const onKeyed = useSteady(onKey);
  // The field keeps its text itself: a controlled one is told its name anew with every key, which costs more than all else.
  useLayoutEffect(() => {
    const shown = shownWhileKeying(buffer);
    if (field.current && field.current.value !== shown) field.current.value = shown;
  });
  const afterSilence = useRef(guarded);
  useEffect(() => {
    afterSilence.current = guarded;
  });
  const silent = silence !== undefined && hasDigits(buffer) && !question && complaint === '';
  // Every new key starts the silence anew.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    if (!silent) return;
    const timer = window.setTimeout(() => afterSilence.current(), silence);
    return () => window.clearTimeout(timer);
  }, [silent, silence, buffer]);

  return (
    <div className={pad && !question ? 'entry entry-pad' : 'entry'}>
      <div className="entry-armed">
        <label className="entry-slot" htmlFor={id}>
          {slot}
        </label>
        <span className="entry-line">
          <NumberField id={id} field={field} onText={onText} onKey={onKeyed} />
          <span className="entry-unit">{rules.unit}</span>
        </span>
        <span className="entry-ghost" id={`${id}-ghost`}>
          {ghost ?? (rules.places === undefined ? '' : `${rules.places} places after the point`)}
        </span>
      </div>
      <div id={`${id}-said`} role="alert">
        {complaint && <p className="entry-complaint">{complaint}</p>}
      </div>
      {!question && children}
      {question ? (
        <NumberQuestion
          question={question}
          reading={`${shownNumber(buffer)} ${rules.unit}`}
          yes={() => record(new Set([...answered, question.about]))}
          no={() => press('Clear')}
        />
      ) : (
        <>
          {spoken && <SayIt words="Say the figure" heard={onHeard} />}
          {pad && <Keypad press={onPress} sign={sign} />}
          <ActButton action={recordAction} run={guarded} />
          {pad && (
            <button
              type="button"
              className="act act-second apart"
              data-bench-control="clear"
              onClick={() => press(cleared ? 'Undo' : 'Clear')}
            >
              {cleared ? `Bring back ${shownNumber(cleared)}` : 'Clear'}
            </button>
          )}
        </>
      )}
    </div>
  );
}

/** On the screen a leading zero stands before the point; the keys themselves are kept apart from it. */
const shownWhileKeying = (buffer: KeyBuffer): string => shownNumber(buffer) + buffer.letters;

/** Puts the keyed text back in place of the shown one where the field only grew. */
function rawFrom(fieldText: string, buffer: KeyBuffer): string {
  const shown = shownWhileKeying(buffer);
  return fieldText.startsWith(shown) ? buffer.raw + buffer.letters + fieldText.slice(shown.length) : fieldText;
}
