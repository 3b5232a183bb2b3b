import { describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { barriers, sideways, smallWords } from './legible.ts';
import { type Visit, visit } from './page.ts';
import { stage } from './stage.ts';
import { begin } from './workroom.ts';

/** Every page of the program, and the words by which one knows that it stands there whole. */
const pages = [
  ['/', /Go on with it/],
  ['/wearers', /Keep a wearer/],
  ['/wearers/demo-runa', /Take this wearer away/],
  ['/patterns', /Bring in a pattern/],
  ['/patterns/house:blouse', /Cloth and notions/],
  ['/patterns/house:tee', /Cloth and notions/],
  ['/envelopes/demo-rehearsal-dress', /Take this envelope away/],
  ['/cloth', /Keep a cloth/],
  ['/cloth/demo-poplin', /Take this cloth away/],
  ['/makes/new', /Start it/],
  ['/makes/demo-concert-blouse', /Make the sheets/],
  ['/makes/demo-spring-dress', /Sheets are printed from the pieces/],
  ['/nowhere/at-all', /There is nothing at this address/],
] as const;

const nothing = { barriers: [], small: [], sideways: 0, elsewhere: [], faults: [] };

/** All that is wrong with a page as it stands, and what it did until then that it must not. */
const wrong = async ({ page, elsewhere, faults }: Visit) => ({
  barriers: await barriers(page),
  small: await smallWords(page),
  sideways: await sideways(page),
  elsewhere,
  faults,
});

/** Every page in a window of this size: can be read, can be used by all, is no wider than the window, asks nothing of another machine. */
export const everyPage = (on: string, viewport: { readonly width: number; readonly height: number }): void => {
  describe.skipIf(chromiumPath === null)(`every page on ${on} can be read and used, and stays on this machine`, () => {
    const set = stage('not yet');
    const looked = async (address: string, words: RegExp) => {
      const visited = await visit(set.browser, set.served.address, { viewport });
      const { page, context } = visited;
      await page.goto(address);
      await page.getByText(words).first().waitFor();
      // What lies on the table names itself.
      await page.getByRole('region', { name: 'The table' }).getByRole('group').waitFor();
      for (const summary of await page.locator('summary').all()) await summary.click();
      expect(await wrong(visited)).toEqual(nothing);
      expect(await page.title()).toMatch(/.+ – Easewright$/);
      expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
      await context.close();
    };

    it('the first page, before anything is begun', async () => {
      await looked('/', /Start my own/);
      await begin(set.served.address, 'demo');
    });
    for (const [address, words] of pages) it(address, () => looked(address, words));
  });
};
