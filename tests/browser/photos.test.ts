import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import {
  accessibilityFaults,
  type Bench,
  benchControls,
  expectFits,
  expectQuiet,
  openBench,
  phone,
  picture,
} from './harness.js';
import { standSmallEngine } from './small-engine.js';

let bench: Bench;
beforeAll(async () => {
  bench = await openBench();
});
afterAll(() => bench.close());

/**
 * A picture of 2000 by 1000 px that was taken with the camera turned: JPEG with an orientation of 6 in its first segment.
 * Exif 2.3, sections 4.5 and 4.6.4 (recalled): tag 0x0112, a short, 6 is "turn by 90 degrees clockwise".
 */
async function turnedPicture(page: Page): Promise<Buffer> {
  const jpeg = await page.evaluate(() => {
    const canvas = document.createElement('canvas');
    canvas.width = 2000;
    canvas.height = 1000;
    const pen = canvas.getContext('2d');
    if (pen) pen.fillStyle = '#808890';
    pen?.fillRect(0, 0, 2000, 1000);
    if (pen) pen.fillStyle = '#c03020';
    pen?.fillRect(0, 0, 1000, 1000);
    return canvas.toDataURL('image/jpeg').split(',')[1] ?? '';
  });
  const whole = Buffer.from(jpeg, 'base64');
  const tiff = [0x4d, 0x4d, 0, 42, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, 6, 0, 0, 0, 0, 0, 0];
  const exif = Buffer.from([...Buffer.from('Exif\0\0', 'latin1'), ...tiff]);
  const segment = Buffer.from([0xff, 0xe1, 0, exif.length + 2, ...exif]);
  return Buffer.concat([whole.subarray(0, 2), segment, whole.subarray(2)]);
}

/** Size of the shown picture, and what it shows at its top and its bottom. */
const looked = (image: HTMLImageElement) => {
  const canvas = document.createElement('canvas');
  canvas.width = image.naturalWidth;
  canvas.height = image.naturalHeight;
  const pen = canvas.getContext('2d');
  pen?.drawImage(image, 0, 0);
  const redAt = (y: number) => {
    const [red = 0, , blue = 0] = pen?.getImageData(canvas.width / 2, y, 1, 1).data ?? [];
    return red > blue + 50;
  };
  return { width: canvas.width, height: canvas.height, top: redAt(20), bottom: redAt(canvas.height - 20) };
};

describe('a photo of a place', () => {
  it('is taken, kept without a server, copied when it is back, seen on another device and saved with its words', async () => {
    const device = await bench.device(phone);
    const { page } = device;
    const record = `${await standSmallEngine(page)}/record`;
    await page.goto(record);
    await page.getByText('All entries saved').waitFor();
    await page.getByLabel('Which part or place it shows').fill('oil pan');
    const button = (await benchControls(page)).find(({ name }) => name === 'Take a photo');
    expect(button?.height).toBeGreaterThanOrEqual(120);
    await bench.stopServer();
    const field = page.getByRole('group', { name: 'Photo of oil pan' });
    const camera = field.getByLabel('Take a photo');
    await camera.setInputFiles({ name: 'a.png', mimeType: 'image/png', buffer: Buffer.from('no picture') });
    await field.getByText('This file holds no picture that this browser can read').waitFor();
    await camera.setInputFiles({ name: 'pan.jpg', mimeType: 'image/jpeg', buffer: await turnedPicture(page) });
    await field.getByRole('img', { name: 'As just taken' }).waitFor();
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Keep the photo');
    expect(await accessibilityFaults(page)).toEqual([]);
    await expectFits(page);
    await picture(page, 'photo-field-phone', true);
    await field.getByLabel('What is to be seen on it').fill('grey paste at the drain');
    const { origin } = new URL(page.url());
    const browserItself = await device.context.newCDPSession(page);
    await browserItself.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 1 });
    await page.keyboard.press('Enter');
    await page.getByText('This device has no room left to keep the picture. Nothing was recorded.').waitFor();
    expect(await page.getByRole('row', { name: /Photo:/ }).count()).toBe(0);
    await browserItself.send('Storage.overrideQuotaForOrigin', { origin });
    await page.keyboard.press('Enter');

    const shown = page.getByRole('img', { name: 'grey paste at the drain' });
    await shown.waitFor();
    await page.getByText('1 entry and 1 photo on this device only').waitFor();
    // Turned by 90 degrees clockwise, the left half of the picture is its upper half.
    expect(await shown.evaluate(looked)).toEqual({ width: 800, height: 1600, top: true, bottom: false });
    const withoutServer = device.complaints.splice(0);
    expect(withoutServer.filter((line) => !/ERR_CONNECTION_REFUSED|ERR_INCOMPLETE/.test(line))).toEqual([]);

    await page.reload().catch(() => undefined);
    await bench.startServer();
    await page.goto(record);
    await page.getByText('Copied', { exact: true }).waitFor();
    await page.getByText('All entries saved').waitFor();
    device.complaints.length = 0;
    expect(await accessibilityFaults(page)).toEqual([]);
    await picture(page, 'photo-record-phone', true);

    const other = await bench.device(phone);
    await other.page.goto(record);
    const there = other.page.getByRole('img', { name: 'grey paste at the drain' });
    expect(await there.evaluate(looked)).toMatchObject({ width: 800, height: 1600, top: true });
    expect(await other.page.getByRole('row', { name: /Photo: oil pan.*grey paste/ }).count()).toBe(1);
    const [download] = await Promise.all([
      other.page.waitForEvent('download'),
      other.page.getByRole('button', { name: 'Save as one file' }).click(),
    ]);
    const html = readFileSync(await download.path(), 'utf8');
    expect(html).toMatch(/<img src="data:image\/jpeg;base64,[A-Za-z0-9+/]{100,}={0,2}" alt="grey paste at the drain">/);
    expect(html).not.toMatch(/<script|https?:\/\/|Picture left out/);
    expectQuiet(other);
    expectQuiet(device);
  });
});
