import type { PartsAtHand } from '@gudgeon/core/workbench';
import { useState } from 'react';

const place = 'gudgeon.timing-parts';
const NONE: PartsAtHand = { parts: [] };

/** What lies on this bench to turn a cam with; kept on the device, for it is the shop's and not the engine's. */
export function usePartsAtHand(): readonly [PartsAtHand, (next: PartsAtHand) => void] {
  const [atHand, setAtHand] = useState(kept);
  const set = (next: PartsAtHand) => {
    setAtHand(next);
    try {
      localStorage.setItem(place, JSON.stringify(next));
    } catch {
      // Then it holds until the page is closed.
    }
  };
  return [atHand, set];
}

function kept(): PartsAtHand {
  try {
    const read: unknown = JSON.parse(localStorage.getItem(place) ?? 'null');
    return isPartsAtHand(read) ? read : NONE;
  } catch {
    return NONE;
  }
}
const isRecord = (one: unknown): one is Readonly<Record<string, unknown>> => typeof one === 'object' && one !== null;
function isPartsAtHand(one: unknown): one is PartsAtHand {
  if (!isRecord(one) || !Array.isArray(one.parts)) return false;
  const teeth = one.crankTeeth === undefined || Number.isInteger(one.crankTeeth);
  return teeth && one.parts.every((part) => isRecord(part) && typeof part.id === 'string' && isAmount(part));
}
const isAmount = (part: Readonly<Record<string, unknown>>): boolean =>
  Number.isFinite(part.angle) || (Number.isFinite(part.offset) && Number.isFinite(part.radius));
