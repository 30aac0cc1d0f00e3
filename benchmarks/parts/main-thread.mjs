/**
 * Time of the browser's main thread from a key to the end of the frame that shows it, out of a trace: all tasks between them, script,
 * style, layout, paint and handing over alike. Processor time of the thread, so that other programs on a busy machine do not count.
 */
const CATEGORIES = ['toplevel', 'blink.user_timing'];
const TASK = 'ThreadControllerImpl::RunTask';
/** What the compositor asks the main thread for: script of the frame, style, layout, paint and handing over. */
const FRAME = 'ScheduledActionSendBeginMainFrame';

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

/** Runs in the page: marks each key as it comes. The mark is all that measuring adds to the work. */
export function markKeys() {
  window.addEventListener('keydown', ({ key }) => performance.mark(key === 'Enter' ? 'entry keyed' : 'digit keyed'), {
    capture: true,
  });
}

/** For each mark of that name: milliseconds that the main thread worked until its frame was handed over. */
export function workUntilFrame(events, name) {
  const marks = events.filter((one) => one.cat.includes('user_timing') && one.name === name);
  const tasks = events.filter((one) => one.ph === 'X' && one.name === TASK).sort((a, b) => a.ts - b.ts);
  return marks.map((mark) => {
    const from = tasks.findIndex((one) => one.tid === mark.tid && one.ts + one.dur > mark.ts);
    const until = tasks.findIndex((one, at) => at > from && one.tid === mark.tid && one.args.src_func === FRAME);
    if (from < 0 || until < 0) throw new Error(`no frame after ${name}`);
    const between = tasks.slice(from, until + 1).filter((one) => one.tid === mark.tid);
    return between.reduce((sum, one) => sum + one.tdur, 0) / 1000;
  });
}
