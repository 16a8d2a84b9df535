import { existsSync } from 'node:fs';
import chromium from '@sparticuz/chromium';
import { type Browser, chromium as driver } from 'playwright-core';

const installedPlaces = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];

/** No requests of the browser's own, and no shared memory that a small container lacks. */
const quietArgs = ['--disable-background-networking', '--disable-dev-shm-usage', '--no-first-run'];

/** Chromium named by CHROMIUM_PATH, else one that is installed, else the one from npm (Linux on x64). */
async function findBrowser(): Promise<{ executablePath: string; args: string[] }> {
  const named = process.env.CHROMIUM_PATH;
  if (named !== undefined && named !== '') {
    if (!existsSync(named)) throw new Error(`CHROMIUM_PATH names ${named}, which does not exist.`);
    return { executablePath: named, args: quietArgs };
  }
  const installed = installedPlaces.find((path) => existsSync(path));
  if (installed !== undefined) return { executablePath: installed, args: quietArgs };
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error('No Chromium found: install one, or set CHROMIUM_PATH to its program.');
  }
  return { executablePath: await chromium.executablePath(), args: [...chromium.args, ...quietArgs] };
}

/** A real Chromium without a window; the caller closes it. */
export async function launchBrowser(): Promise<Browser> {
  const { executablePath, args } = await findBrowser();
  // Chromium's sandbox refuses to run as root.
  const isRoot = process.getuid?.() === 0;
  return driver.launch({
    executablePath,
    args,
    headless: true,
    chromiumSandbox: !isRoot && !args.includes('--no-sandbox'),
  });
}
