import type { WrenchInHand } from '@gudgeon/core/workbench';
import { useCallback, useMemo, useState } from 'react';
import { today } from '../../shell/index.js';

/** The wrench in the hand goes from joint to joint; an adapter is on it at one joint only. */
interface Kept {
  readonly wrench?: string;
  readonly adapters?: Readonly<Record<string, WrenchInHand['adapter']>>;
}
const place = 'gudgeon.wrench';

function read(): Kept {
  try {
    return JSON.parse(localStorage.getItem(place) ?? '{}') as Kept;
  } catch {
    return {};
  }
}

export interface WrenchChoice {
  readonly hand: WrenchInHand;
  readonly take: (wrench: string) => void;
  /** Puts an adapter on at this joint, or takes it off. */
  readonly fit: (adapter?: NonNullable<WrenchInHand['adapter']>) => void;
}

/** Which torque wrench the person has in the hand at a joint, remembered on this device. */
export function useWrench(joint: string): WrenchChoice {
  const [kept, setKept] = useState(read);
  const keep = useCallback((next: Kept) => {
    setKept(next);
    try {
      localStorage.setItem(place, JSON.stringify(next));
    } catch {
      // The choice then holds until the page is closed.
    }
  }, []);
  return useMemo(() => {
    const adapter = kept.adapters?.[joint];
    return {
      hand: {
        today: today(),
        ...(kept.wrench !== undefined && { wrench: kept.wrench }),
        ...(adapter && { adapter }),
      },
      take: (wrench) => keep({ ...kept, wrench }),
      fit: (on) => {
        const { [joint]: _, ...others } = kept.adapters ?? {};
        keep({ ...kept, adapters: on ? { ...others, [joint]: on } : others });
      },
    };
  }, [kept, keep, joint]);
}
