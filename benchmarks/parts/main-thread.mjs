/**
 * Time of the browser's main thread from a key to the end of the frame that shows it, out of a trace: all tasks between them, script,
 * style, layout, paint and handing over alike. Processor time of the thread, so that other programs on a busy machine do not count.
 */
const CATEGORIES = ['toplevel', 'blink.user_timing'];
const TASK = 'ThreadControllerImpl::RunTask';

/** Traces while `work` runs and answers the events. */
export async function traced(devtools, work) {
  const events = [];
  const collect = ({ value }) => events.push(...value);
  devtools.on('Tracing.dataCollected', collect);
  await devtools.send('Tracing.start', {
    transferMode: 'ReportEvents',
    traceConfig: { includedCategories: CATEGORIES, recordMode: 'recordAsMuchAsPossible' },
  });
  await work();
  const whole = new Promise((done) => devtools.once('Tracing.tracingComplete', done));
  await devtools.send('Tracing.end');
  await whole;
  devtools.off('Tracing.dataCollected', collect);
  return events;
}

/** Runs in the page: marks each key as it comes, and the first task after the frame that follows it. */
export function markKeys() {
  window.addEventListener(
    'keydown',
    ({ key }) => {
      performance.mark(key === 'Enter' ? 'entry keyed' : 'digit keyed');
      requestAnimationFrame(() => {
        const after = new MessageChannel();
        after.port1.onmessage = () => performance.mark('shown');
        after.port2.postMessage('');
      });
    },
    { capture: true },
  );
}

/** For each mark of that name: milliseconds that the main thread worked until its frame was shown. */
export function workUntilFrame(events, name) {
  const marks = events.filter((one) => one.cat.includes('user_timing'));
  return marks
    .filter((one) => one.name === name)
    .map((mark) => {
      const shown = marks.find((one) => one.name === 'shown' && one.tid === mark.tid && one.ts > mark.ts);
      if (shown === undefined) throw new Error(`no frame after ${name}`);
      const tasks = events.filter((one) => one.ph === 'X' && one.name === TASK && one.tid === mark.tid);
      const between = tasks.filter((one) => one.ts + one.dur > mark.ts && one.ts + one.dur < shown.ts);
      return between.reduce((sum, one) => sum + one.tdur, 0) / 1000;
    });
}
