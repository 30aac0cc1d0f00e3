import { type FindForm, firstForm, type ShownIn, type Tried } from '@gudgeon/core/workbench';
import { useState } from 'react';

const place = (job: string, { length }: ShownIn) => `gudgeon.find.2.${job}.${length}`;

/** The form of the search, kept as long as this window lives; figures are typed in one unit, so each unit has its own. */
export function useFindForm(job: string, tried: Tried, shownIn: ShownIn) {
  const [form, setForm] = useState<FindForm>(() => kept(job, shownIn) ?? firstForm(tried, shownIn));
  const change = (part: Partial<FindForm>) => {
    const next = { ...form, ...part };
    setForm(next);
    try {
      sessionStorage.setItem(place(job, shownIn), JSON.stringify(next));
    } catch {
      // A window that keeps nothing begins with the first form again.
    }
  };
  return [form, change] as const;
}

function kept(job: string, shownIn: ShownIn): FindForm | undefined {
  try {
    const text = sessionStorage.getItem(place(job, shownIn));
    return text === null ? undefined : (JSON.parse(text) as FindForm);
  } catch {
    return undefined;
  }
}
