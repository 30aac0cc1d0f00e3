/** Longest wait for a frame [ms]: a page that nobody sees draws none. */
const NO_FRAME = 200;

/**
 * Runs something once what was just done stands on the screen, so that the answer to a key never waits for it. Returns what calls it
 * off.
 */
export function afterFrame(run: () => void): () => void {
  let timer = window.setTimeout(go, NO_FRAME);
  const frame = requestAnimationFrame(() => {
    window.clearTimeout(timer);
    timer = window.setTimeout(go);
  });
  function go(): void {
    cancelAnimationFrame(frame);
    run();
  }
  return () => {
    cancelAnimationFrame(frame);
    window.clearTimeout(timer);
  };
}
