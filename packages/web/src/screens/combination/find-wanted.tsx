import { type FindForm, formUnit, wantedRows } from '@gudgeon/core/workbench';
import { useMemo } from 'react';
import { TextField } from '../../bench/index.js';
import { Tick } from './find-fields.js';
import type { CombinationDesk } from './use-combination.js';

interface FindWantedProps {
  readonly desk: CombinationDesk;
  readonly form: FindForm;
  readonly set: (part: Partial<FindForm>) => void;
}

/** Every limit that is known, each of which can be left out of the search this time. */
export function FindWanted({ desk, form, set }: FindWantedProps) {
  const { tried, shownIn, open } = desk;
  const rows = useMemo(() => wantedRows(tried, shownIn), [tried, shownIn]);
  const vee = open.engine.layout.form === 'vee';
  const toggle = (name: string, on: boolean) =>
    set({ waived: on ? form.waived.filter((one) => one !== name) : [...form.waived, name] });
  return (
    <section className="stack" aria-labelledby="wanted">
      <h2 id="wanted">What must hold</h2>
      {rows.length === 0 && <p>No limit is known yet. Add one below: a ratio, a quench, a least valve room.</p>}
      {rows.map(({ name, title, words }) => (
        <Tick
          key={name}
          name={`${title}: ${words}`}
          on={!form.waived.includes(name)}
          toggle={(on) => toggle(name, on)}
        />
      ))}
      {vee && (
        <TextField
          name={`Intake face off its fit by at most (${formUnit('length', shownIn)}); empty: not asked`}
          value={form.intakeShift}
          set={(intakeShift) => set({ intakeShift })}
          figure
        />
      )}
    </section>
  );
}
