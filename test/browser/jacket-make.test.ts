import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { inOrder } from './in-order.ts';
import { visit, wide } from './page.ts';
import { stage } from './stage.ts';

describe.skipIf(chromiumPath === null)('a make with a lining', () => {
  inOrder();
  const set = stage('demo');
  let page: Page;
  const region = (name: string) => page.getByRole('region', { name, exact: true });
  /** Whether all that is drawn on the table is seen: nothing of its paper outside the table's top. */
  const allSeen = () =>
    page.evaluate(() => {
      const top = document.querySelector('#table-top')?.getBoundingClientRect();
      const paper = document
        .querySelector('#table-top path.ink-paper, #table-top rect.ink-paper')
        ?.getBoundingClientRect();
      if (!top || !paper) return false;
      return paper.left >= top.left && paper.right <= top.right && paper.top >= top.top && paper.bottom <= top.bottom;
    });
  beforeAll(async () => {
    page = (await visit(set.browser, set.served.address, { viewport: wide })).page;
    await page.goto('/makes/new?pattern=house:jacket');
    await page.getByRole('button', { name: 'Start it' }).click();
    await page.getByRole('heading', { level: 2, name: 'Fit', exact: true }).waitFor();
  });

  it('keeps all of its picture on the table when another size is taken', async () => {
    const size = region('Fit').getByLabel('Size in hand');
    for (const index of [0, 9, 4]) {
      await size.selectOption({ index });
      await expect.poll(allSeen).toBe(true);
    }
  });

  it('says what its lining and interfacing take, each on a cloth of its own', async () => {
    const layout = region('Cutting layout');
    for (const layer of ['Lining', 'Interfacing']) {
      await layout.getByRole('radio', { name: layer }).click();
      await layout.getByLabel(`Width of the ${layer.toLowerCase()}`).waitFor();
      await layout.getByText('To buy').waitFor({ timeout: 60_000 });
      expect(await layout.getByRole('definition').nth(1).textContent()).toMatch(/^\d[\d.]*\s(m|cm)\s/);
    }
  });

  it('says what it takes beside cloth and in what order it is sewn, and prints that alone', async () => {
    const sewing = region('Sewing');
    expect((await sewing.getByRole('listitem').allTextContents()).join(' ')).toMatch(/button/);
    expect(await sewing.locator('ol.work > li').count()).toBeGreaterThanOrEqual(8);
    await page.evaluate(() => {
      window.print = () => {};
    });
    await sewing.getByRole('button', { name: 'Print this list' }).click();
    await page.emulateMedia({ media: 'print' });
    expect(await sewing.locator('ol.work').isVisible()).toBe(true);
    expect(await page.getByRole('heading', { level: 2, name: 'Fit', exact: true }).isVisible()).toBe(false);
    expect(await page.locator('#table-top').isVisible()).toBe(false);
    await page.emulateMedia({ media: 'screen' });
    await page.evaluate(() => window.dispatchEvent(new Event('afterprint')));
    expect(await page.getByRole('heading', { level: 2, name: 'Fit', exact: true }).isVisible()).toBe(true);
  });

  it('is not sent to the scissors while it is too tight: its own page and home say where', async () => {
    await region('Fit').getByLabel('Size in hand').selectOption({ index: 0 });
    const tight = region('Print').getByText(/^As it stands it is too tight at the .+\./);
    await tight.waitFor();
    await page.goto('/');
    await page
      .getByText(/^a cloth, but it is too tight at the .+$|^the scissors, but it is too tight at the .+$/)
      .waitFor();
    expect(await page.getByRole('link', { name: 'Go on with it' }).getAttribute('href')).toMatch(/#alterations$/);
  });
});
