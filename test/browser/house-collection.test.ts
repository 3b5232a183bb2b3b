import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { inOrder } from './in-order.ts';
import { barriers, sideways, smallWords } from './legible.ts';
import { narrow, visit, wide } from './page.ts';
import { stage } from './stage.ts';
import { stored } from './workroom.ts';

/** Every house pattern there has to be, by the words its link begins with. */
const collection = [
  'Blouse',
  'Tee',
  'Trousers',
  'A-line skirt',
  'Jacket',
  'Dungarees',
  'Shirt dress',
  'Sweatshirt',
  'Child’s raincoat',
];

describe.skipIf(chromiumPath === null)('the house collection', () => {
  inOrder();
  const set = stage('demo');
  let page: Page;
  beforeAll(async () => {
    page = (await visit(set.browser, set.served.address, { viewport: wide })).page;
  });
  const table = () => page.getByRole('region', { name: 'The table' });
  const region = (name: string) => page.getByRole('region', { name, exact: true });

  it('is laid on the table as sketches, each of which opens its pattern', async () => {
    await page.goto('/patterns');
    const shown = region('The house collection');
    for (const name of collection) await shown.getByRole('link', { name }).first().waitFor();
    await table().getByRole('button', { name: 'Jacket' }).click();
    await page.getByRole('heading', { level: 1, name: 'Jacket' }).waitFor();
  });

  it('shows a pattern in another view and cup: sketch, pieces, sizes nested', async () => {
    const views = page.getByRole('group', { name: 'View' }).getByRole('radio');
    expect(await views.count()).toBeGreaterThanOrEqual(2);
    const pieces = page.getByRole('group', { name: 'On the table' }).getByRole('radio');
    const before = await pieces.count();
    await views.nth(1).click();
    await expect.poll(() => pieces.count()).not.toBe(before);
    const bust = () => page.getByRole('table').first().getByRole('row').nth(5).getByRole('cell').first().textContent();
    const chart = await bust();
    await page.getByLabel('Cup', { exact: true }).selectOption({ label: '11.0\u00a0cm' });
    await expect.poll(bust).not.toBe(chart);
    await page.getByRole('radio', { name: 'All sizes, one within the other' }).click();
    await expect.poll(() => table().locator('path.ink-faint').count()).toBeGreaterThan(20);
    await page.getByRole('radio', { name: /^Centre front/ }).click();
    await expect.poll(() => table().locator('path.ink-cut').count()).toBe(1);
  });

  it('says what it takes: notions, and cloth laid out on every width', async () => {
    expect(await region('Cloth and notions').textContent()).toMatch(/\d+ buttons/);
    const needed = region('Cloth needed');
    await needed.getByRole('button', { name: 'Lay it out on every width' }).click();
    await needed.getByRole('table', { name: /lining/i }).waitFor({ timeout: 120_000 });
    await needed.getByRole('status').waitFor({ state: 'detached', timeout: 120_000 });
    const metres = async (row: number) =>
      Number.parseFloat(
        (await needed.getByRole('table').first().getByRole('row').nth(row).getByRole('cell').first().textContent()) ??
          '',
      );
    const widths = await needed.getByRole('table').first().getByRole('row').count();
    // The broadest cloth takes no more of its length than the narrowest.
    const [narrowest, broadest] = [await metres(1), await metres(widths - 1)];
    expect(broadest).toBeGreaterThan(0.8);
    if (Number.isFinite(narrowest)) expect(broadest).toBeLessThanOrEqual(narrowest);
  }, 180_000);

  it('gives the order of work, with pressing and trying on', async () => {
    const work = await region('Order of work').getByRole('listitem').allTextContents();
    expect(work.length).toBeGreaterThanOrEqual(8);
    expect(work.some((step) => step.startsWith('Press.'))).toBe(true);
    expect(work.some((step) => step.startsWith('Try on.'))).toBe(true);
  });

  it('warns where a child could come to harm', async () => {
    await page.goto('/patterns/house:raincoat');
    expect(await region('Take care').textContent()).toMatch(/cord/i);
    expect(await region('Take care').textContent()).toMatch(/where you live/);
  });

  it('is opened as a make, in the view chosen, for a wearer it fits', async () => {
    await page.goto('/patterns/house:trousers');
    await page.getByRole('group', { name: 'View' }).getByRole('radio').nth(1).click();
    await page.getByRole('link', { name: 'Start a make from it' }).click();
    const form = page.getByRole('form', { name: 'Start a make' });
    await form.getByRole('button', { name: 'Start it' }).click();
    await page.getByRole('heading', { level: 2, name: 'Fit' }).waitFor();
    const fit = page.getByRole('region', { name: 'Fit', exact: true });
    await fit.getByRole('heading', { name: /^Start from size/ }).waitFor();
    const makes = await stored(set.served.address, 'make');
    const made = makes.find(({ body }) => body['pattern'] === 'house:trousers');
    expect(made?.body['view']).toBe('cropped');
    // Its pieces lie on the table, and its seams meet.
    await page.getByRole('navigation', { name: 'Passages of this make' }).getByRole('link', { name: 'Seams' }).click();
    await expect.poll(() => region('Seams').textContent()).toMatch(/All \d+ seams were walked/);
    expect(await region('Seams').textContent()).not.toMatch(/does not meet|do not meet/);
    await page.goto('/patterns/house:trousers');
    await region('Makes from it').getByRole('link').first().waitFor();
  });

  it.each([
    ['a wide table', wide],
    ['a phone', narrow],
  ])(
    'can be read and used by all on %s',
    async (_, viewport) => {
      const visited = await visit(set.browser, set.served.address, { viewport });
      for (const address of ['/patterns', '/patterns/house:jacket', '/patterns/house:raincoat']) {
        await visited.page.goto(address);
        await visited.page.getByRole('heading', { level: 1 }).waitFor();
        await visited.page.getByRole('region', { name: 'The table' }).getByRole('group').waitFor();
        expect(await barriers(visited.page), address).toEqual([]);
        expect(await smallWords(visited.page), address).toEqual([]);
        expect(await sideways(visited.page), address).toBeLessThanOrEqual(0);
      }
      expect(visited.faults).toEqual([]);
      expect(visited.elsewhere).toEqual([]);
      await visited.context.close();
    },
    120_000,
  );
});
