/**
 * Time of the browser's main thread from a marked key to the end of the frame that shows it, out of a trace: all tasks
 * between them, script, style, layout, paint and handing over alike. Processor time of the thread, so that other programs on a busy
 * machine do not count; the throttle of the developer tools does, because it keeps the thread itself busy.
 */
const CATEGORIES = ['toplevel', 'blink.user_timing', 'devtools.timeline'];
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

/** For each mark of that name: milliseconds that the main thread worked until its frame was handed over. */
export function workUntilFrame(events, name) {
  const marks = events.filter((one) => one.name === name && one.cat.includes('user_timing'));
  return marks.map((mark) => {
    const thread = events.filter((one) => one.pid === mark.pid && one.tid === mark.tid);
    const drawn = first(thread.filter((one) => one.name === 'Layerize' && one.ts > mark.ts));
    const tasks = thread.filter((one) => one.ph === 'X' && one.name === TASK);
    const frame = drawn && tasks.find((one) => one.ts <= drawn.ts && drawn.ts < one.ts + one.dur);
    if (frame === undefined) throw new Error(`no frame after ${name}`);
    const between = tasks.filter((one) => one.ts + one.dur > mark.ts && one.ts <= frame.ts);
    return between.reduce((sum, one) => sum + (one.tdur ?? one.dur), 0) / 1000;
  });
}

const first = (events) =>
  events.reduce((found, one) => (found === undefined || one.ts < found.ts ? one : found), undefined);
