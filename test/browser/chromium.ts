import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const required = process.env['EASEWRIGHT_REQUIRE_CHROMIUM'] === '1';

const find = async (): Promise<string | null> => {
  const named = process.env['EASEWRIGHT_CHROMIUM'];
  if (named !== undefined && existsSync(named)) return named;
  const scripts: string = new URL('../../scripts/chromium.mjs', import.meta.url).href;
  const { findChromium } = (await import(scripts)) as { findChromium: () => string | undefined };
  return findChromium() ?? null;
};

/**
 * The Chromium these tests run in, or null where there is none: then they are skipped, visibly. In continuous
 * integration (`EASEWRIGHT_REQUIRE_CHROMIUM=1`) its absence is a failure.
 */
export const chromiumPath: string | null = await find();
if (chromiumPath === null && required) {
  throw new Error('The browser tests need Chromium, and there is none. Set EASEWRIGHT_CHROMIUM to the path of one.');
}

export const openBrowser = (): Promise<Browser> =>
  chromium.launch({
    executablePath: chromiumPath ?? '',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
    ],
  });
