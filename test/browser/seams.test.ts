import type { Locator, Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { inOrder } from './in-order.ts';
import { barriers, sideways } from './legible.ts';
import { untilSaved, visit } from './page.ts';
import { stage } from './stage.ts';
import { stored } from './workroom.ts';

interface Step {
  readonly alteration: string;
  readonly params: Readonly<Record<string, number | string>>;
}

describe.skipIf(chromiumPath === null)('the seams of a make', () => {
  inOrder();
  const set = stage('demo');
  let page: Page;
  let faults: readonly string[];
  let seams: Locator;
  const stepsNow = async (): Promise<readonly Step[]> => {
    await untilSaved(page);
    const make = (await stored(set.served.address, 'make')).find(({ body }) => body['name'] === 'Seams walked');
    return (make?.body['steps'] ?? []) as readonly Step[];
  };
  const roll = () => seams.getByLabel(/^Roll the seam/);
  const outline = () =>
    page
      .getByRole('group', { name: /rolled to/ })
      .first()
      .innerHTML();

  beforeAll(async () => {
    const seen = await visit(set.browser, set.served.address);
    page = seen.page;
    faults = seen.faults;
    await page.goto('/#/');
    await page.getByRole('link', { name: 'Start a make' }).first().click();
    await page.getByRole('heading', { level: 1, name: 'Start a make' }).waitFor();
    const pattern = page.getByLabel('Pattern', { exact: true });
    const blouse = await pattern
      .locator('option', { hasText: /blouse/i })
      .first()
      .getAttribute('value');
    await pattern.selectOption(blouse ?? '');
    await page.getByLabel('What you call it').fill('Seams walked');
    await page.getByRole('button', { name: 'Start it' }).click();
    await page.getByRole('heading', { level: 2, name: 'Alterations' }).waitFor();
    await page.getByRole('navigation', { name: 'Passages of this make' }).getByRole('link', { name: 'Seams' }).click();
    seams = page.getByRole('region', { name: 'Seams', exact: true });
    await roll().waitFor();
  });

  it('rolls one edge along the other by keys', async () => {
    await seams.getByRole('radio', { name: /front side/i }).check();
    await roll().focus();
    await page.keyboard.press('PageUp');
    await page.keyboard.press('ArrowRight');
    await expect.poll(() => roll().getAttribute('aria-valuetext')).toMatch(/^\d+\.\d\scm along$/);
    await page
      .getByRole('group', { name: /rolled to/ })
      .first()
      .waitFor();
    const before = await outline();
    await page.keyboard.press('End');
    await expect.poll(outline).not.toBe(before);
    // The place of touch on the table is the same slider.
    const touch = page.getByRole('slider', { name: /^Place where the edges touch/ });
    const atEnd = await roll().inputValue();
    await touch.focus();
    await page.keyboard.press('PageDown');
    await expect.poll(async () => Number(await roll().inputValue())).toBeLessThan(Number(atEnd) - 8);
  });

  it('is mended by easing and by moving a notch, each a step of the list', async () => {
    await seams.getByRole('button', { name: 'Ease', exact: true }).click();
    await expect.poll(async () => (await stepsNow()).map(({ alteration }) => alteration)).toEqual(['sew-seam']);
    expect((await stepsNow())[0]?.params).toMatchObject({ seam: 'side', how: 'eased' });
    await seams.getByRole('button', { name: 'Move the notch' }).click();
    await expect
      .poll(async () => (await stepsNow()).map(({ alteration }) => alteration))
      .toEqual(['sew-seam', 'move-notch']);
    const alterations = page.getByRole('region', { name: 'Alterations', exact: true });
    await alterations.getByRole('heading', { name: /Sew a seam another way/ }).waitFor();
    await alterations.getByRole('heading', { name: /Move a notch/ }).waitFor();
    expect(await alterations.locator('.step .field-trouble').allTextContents()).toEqual([]);
  });

  it('walks two edges that are not sewn to each other', async () => {
    await seams.getByText('Walk any two edges').click();
    await seams.getByRole('button', { name: 'Walk these two' }).click();
    await seams.getByText(/^These two are walked: /).waitFor();
    expect(await seams.getByRole('button', { name: 'Ease', exact: true }).count()).toBe(0);
    await seams.getByRole('button', { name: 'Back to the seams' }).click();
    await seams.getByRole('button', { name: 'Ease', exact: true }).waitFor();
  });

  it('is read by everybody, on a narrow screen too', async () => {
    expect(await barriers(page)).toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    await roll().focus();
    for (let i = 0; i < 4; i += 1) await page.keyboard.press('PageUp');
    await page
      .getByRole('group', { name: /rolled to/ })
      .first()
      .waitFor();
    expect(await sideways(page)).toBe(0);
    expect(await barriers(page)).toEqual([]);
    await page.setViewportSize({ width: 1600, height: 900 });
    await roll().focus();
    await page.keyboard.press('PageUp');
    expect(await sideways(page)).toBe(0);
    expect(faults).toEqual([]);
  });
});
