import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { barriers, sideways, smallWords } from './legible.ts';
import { narrow, visit, wide } from './page.ts';
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
  ['/cloth', /Keep a cloth/],
  ['/cloth/demo-poplin', /Take this cloth away/],
  ['/makes/new', /Start it/],
  ['/makes/demo-concert-blouse', /Make the sheets/],
  ['/nowhere/at-all', /There is nothing at this address/],
] as const;

const widths = [
  ['a desk', wide],
  ['a phone', narrow],
] as const;

describe.skipIf(chromiumPath === null)('every page, on', () => {
  const set = stage('not yet');

  /** All that is wrong with a page as it stands. */
  const wrong = async (page: Page) => ({
    barriers: await barriers(page),
    small: await smallWords(page),
    sideways: await sideways(page),
  });
  const nothing = { barriers: [], small: [], sideways: 0 };

  it('the first page, before anything is begun', async () => {
    const { context, page, elsewhere, faults } = await visit(set.browser, set.served.address);
    await page.goto('/');
    await page.getByRole('button', { name: 'Start my own' }).waitFor();
    for (const [on, viewport] of widths) {
      await page.setViewportSize(viewport);
      expect(await wrong(page), on).toEqual(nothing);
    }
    expect([elsewhere, faults]).toEqual([[], []]);
    await context.close();
    await begin(set.served.address, 'demo');
  });

  for (const [on, viewport] of widths) {
    it(`${on}, can be read, used by all, and stays within its window and on this machine`, async () => {
      const { context, page, elsewhere, faults } = await visit(set.browser, set.served.address, { viewport });
      const found: Record<string, unknown> = {};
      for (const [address, words] of pages) {
        await page.goto(address);
        await page.getByText(words).first().waitFor();
        // What lies on the table names itself.
        await page.getByRole('region', { name: 'The table' }).getByRole('group').waitFor();
        for (const summary of await page.locator('summary').all()) await summary.click();
        const seen = await wrong(page);
        if (JSON.stringify(seen) !== JSON.stringify(nothing)) found[address] = seen;
        expect(await page.title(), address).toMatch(/.+ – Easewright$/);
        expect(await page.getByRole('heading', { level: 1 }).count(), address).toBe(1);
      }
      expect(found).toEqual({});
      expect([elsewhere, faults]).toEqual([[], []]);
      await context.close();
    });
  }

  it('a machine that asks for less motion, moves nothing', async () => {
    const { context, page } = await visit(set.browser, set.served.address, { reducedMotion: 'reduce' });
    for (const address of ['/', '/patterns/house:blouse', '/makes/demo-concert-blouse']) {
      await page.goto(address);
      await page.getByRole('heading', { level: 1 }).waitFor();
      const moving = await page.evaluate(() => {
        const timed = [...document.querySelectorAll('*')].filter((element) => {
          const style = getComputedStyle(element);
          return (
            style.scrollBehavior === 'smooth' ||
            style.animationName !== 'none' ||
            style.transitionDuration.split(', ').some((duration) => Number.parseFloat(duration) > 0)
          );
        });
        return [...timed.map((element) => element.outerHTML.slice(0, 120)), ...document.getAnimations().map(String)];
      });
      expect(moving, address).toEqual([]);
    }
    await context.close();
  });
});

describe.skipIf(chromiumPath === null)('the watch over a page', () => {
  const set = stage('own');

  it('notices a request elsewhere, a breach of the policy, small words and a page too wide', async () => {
    const { context, page, elsewhere, faults } = await visit(set.browser, set.served.address);
    await page.goto('/');
    await page.getByRole('heading', { level: 1 }).waitFor();
    expect([elsewhere, faults, await smallWords(page)]).toEqual([[], [], []]);
    await page.evaluate(() => {
      const heading = document.querySelector('h1');
      if (heading) heading.style.fontSize = '15px';
      const broad = document.createElement('p');
      broad.textContent = 'too wide';
      broad.style.width = '4000px';
      const nameless = document.createElement('input');
      document.querySelector('article')?.append(broad, nameless);
      const image = document.createElement('img');
      image.src = 'http://127.0.0.2:9/elsewhere.png';
      document.body.append(image);
    });
    await expect
      .poll(() => faults.filter((fault) => fault.includes('content policy breached')).length)
      .toBeGreaterThan(0);
    expect(await smallWords(page)).toHaveLength(1);
    expect(await sideways(page)).toBeGreaterThan(0);
    expect((await barriers(page)).join()).toContain('label');
    await page.goto('http://127.0.0.2:9/').catch(() => {});
    expect(elsewhere).toContain('http://127.0.0.2:9/');
    await context.close();
  });
});
