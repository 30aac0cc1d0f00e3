/** Acts that are answered at the bench itself: felt, listed, read, registered, photographed, signed, looked at again. */
import { settled } from './hand.js';
import type { Site } from './site.js';

const USUAL = '[data-bench-control="record"]';
/** What the gauge shows where nothing else is told. */
const FIGURE = '0.20';
export const SIGNATURE = 'built from bare block, ready for the pump';

/** Says, keys or photographs what the act asks for. */
export async function answerAtTheBench(site: Site, answer: string): Promise<void> {
  switch (answer) {
    case 'value':
      return keyAndJudge(site);
    case 'photo':
      return photograph(site);
    case 'register':
      return register(site);
    case 'felt-or-seen':
      return say(site);
    case 'sign-off':
      return sign(site);
    default:
      return list(site);
  }
}

const usual = ({ hand }: Site) => hand.press(hand.page.locator(USUAL).first());
const pick = ({ hand }: Site, words: string) =>
  hand.press(hand.page.locator('.pick button', { hasText: words }).first());

/** Words said at the place before stand there already. */
async function say(site: Site): Promise<void> {
  const { page } = site.hand;
  if ((await page.getByRole('button', { name: /^Good: / }).count()) === 0) await pick(site, 'as the sheet says');
  await usual(site);
}

async function list(site: Site): Promise<void> {
  const { hand } = site;
  const { page } = hand;
  const written = page.locator('.list-lines li');
  if (hand.name === 'touch') {
    await pick(site, 'all there');
    await written.waitFor();
    return usual(site);
  }
  await hand.write(page.getByLabel('Line 1'), 'counted: all there');
  await page.keyboard.press('Enter');
  await written.waitFor();
  // Enter on the empty line records them.
  await settled(page);
  await page.keyboard.press('Enter');
}

async function keyAndJudge(site: Site): Promise<void> {
  await site.hand.figure(FIGURE);
  await site.hand.page.locator('[data-current-number]').waitFor();
  await usual(site);
}

async function register(site: Site): Promise<void> {
  const { hand } = site;
  const position = hand.page.getByLabel('Position: where it sat');
  if ((await position.inputValue()) === '') await hand.write(position, 'in its tray, in order');
  await pick(site, 'used, good');
  await usual(site);
}

async function photograph(site: Site): Promise<void> {
  const { hand, picture } = site;
  const { page } = hand;
  await hand.photograph(page.getByLabel('Take a photo'), picture);
  await page.getByRole('img', { name: 'As just taken' }).waitFor();
  await hand.press(page.locator('[data-bench-control="Keep the photo"]'));
  await usual(site);
}

async function sign(site: Site): Promise<void> {
  const { hand } = site;
  const { page } = hand;
  const signature = page.getByLabel('Signature, in words');
  const read = page.locator('[data-bench-control="record"]', { hasText: 'Read.' });
  for (let at = 1; ; at++) {
    await signature.or(read).first().waitFor();
    if (await signature.isVisible()) break;
    await page.locator('.step-lead', { hasText: `(${at} of ` }).waitFor();
    await hand.press(read);
  }
  await hand.write(signature, SIGNATURE);
  await hand.press(page.locator('[data-bench-control="record"]'));
}

/** Looked at again by another person than the one who did it, in another way; whoever holds the device is named already, unless it is that one. */
export async function lookAgain(site: Site): Promise<void> {
  const { hand } = site;
  const { page } = hand;
  const looker = page.getByLabel('Who looks');
  if ((await looker.inputValue()) === '') await hand.write(looker, 'Cal');
  await pick(site, 'as recorded');
  await usual(site);
}
