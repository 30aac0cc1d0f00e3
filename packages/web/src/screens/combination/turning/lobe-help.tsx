import type { CamWish, DegreeingView } from '@gudgeon/core/workbench';

interface LobeHelpProps {
  readonly view: Pick<DegreeingView, 'next' | 'stop'>;
  readonly at: CamWish['at'];
  readonly setAt: (at: CamWish['at']) => void;
  readonly stopAgain: () => void;
}
const PLACES = [
  ['lifter', 'on the lifter'],
  ['valve', 'on the valve'],
] as const;

/** Which readings would help most and why, where the indicator stands, and from where everything counts. */
export function LobeHelp({ view, at, setAt, stopAgain }: LobeHelpProps) {
  const { next, stop } = view;
  return (
    <section className="stack" aria-label="Reading on">
      {next.length > 0 && (
        <div>
          <h2>These readings would help most</h2>
          <ol className="turning-next">
            {next.map((one) => (
              <li key={one.wheel}>
                <b>wheel {one.wheel}</b>, {one.words}
              </li>
            ))}
          </ol>
        </div>
      )}
      <fieldset className="plain row">
        <legend className="only-read">Where the indicator stands</legend>
        {PLACES.map(([each, words]) => (
          <button key={each} type="button" className="button" aria-pressed={at === each} onClick={() => setAt(each)}>
            Indicator {words}
          </button>
        ))}
      </fieldset>
      <p>{stop.words}</p>
      <button type="button" className="button turning-alone" onClick={stopAgain}>
        Read the stop again
      </button>
    </section>
  );
}
