import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { inOrder } from './in-order.ts';
import { barriers, sideways, smallWords } from './legible.ts';
import { narrow, untilSaved, type Visit, visit } from './page.ts';
import { stage } from './stage.ts';
import { stored } from './workroom.ts';

describe.skipIf(chromiumPath === null)('the main job on a phone', () => {
  inOrder();
  const set = stage('demo');
  let visited: Visit;
  let page: Page;
  beforeAll(async () => {
    visited = await visit(set.browser, set.served.address, { viewport: narrow, hasTouch: true, isMobile: true });
    page = visited.page;
  });
  const table = () => page.getByRole('region', { name: 'The table' });
  const sound = async () => {
    expect(await smallWords(page)).toEqual([]);
    expect(await sideways(page)).toBeLessThanOrEqual(0);
    expect(await barriers(page)).toEqual([]);
  };
  const goTo = (name: string) =>
    page.getByRole('navigation', { name: 'Passages of this make' }).getByRole('link', { name }).tap();

  it('goes on with the make in hand, the table above the words', async () => {
    await page.goto('/');
    await page.getByRole('link', { name: 'Go on with it' }).tap();
    await page.getByRole('heading', { level: 2, name: 'Fit' }).waitFor();
    // The page comes up scrolled to where she was; until then the table lies below the page's head.
    await expect.poll(async () => (await table().boundingBox())?.y).toBe(0);
    const above = await table().boundingBox();
    // The address says which passage it waits in.
    const hash = new URL(page.url()).hash;
    expect(hash).not.toBe('');
    const head = page.locator(hash).getByRole('heading', { level: 2 });
    const under = (above?.y ?? 0) + (above?.height ?? 0);
    expect(above?.y).toBe(0);
    // What she goes on with is in sight, not under the table.
    await expect.poll(async () => (await head.boundingBox())?.y).toBeGreaterThanOrEqual(under);
    expect((await head.boundingBox())?.y).toBeLessThan(narrow.height - 40);
    expect(above?.width).toBe(narrow.width);
  });

  it('takes a size, and alters by the slider', async () => {
    await page
      .getByRole('button', { name: /^Take size/ })
      .first()
      .tap();
    await goTo('Alterations');
    const alterations = page.getByRole('region', { name: 'Alterations', exact: true });
    await alterations.getByLabel('Find an alteration').fill('full bust');
    await alterations.getByRole('button', { name: 'Add Full bust to the list' }).tap();
    const slider = alterations.getByRole('slider', { name: 'Full bust, amount' }).last();
    await slider.waitFor();
    const before = await slider.inputValue();
    const box = await slider.boundingBox();
    await slider.tap({ position: { x: 0.6 * (box?.width ?? 0), y: (box?.height ?? 0) / 2 } });
    await expect.poll(() => slider.inputValue()).not.toBe(before);
    await expect.poll(() => table().locator('path.ink-changed').count()).toBeGreaterThan(0);
    await untilSaved(page);
    // A thumb is some 9 mm wide.
    expect(box?.height).toBeGreaterThanOrEqual(24);
    await sound();
  });

  it('folds the table away, and the words, and has both back', async () => {
    const bar = page.getByRole('region', { name: 'Table and words' });
    await bar.getByRole('button', { name: 'Fold the table away' }).tap();
    await expect.poll(() => table().isVisible()).toBe(false);
    await sound();
    await bar.getByRole('button', { name: 'Unfold the table' }).tap();
    await expect.poll(() => table().isVisible()).toBe(true);
    await bar.getByRole('button', { name: 'Fold the words away' }).tap();
    await expect.poll(() => page.getByRole('main').isVisible()).toBe(false);
    expect((await table().boundingBox())?.height).toBeGreaterThan(narrow.height * 0.8);
    expect([await smallWords(page), await sideways(page)]).toEqual([[], 0]);
    await bar.getByRole('button', { name: 'Unfold the words' }).tap();
    await expect.poll(() => page.getByRole('main').isVisible()).toBe(true);
  });

  it('walks the seams, and lays the pieces', async () => {
    await goTo('Seams');
    await page.getByText(/^All \d+ seams were walked/).waitFor();
    await sound();
    await goTo('Cutting layout');
    const layout = page.getByRole('region', { name: 'Cutting layout', exact: true });
    await layout.getByRole('term').filter({ hasText: 'To buy' }).waitFor();
    const stop = layout.getByRole('button', { name: 'Stop here' });
    if (await stop.isVisible()) await stop.tap().catch(() => {});
    await layout.getByRole('button', { name: 'Look for a better one' }).waitFor();
    await sound();
  });

  it('makes the sheets', async () => {
    await goTo('Print');
    await page.getByRole('button', { name: 'Make the sheets' }).tap();
    await page.getByRole('link', { name: 'Download the PDF' }).waitFor();
    await sound();
    const id = new URL(page.url()).pathname.split('/').at(-1);
    const make = (await stored(set.served.address, 'make')).find((one) => one.id === id);
    expect(make?.body['size']).toMatch(/^\d+$/);
    expect([visited.elsewhere, visited.faults]).toEqual([[], []]);
  });
});
