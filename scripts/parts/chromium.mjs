/** Finds a Chromium for the browser tests. */
import { existsSync } from 'node:fs';

const PLACES = {
  linux: ['/usr/bin/chromium', '/usr/bin/google-chrome', '/usr/bin/chromium-browser'],
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ],
};

export function findChromium() {
  const asked = process.env.CHROMIUM_PATH;
  if (asked) return existsSync(asked) ? asked : undefined;
  return (PLACES[process.platform] ?? []).find((path) => existsSync(path));
}
