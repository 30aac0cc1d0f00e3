import type { Outcome } from '@gudgeon/core/quantity';
import { useEffect, useState } from 'react';
import type { ApiFault } from './request.js';

/** Asks once when the screen opens, and again on `again`. Undefined while the answer is on its way. */
export function useAnswer<T>(ask: () => Promise<Outcome<T, ApiFault>>, again = 0): Outcome<T, ApiFault> | undefined {
  const [answer, setAnswer] = useState<Outcome<T, ApiFault>>();
  // `ask` is made anew on each drawing; only `again` may repeat the question.
  // biome-ignore lint/correctness/useExhaustiveDependencies: see above
  useEffect(() => {
    let wanted = true;
    ask().then((got) => wanted && setAnswer(got));
    return () => {
      wanted = false;
    };
  }, [again]);
  return answer;
}
