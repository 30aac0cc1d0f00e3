import { useEffect, useRef, useState } from 'react';

type SheetWords = typeof import('../../sheet-text/index.js');
type Checked = import('../../sheet-text/index.js').CheckedSheet;
/** A pause in typing this long means that the person wants to see what is wrong [ms]. */
const pause = 300;

/** The sheet reader is heavy and needed only here, so it comes when the screen opens. */
export function useSheetWords(): SheetWords | undefined {
  const [words, setWords] = useState<SheetWords>();
  useEffect(() => {
    let wanted = true;
    void import('../../sheet-text/index.js').then((m) => wanted && setWords(m));
    return () => {
      wanted = false;
    };
  }, []);
  return words;
}

/** What is wrong with the text, checked after each pause in typing. `stale` while the answer belongs to an older text. */
export function useChecked(
  text: string,
  words: SheetWords | undefined,
): { readonly checked?: Checked; readonly stale: boolean } {
  const [answer, setAnswer] = useState<{ readonly of: string; readonly checked: Checked }>();
  const timer = useRef(0);
  useEffect(() => {
    window.clearTimeout(timer.current);
    if (!words || text === '') return;
    timer.current = window.setTimeout(() => setAnswer({ of: text, checked: words.checkSheet(text) }), pause);
    return () => window.clearTimeout(timer.current);
  }, [text, words]);
  return { stale: answer?.of !== text, ...(answer ? { checked: answer.checked } : {}) };
}
