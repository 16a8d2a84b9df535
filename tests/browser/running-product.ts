import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { type RunningApplication, startApplication } from './application.ts';
import { launchBrowser } from './browser.ts';

interface RunningProduct {
  /** Where the product of this file is served. */
  readonly address: string;
  /** The browser of the test that runs. */
  readonly browser: Browser;
}

function present<Value>(value: Value | undefined): Value {
  if (value === undefined) throw new Error('The product runs within tests and their hooks only.');
  return value;
}

/**
 * The built product with the demo workshop for all tests of a file, and a browser for each: the one from npm is a
 * single process, which ends with its first page.
 */
export function runningProduct(): RunningProduct {
  let application: RunningApplication | undefined;
  let browser: Browser | undefined;
  beforeAll(async () => {
    application = await startApplication({ SCANTLING_DEMO: 'on' });
  });
  beforeEach(async () => {
    browser = await launchBrowser();
  });
  afterEach(async () => {
    await browser?.close();
  });
  afterAll(async () => {
    await application?.stop();
  });
  return {
    get address() {
      return present(application).address;
    },
    get browser() {
      return present(browser);
    },
  };
}
