import { asIfSure, springsView } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';
import type { OpenJob } from '../../shell/index.js';
import { PlaceChoice } from './place-choice.js';
import { SubjectFrame } from './subject-frame.js';
import { useCombination } from './use-combination.js';
import { useSettled } from './use-settled.js';

const KINDS = ['intake', 'exhaust'] as const;

/** Spring load against what the lobe needs, room to bind and under the retainer. */
export function Springs({ open }: { readonly open: OpenJob }) {
  const desk = useCombination(open);
  const { bench, tried, shownIn } = desk;
  const [kind, setKind] = useState<(typeof KINDS)[number]>('intake');
  const [valve, setValve] = useState('');
  const rested = useSettled(tried);
  const whole = useMemo(
    () => springsView(bench, rested, { kind, valve }, shownIn),
    [bench, rested, kind, valve, shownIn],
  );
  const view = useMemo(
    () =>
      rested === tried
        ? whole
        : springsView(bench, asIfSure(tried), { kind, valve: whole.valve, alone: true }, shownIn),
    [bench, rested, tried, whole, kind, shownIn],
  );
  return (
    <SubjectFrame desk={desk} view={view}>
      <fieldset className="plain row">
        <legend className="only-read">Which valves</legend>
        {KINDS.map((each) => (
          <button
            key={each}
            type="button"
            className="button"
            aria-pressed={kind === each}
            onClick={() => setKind(each)}
          >
            {each}
          </button>
        ))}
      </fieldset>
      <PlaceChoice
        title="Load closed of each spring"
        kind="valve"
        places={whole.valves}
        chosen={whole.valve}
        set={setValve}
      />
    </SubjectFrame>
  );
}
