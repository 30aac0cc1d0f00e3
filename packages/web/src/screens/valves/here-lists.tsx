import { valveKey } from '@gudgeon/core/engine';
import type { HereView } from '@gudgeon/core/workbench';

interface HereListsProps {
  readonly view: HereView;
  readonly choose: (key: string) => void;
}

/** What may be set where the crank stands, and why the rest may not. */
export function HereLists({ view, choose }: HereListsProps) {
  return (
    <>
      <section className="stack" aria-labelledby="may">
        <h2 id="may" className="step-title">
          {view.may.length} may be set here
        </h2>
        <ul className="plain valve-list">
          {view.may.map((one) => (
            <li key={one.key}>
              <button type="button" className="button row-button" onClick={() => choose(one.key)}>
                <span>{one.place}</span>
                <span>
                  {one.state === 'open' ? '' : `✓ ${one.state}, `}
                  {one.marginDegrees}°
                </span>
              </button>
            </li>
          ))}
        </ul>
      </section>
      <section className="stack" aria-labelledby="may-not">
        <h2 id="may-not" className="step-title">
          {view.mayNot.length} may not
        </h2>
        <ul className="plain valve-list field-hint">
          {view.mayNot.map((one) => (
            <li key={valveKey(one.valve)}>
              <strong>{one.place}</strong>: {one.reason}
            </li>
          ))}
        </ul>
      </section>
    </>
  );
}
