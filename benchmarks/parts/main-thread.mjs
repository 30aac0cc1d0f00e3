/**
 * Time of the browser's main thread from a key to the end of the frame that shows it, out of a trace: all tasks between them, script,
 * style, layout, paint and handing over alike. Processor time of the thread, so that other programs on a busy machine do not count.
 */
const CATEGORIES = ['toplevel', 'blink.user_timing'];
const TASK = 'ThreadControllerImpl::RunTask';
/** Where the keys come in. */
const INPUT = 'main_thread_event_queue.cc';
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

/** Runs in the page: names each key as it is let go, when its frame has been shown. So measuring adds nothing to the work. */
export function markKeys() {
  window.addEventListener('keyup', ({ key }) => performance.mark(key === 'Enter' ? 'entry keyed' : 'digit keyed'));
}

/**
 * For each key of that name: milliseconds that the main thread worked from its going down until its frame was handed over. On a busy
 * machine a key may be let go before that; its letting go counts then as well.
 */
export function workUntilFrame(events, name) {
  const marks = events.filter((one) => one.cat.includes('user_timing')).sort((a, b) => a.ts - b.ts);
  const all = events.filter((one) => one.ph === 'X' && one.name === TASK).sort((a, b) => a.ts - b.ts);
  return marks.flatMap((mark, at) => {
    if (mark.name !== name || at === 0) return [];
    const tasks = all.filter((one) => one.tid === mark.tid && one.ts > marks[at - 1].ts);
    const from = tasks.findIndex((one) => one.args.src_file?.endsWith(INPUT));
    const until = tasks.findIndex((one, rank) => rank > from && one.args.src_func === FRAME);
    if (from < 0 || until < 0) throw new Error(`no frame after ${name}`);
    return [tasks.slice(from, until + 1).reduce((sum, one) => sum + one.tdur, 0) / 1000];
  });
}
