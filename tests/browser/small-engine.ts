/** An invented single-cylinder engine with one head of four bolts: every kind of step, few of each. */
import type { Page } from 'playwright-core';
import { pastBounce } from './harness.js';
import { stand } from './stand.js';

export const smallSheet = `gudgeon: 1
name: Withy single, bench test
invented: true
defaultFrom: invented, Withy book 1
layout: { form: inline, cylinders: [1], firingOrder: [1] }
crankTrain: { bore: 86.0 mm, stroke: 90.0 mm }
heads:
  - id: only
    name: the head
    length: 150 mm
    width: 140 mm
    cylinderCentres: { 1: { x: 75 mm, y: 0 mm } }
    valves:
      - { cylinder: 1, kind: intake, x: 60 mm, y: -15 mm, diameter: 36 mm }
      - { cylinder: 1, kind: exhaust, x: 90 mm, y: 15 mm, diameter: 32 mm }
    gasket:
      wayUp: the word TOP is up and reads from the exhaust side
      openings:
        - { id: water-1, kind: water, x: 75 mm, y: 60 mm, diameter: 9 mm }
joints:
  - id: head
    name: head bolts
    head: only
    fasteners:
      - { id: long, name: long bolt, thread: M10x1.5, length: 100 mm, use: once }
      - { id: short, name: short bolt, thread: M10x1.5, length: 85 mm, use: reuse }
    holes:
      - { id: 1, fastener: long, x: 20 mm, y: -50 mm, opensInto: blind, onThread: oil, underHead: oil }
      - { id: 2, fastener: long, x: 130 mm, y: 50 mm, opensInto: water, onThread: sealer, underHead: oil }
      - { id: 3, fastener: short, x: 130 mm, y: -50 mm, opensInto: blind, onThread: oil, underHead: oil }
      - { id: 4, fastener: short, x: 20 mm, y: 50 mm, opensInto: blind, onThread: oil, underHead: oil }
    order: 1-4
    stages:
      - { torque: 30 N·m }
      - { angle: 90 deg }
    whenInDoubt: Take that bolt out, fit a new one, and take it through all its stages again.
  - id: caps
    name: rod bolts
    fasteners:
      - { id: rod, name: rod bolt, thread: M8x1, length: 48 mm, use: reuse }
    holes:
      - { ids: 1-2, fastener: rod, opensInto: air, onThread: oil, underHead: oil }
    order: 1-2
    stages:
      - { torque: 20 N·m }
      - { stretch: 0.10..0.14 mm }
    whenInDoubt: Loosen it fully and measure its length again.
`;

/** Puts the engine on a stand and returns its address. */
export const standSmallEngine = (page: Page, sheet: string = smallSheet): Promise<string> => stand(page, sheet);

/** Presses a key once for each step, as a pedal does, and waits until the step has moved on. */
export async function pedal(page: Page, times: number): Promise<void> {
  for (let i = 0; i < times; i++) {
    await page.keyboard.press('Enter');
    await pastBounce(page);
  }
}

/** Opens a bench view for the first time and reads its cautions. */
export async function beginAt(page: Page, path: string): Promise<void> {
  await page.goto(path);
  await page.getByRole('heading', { name: 'Before you begin' }).waitFor();
  await pedal(page, 1);
}

/** Places all four head bolts: cautions read, laid out, one press each. */
export async function placeHeadBolts(page: Page, engine: string): Promise<void> {
  await beginAt(page, `${engine}/fasteners/head`);
  await page.getByRole('heading', { name: 'Lay these out' }).waitFor();
  await pedal(page, 5);
  await page.getByText('Every hole has its fastener').waitFor();
}
