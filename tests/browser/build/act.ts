/** One act of the work, from the bench to wherever it is answered, and back. */
import { answerAtTheBench } from './at-the-bench.js';
import { checkGasket, goRound, placeFasteners } from './joints.js';
import { readCompression, readLeakage, runIn, seeOil, startIt } from './running-engine.js';
import { backToTheWork, type Shown, type Site } from './site.js';
import { fitParts, readValvesAgain, setValves, tagParts } from './valve-gear.js';
import { fillWorksheet, leaveOutOne, leaveOutSheets, READ } from './worksheets.js';

/** What may come between two acts of one joint, or between two lines of the run-in. */
export interface Between {
  readonly joint: (acts: number) => Promise<void>;
  readonly lines: () => Promise<void>;
  readonly forward: (time: string) => Promise<void>;
}

/** Does the act that the bench shows, and says which it did; nothing where sheets were left out or all of it was signed. */
export async function doAct(site: Site, { about: id }: Shown, between: Between): Promise<string | undefined> {
  const { book, hand } = site;
  const act = book.act(id);
  const by = book.answeredBy(id);
  if (by === undefined) {
    await answerAtTheBench(site, act.answer);
    // A signature is no act that a hand has done.
    return act.answer === 'sign-off' ? undefined : id;
  }
  if (act.subject?.kind === 'worksheet' && !(act.subject.feature in READ)) {
    const { operation } = act;
    const open = book.standing.ready.filter(
      (one) => one.act.operation === operation && one.act.subject?.kind === 'worksheet',
    );
    await (open.length > 1 ? leaveOutSheets(site, operation) : leaveOutOne(site));
    return undefined;
  }
  await hand.press(hand.page.locator('[data-bench-control="record"]'));
  await hand.page.waitForURL((url) => !url.pathname.includes('/bench'));
  switch (by) {
    case 'worksheet':
      await fillWorksheet(site, act.subject?.kind === 'worksheet' ? act.subject.feature : '');
      break;
    case 'joint':
      await goRound(site, between.joint);
      break;
    case 'fasteners':
      await placeFasteners(site);
      break;
    case 'gasket':
      await checkGasket(site);
      break;
    case 'parts':
      await (act.rule === 'valve-gear-tagged' ? tagParts(site) : fitParts(site));
      break;
    case 'valve':
      await setValves(site);
      break;
    case 'valve-again':
      await readValvesAgain(site);
      break;
    case 'oil':
      await seeOil(site);
      break;
    case 'start':
      await startIt(site);
      break;
    case 'run-in':
      await runIn(site, between.forward, between.lines);
      break;
    case 'cylinder-tests':
      await (act.rule === 'compression-read' ? readCompression(site) : readLeakage(site));
      break;
  }
  await backToTheWork(site);
  return id;
}
