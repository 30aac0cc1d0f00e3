import { degrees } from '@gudgeon/core/quantity';
import type { ValveChoices } from '@gudgeon/core/workbench';
import { useMemo, useState } from 'react';

const place = (job: string) => `gudgeon.margin.${job}`;

function kept(job: string): number | undefined {
  const text = localStorage.getItem(place(job));
  const value = Number(text);
  return text === null || !Number.isFinite(value) || value < 0 ? undefined : value;
}

/** The margin in crank degrees that the person wants for this engine, kept on this device; undefined for the usual one. */
export function useMargin(job: string): {
  readonly choices: ValveChoices;
  readonly setMargin: (margin: number) => void;
} {
  const [margin, setMargin] = useState(() => kept(job));
  return {
    choices: useMemo(() => (margin === undefined ? {} : { margin: degrees(margin) }), [margin]),
    setMargin: (next) => {
      localStorage.setItem(place(job), String(next));
      setMargin(next);
    },
  };
}
