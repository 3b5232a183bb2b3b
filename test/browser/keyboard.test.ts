import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { focused, tabTo } from './by-keys.ts';
import { chromiumPath } from './chromium.ts';
import { inOrder } from './in-order.ts';
import { untilSaved, visit } from './page.ts';
import { stage } from './stage.ts';
import { stored } from './workroom.ts';

describe.skipIf(chromiumPath === null)('the main job by keys alone', () => {
  inOrder();
  const set = stage('not yet');
  let page: Page;
  beforeAll(async () => {
    ({ page } = await visit(set.browser, set.served.address));
    // The mouse is far from everything, and never moved again.
    await page.mouse.move(0, 0);
  });
  const press = async (...keys: readonly string[]) => {
    for (const key of keys) await page.keyboard.press(key);
  };
  const headed = (name: string | RegExp) => page.getByRole('heading', { level: 1, name }).waitFor();

  it('begins', async () => {
    await page.goto('/');
    await page.getByRole('button', { name: 'Start my own' }).waitFor();
    await tabTo(page, 'Start my own');
    await press('Enter');
    await headed('On the table');
  });

  it('keeps a wearer', async () => {
    await tabTo(page, 'Wearers', 'Shift+Tab');
    await press('Enter');
    await headed('Wearers');
    // The page that is come to has the focus at its head.
    expect((await focused(page)).name).toBe('Wearers');
    await tabTo(page, 'Name');
    await page.keyboard.type('Maren Tolk');
    await tabTo(page, 'Keep a wearer');
    await press('Enter');
    await headed('Maren Tolk');
  });

  it('takes measures, in inches and centimetres', async () => {
    await tabTo(page, 'centimetres', 'Shift+Tab');
    await press('ArrowLeft');
    await expect.poll(() => page.getByRole('radio', { name: 'inches' }).isChecked()).toBe(true);
    for (const [name, typed] of [
      ['Stature', `5' 3 5/8"`],
      ['Bust girth', '41 3/8'],
      ['Upper bust girth', '37 1/2'],
      ['Waist girth', '36'],
      ['Hip girth', '104.5 cm'],
      ['Back waist length', '16'],
      ['Arm length', '22 3/4'],
    ] as const) {
      await tabTo(page, name);
      await page.keyboard.type(typed);
    }
    await untilSaved(page);
    const [wearer] = await stored(set.served.address, 'wearer');
    expect(JSON.stringify(wearer?.body)).toContain('"written":"41 3/8 in"');
  });

  it('starts a make of the blouse', async () => {
    await tabTo(page, 'Start a make for Maren Tolk', 'Shift+Tab');
    await press('Enter');
    await headed('Start a make');
    await tabTo(page, 'Pattern');
    const pattern = page.getByLabel('Pattern', { exact: true });
    for (let tries = 0; tries < 5; tries += 1) {
      if (/blouse/i.test((await pattern.locator('option:checked').textContent()) ?? '')) break;
      await press('ArrowDown');
    }
    await tabTo(page, 'Start it');
    await press('Enter');
    await page.getByRole('heading', { level: 2, name: 'Fit' }).waitFor();
  });

  it('takes the size that is recommended, with its alterations', async () => {
    await tabTo(page, /^Take size \S+ with these alterations$/);
    await press('Enter');
    await untilSaved(page);
    const [make] = await stored(set.served.address, 'make');
    expect(make?.body['size']).not.toBeNull();
  });

  it('alters the bust with the arrows', async () => {
    const slider = page.getByRole('slider', { name: 'Full bust, amount' });
    await tabTo(page, 'Full bust, amount');
    const before = Number(await slider.inputValue());
    await press('ArrowRight', 'ArrowRight', 'ArrowLeft', 'ArrowRight');
    await expect.poll(() => slider.inputValue()).toBe(String(before + 2));
    await untilSaved(page);
    const steps = (await stored(set.served.address, 'make'))[0]?.body['steps'] as
      | readonly { alteration: string; params: { amount: number } }[]
      | undefined;
    const amount = steps?.find(({ alteration }) => alteration === 'full-bust')?.params.amount ?? 0;
    // In inches one stop is a sixteenth.
    expect(amount).toBeCloseTo(((before + 2) * 25.4) / 16, 6);
    await press('Control+z');
    await expect.poll(() => slider.inputValue()).not.toBe(String(before + 2));
    await press('Control+Shift+z');
    await expect.poll(() => slider.inputValue()).toBe(String(before + 2));
  });

  it('goes from passage to passage, and looks closer at what lies on the table', async () => {
    await tabTo(page, 'Seams', 'Shift+Tab');
    await press('Enter');
    await expect.poll(async () => (await focused(page)).name).toBe('Seams');
    const seam = /^Back shoulder to front shoulder: meets/;
    await page.getByRole('group', { name: seam }).waitFor();
    // On the way back to the table the passages above are passed; what was last laid stays on it.
    await tabTo(page, seam, 'Shift+Tab');
    const drawing = page.getByRole('region', { name: 'The table' }).locator('svg g[transform]').first();
    const seen = () => drawing.getAttribute('transform');
    const before = await seen();
    await press('+');
    await expect.poll(seen).not.toBe(before);
    const closer = await seen();
    await press('ArrowRight');
    await expect.poll(seen).not.toBe(closer);
    await press('0');
    await expect.poll(seen).toBe(before);
  });

  it('makes the sheets', async () => {
    await tabTo(page, 'Print');
    await press('Enter');
    await expect.poll(async () => (await focused(page)).name).toBe('Print');
    await tabTo(page, 'Make the sheets');
    await press('Enter');
    await page.getByRole('link', { name: 'Download the PDF' }).waitFor();
    await tabTo(page, 'Download the PDF');
    const [download] = await Promise.all([page.waitForEvent('download'), press('Enter')]);
    expect(download.suggestedFilename()).toMatch(/\.pdf$/);
  });
});
