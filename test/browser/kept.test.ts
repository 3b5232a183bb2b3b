import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { untilSaved, visit } from './page.ts';
import { stage } from './stage.ts';
import { serve, stored } from './workroom.ts';

interface Wearer extends Readonly<Record<string, unknown>> {
  readonly sets: readonly { readonly readings: readonly { readonly measure: string; readonly mm: number }[] }[];
}

describe.skipIf(chromiumPath === null)('nothing she typed is lost', () => {
  const set = stage('demo');
  const her = '/wearers/demo-runa';
  const field = (page: Page, name: string) => page.getByLabel(name, { exact: true });
  const last = async (measure: string): Promise<number | undefined> => {
    const wearers = await stored(set.served.address, 'wearer');
    const wearer = wearers.find(({ id }) => id === 'demo-runa')?.body as Wearer | undefined;
    return wearer?.sets.flatMap(({ readings }) => readings.filter((one) => one.measure === measure)).at(-1)?.mm;
  };
  const opened = async (page: Page) => {
    await page.goto(her);
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.getByRole('radio', { name: 'centimetres' }).click();
    await field(page, 'Bust girth').waitFor();
  };

  it('when two tabs change one wearer: both versions are shown, and the other can be had back', async () => {
    const { context, page: first, elsewhere, faults } = await visit(set.browser, set.served.address);
    const second = await context.newPage();
    await opened(first);
    await opened(second);
    await first.bringToFront();
    await field(first, 'Bust girth').fill('101.5');
    await untilSaved(first);
    expect(await last('bustGirth')).toBe(1015);

    await second.bringToFront();
    await field(second, 'Hip girth').fill('112.5');
    const conflict = second.getByRole('alert', { name: 'This was changed somewhere else too' });
    await conflict.waitFor();
    // Both versions, side by side, and nothing stored over the other yet.
    await conflict.getByRole('row').filter({ hasText: 'Bust girth' }).filter({ hasText: '101.5' }).waitFor();
    await conflict.getByRole('row').filter({ hasText: 'Hip girth' }).filter({ hasText: '112.5' }).waitFor();
    expect([await last('bustGirth'), (await last('hipGirth')) === 1125]).toEqual([1015, false]);
    // More can be typed meanwhile.
    await field(second, 'Arm length').fill('60.5');

    await conflict.getByRole('button', { name: 'Keep what is on this page' }).click();
    await untilSaved(second);
    expect([await last('hipGirth'), await last('armLength')]).toEqual([1125, 605]);
    await second.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => field(second, 'Bust girth').inputValue()).toBe('101.5');
    await untilSaved(second);
    await expect.poll(() => last('bustGirth')).toBe(1015);
    await second.getByRole('button', { name: 'Do again' }).click();
    await untilSaved(second);
    await expect.poll(() => last('hipGirth')).toBe(1125);

    // The first tab has meanwhile become the stale one; it may take the other's.
    await first.bringToFront();
    await field(first, 'Waist girth').fill('83.5');
    const stale = first.getByRole('alert', { name: 'This was changed somewhere else too' });
    await stale.getByRole('button', { name: 'Take the saved one' }).click();
    await expect.poll(() => field(first, 'Hip girth').inputValue()).toBe('112.5');
    expect(await last('hipGirth')).toBe(1125);
    await first.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => field(first, 'Waist girth').inputValue()).toBe('83.5');
    await untilSaved(first);
    expect(elsewhere).toEqual([]);
    // A refusal of a stale save is the one thing the console may have heard of.
    expect(faults.filter((fault) => !fault.includes('409'))).toEqual([]);
    await context.close();
  });

  it('when the program is stopped while she types: it is said, and saved when it is there again', async () => {
    const { context, page, elsewhere } = await visit(set.browser, set.served.address);
    await opened(page);
    await set.served.stop();
    await field(page, 'Bust girth').fill('102.5');
    await page.getByText('The workroom does not answer', { exact: false }).first().waitFor();
    await page.getByText(/^Not saved yet/).waitFor();
    await field(page, 'Back waist length').fill('41.5');
    set.served = await serve(set.folder, set.served.port);
    await untilSaved(page);
    await expect.poll(async () => [await last('bustGirth'), await last('backWaistLength')]).toEqual([1025, 415]);
    await page.getByText('The workroom does not answer', { exact: false }).first().waitFor({ state: 'hidden' });
    expect(elsewhere).toEqual([]);
    await context.close();
  });

  it('when the page is closed before the program is there again', async () => {
    const { context, page } = await visit(set.browser, set.served.address);
    await opened(page);
    await set.served.stop();
    await field(page, 'Bust girth').fill('103.5');
    await page.getByText(/^Not saved yet/).waitFor();
    await page.close();
    set.served = await serve(set.folder, set.served.port);
    expect(await last('bustGirth')).toBe(1025);
    const again = await context.newPage();
    await again.goto(her);
    await expect.poll(() => field(again, 'Bust girth').inputValue()).toBe('103.5');
    await untilSaved(again);
    await expect.poll(() => last('bustGirth')).toBe(1035);
    await context.close();
  });

  it('when she leaves the page at once', async () => {
    const { context, page } = await visit(set.browser, set.served.address);
    await opened(page);
    await field(page, 'Bust girth').fill('99.5');
    await page.close({ runBeforeUnload: true });
    await expect.poll(() => last('bustGirth'), { timeout: 5000 }).toBe(995);
    await context.close();
  });

  it('when a wearer is taken away: she can be put back', async () => {
    const { context, page } = await visit(set.browser, set.served.address);
    await opened(page);
    const name = await page.getByRole('heading', { level: 1 }).textContent();
    await page.getByRole('button', { name: 'Take this wearer away' }).click();
    await page.getByRole('heading', { level: 1, name: 'Wearers' }).waitFor();
    expect(await page.getByRole('link', { name: name ?? '', exact: true }).count()).toBe(0);
    await page.getByRole('button', { name: 'Put it back' }).click();
    await page.getByRole('link', { name: name ?? '', exact: true }).click();
    await expect.poll(() => field(page, 'Bust girth').inputValue()).toBe('99.5');
    await context.close();
  });
});
