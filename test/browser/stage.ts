import type { Browser } from 'playwright-core';
import { afterAll, beforeAll } from 'vitest';
import { openBrowser } from './chromium.ts';
import { begin, newFolder, removeFolder, type Served, serve } from './workroom.ts';

/** A workroom begun in a folder of its own, and a browser before it, for the tests of one file. */
export interface Stage {
  readonly folder: string;
  served: Served;
  browser: Browser;
}

/** Sets both up before the tests of a `describe`, and takes both down after them. */
export const stage = (begun: 'demo' | 'own' | 'not yet'): Stage => {
  const folder = newFolder();
  const set = { folder } as Stage;
  beforeAll(async () => {
    [set.served, set.browser] = await Promise.all([serve(folder), openBrowser()]);
    if (begun !== 'not yet') await begin(set.served.address, begun);
  });
  afterAll(async () => {
    await set.browser?.close();
    await set.served?.stop();
    removeFolder(folder);
  });
  return set;
};
