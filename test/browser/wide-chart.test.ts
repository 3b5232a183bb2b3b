import { describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { visit, wide } from './page.ts';
import { stage } from './stage.ts';

describe.skipIf(chromiumPath === null)('a chart wider than the words', () => {
  const set = stage('demo');

  it('scrolls away under the bar of passages, and fades where there is more to the right', async () => {
    const { page } = await visit(set.browser, set.served.address, { viewport: wide });
    await page.goto('/envelopes/demo-rehearsal-dress');
    const chart = page.locator('.scrolls', { has: page.locator('.grid-head') }).first();
    await chart.waitFor();
    // A row's name brought to the height of the bar is not what is seen there.
    const over = await chart.evaluate((element) => {
      const head = element.querySelector('tbody .grid-head') as HTMLElement;
      const bar = document.querySelector('.passage-links') as HTMLElement;
      window.scrollBy({ top: head.getBoundingClientRect().top - 12, behavior: 'instant' });
      const box = head.getBoundingClientRect();
      const seen = document.elementFromPoint(box.left + 12, Math.max(box.top, 0) + 6);
      return { reached: box.top < bar.getBoundingClientRect().bottom, bar: bar.contains(seen) };
    });
    expect(over).toEqual({ reached: true, bar: true });
    const more = () =>
      chart.evaluate((element) => Number.parseFloat(getComputedStyle(element).getPropertyValue('--more')));
    expect(await chart.evaluate((element) => element.scrollWidth > element.clientWidth)).toBe(true);
    await expect.poll(more).toBeGreaterThan(0);
    await chart.evaluate((element) => {
      element.scrollLeft = element.scrollWidth;
    });
    await expect.poll(more).toBe(0);
  });
});
