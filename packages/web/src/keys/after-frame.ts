/** Longest wait for a frame [ms]: a page that nobody sees draws none. */
const NO_FRAME = 200;

/** What waits for the next frame; all of it shares one wait, which costs more than most of what waits. */
let open: Set<() => void> | undefined;

/**
 * Runs something once what was just done stands on the screen, so that the answer to a key never waits for it. Returns what calls it
 * off.
 */
export function afterFrame(run: () => void): () => void {
  open ??= nextBatch();
  const batch = open;
  // The same function given twice runs twice.
  const once = () => run();
  batch.add(once);
  return () => void batch.delete(once);
}

function nextBatch(): Set<() => void> {
  const batch = new Set<() => void>();
  let timer: number | undefined;
  const frame = requestAnimationFrame(() => {
    close();
    window.clearTimeout(timer);
    timer = window.setTimeout(go);
  });
  // A page in sight draws its frame; the clock is only there for one that is not, or is put away meanwhile.
  if (document.hidden) timer = window.setTimeout(go, NO_FRAME);
  else document.addEventListener('visibilitychange', go, { once: true });
  /** What comes now is about a later frame. */
  function close(): void {
    if (open === batch) open = undefined;
  }
  function go(): void {
    close();
    cancelAnimationFrame(frame);
    window.clearTimeout(timer);
    document.removeEventListener('visibilitychange', go);
    // Each by itself: one that fails does not keep the others, as the sending of what was written, from running.
    for (const once of batch) queueMicrotask(() => batch.delete(once) && once());
  }
  return batch;
}
