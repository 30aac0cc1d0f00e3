import { type CompressionRowView, proposeCompression } from '@gudgeon/core/workbench';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { Finished, Pick, StrikeOut, Verdict, VerdictMark, verdictState } from '../../../bench/index.js';
import { useWayOn } from '../../../shell/index.js';
import { lastChosen, noteChosen } from '../../work/kept.js';
import { FigureEntry } from '../figure-entry.js';
import { CylinderBar } from './cylinder-bar.js';
import { limitOf, type TestsProps } from './tests-props.js';

interface Asked {
  readonly cylinder: number;
  readonly wet: boolean;
}
const STROKES = ['4', '5', '6', '8', '10'] as const;
const nameOf = ({ cylinder, wet }: Asked) => `Cylinder ${cylinder}, ${wet ? 'wet' : 'dry'}`;

/** Cylinder by cylinder, dry, and wet where one is low; then what the picture of all of them says. */
export function CompressionPart({ desk, view }: TestsProps) {
  const { compression } = view;
  const [chosen, setChosen] = useState<Asked>();
  const asked = chosen ?? compression.ask;
  return (
    <>
      <div className="bench-two">
        <div className="bench">
          {asked === undefined ? (
            <AllRead desk={desk} view={view} />
          ) : (
            <ReadOne desk={desk} view={view} asked={asked} done={() => setChosen(undefined)} />
          )}
        </div>
        <section className="bench" aria-label="All cylinders">
          <Verdict
            state={verdictState(compression.verdict)}
            value={compression.words}
            limit={limitOf(compression.words, compression.rule)}
          />
          {compression.findings.map(({ words }) => (
            <p key={words} className="work-word" data-finding>
              {words}
            </p>
          ))}
          <Bars view={view} asked={asked} choose={setChosen} />
        </section>
      </div>
      <details className="fold">
        <summary>Strike one out</summary>
        {compression.rows.flatMap(({ cylinder, dry, wet }) =>
          [dry, wet].map(
            (one, at) =>
              one && (
                <StrikeOut
                  key={one.entry}
                  words={`Cylinder ${cylinder}, ${at === 0 ? 'dry' : 'wet'}, ${one.text}`}
                  given={one}
                  strike={(reason) => desk.recorder.strikeOut(one.entry, reason)}
                />
              ),
          ),
        )}
      </details>
    </>
  );
}

interface ReadOneProps extends TestsProps {
  readonly asked: Asked;
  readonly done: () => void;
}
function ReadOne({ desk, view, asked, done }: ReadOneProps) {
  const [strokes, setStrokes] = useState(() => lastChosen('strokes')[0] ?? '');
  const choose = (next: string) => {
    const same = next === strokes;
    setStrokes(same ? '' : next);
    if (!same) noteChosen('strokes', next);
  };
  const take = (text: string, raw: string) => {
    const wish = { ...asked, text, ...(strokes !== '' && { strokes: Number(strokes) }) };
    if (desk.recorder.take(proposeCompression(desk.bench, wish), `${nameOf(asked)}: ${text}`, raw)) done();
  };
  const usual = view.compression.ask;
  const same = usual?.cylinder === asked.cylinder && usual.wet === asked.wet;
  return (
    <>
      <p className="test-next">
        {same ? view.compression.next : asked.wet ? 'A little oil through the plug hole, a few turns, then read.' : ''}
      </p>
      <FigureEntry
        slot={nameOf(asked)}
        about={nameOf(asked)}
        units={view.compression.units}
        memory="compression"
        take={take}
      />
      <Pick name="Strokes, the same for each" choices={STROKES} chosen={strokes} choose={choose} />
    </>
  );
}

function AllRead({ desk }: TestsProps) {
  const [, go] = useLocation();
  const on = useWayOn(desk.job, 'tests', { to: `/engine/${desk.job}`, toWords: 'Back to the engine' });
  return (
    <Finished words="Compression: every reading that is wanted is there" {...on} go={() => go(on.to)} after="record" />
  );
}

interface BarsProps {
  readonly view: TestsProps['view'];
  readonly asked: Asked | undefined;
  readonly choose: (asked: Asked) => void;
}
function Bars({ view, asked, choose }: BarsProps) {
  return (
    <ul className="plain cylinder-rows">
      {view.compression.rows.map((row) => (
        <li key={row.cylinder} data-cylinder={row.cylinder}>
          <span className="cylinder-name">
            {row.cylinder}
            <small>{row.bank}</small>
          </span>
          <span className="cylinder-figure">
            <CylinderBar
              share={row.bar}
              limit={view.compression.share}
              out={row.verdict === 'out'}
              words={barWords(row)}
            />
            <span>
              <strong>{row.dry?.text ?? 'not read'}</strong> {row.share}
              {row.wet && `, wet ${row.wet.text}`}
              {row.says !== '' && `: ${row.says}`}
            </span>
          </span>
          <span className="cylinder-again">
            <VerdictMark verdict={row.verdict} />
            <Again words="Dry" asked={{ cylinder: row.cylinder, wet: false }} now={asked} choose={choose} />
            {row.dry && <Again words="Wet" asked={{ cylinder: row.cylinder, wet: true }} now={asked} choose={choose} />}
          </span>
        </li>
      ))}
    </ul>
  );
}
const barWords = ({ cylinder, dry, share }: CompressionRowView): string =>
  dry === undefined ? `Cylinder ${cylinder}: not read` : `Cylinder ${cylinder}: ${dry.text}, ${share} of the highest`;

interface AgainProps {
  readonly words: string;
  readonly asked: Asked;
  readonly now: Asked | undefined;
  readonly choose: (asked: Asked) => void;
}
function Again({ words, asked, now, choose }: AgainProps) {
  return (
    <button
      type="button"
      className="button"
      aria-pressed={now?.cylinder === asked.cylinder && now.wet === asked.wet}
      aria-label={`Read: ${nameOf(asked)}`}
      onClick={() => choose(asked)}
    >
      {words}
    </button>
  );
}
