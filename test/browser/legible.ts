import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

/** What a checker of accessibility complains of on the page as it stands: rule, and where. */
export const barriers = async (page: Page): Promise<readonly string[]> => {
  // Its older way needs no page of its own to gather frames, of which there are none here.
  const { violations } = await new AxeBuilder({ page }).setLegacyMode(true).analyze();
  return violations.flatMap(({ id, help, nodes }) =>
    nodes.map((node) => `${id}: ${help}, at ${node.target.join(' ')}: ${node.html.slice(0, 160)}`),
  );
};

/** Words on the page that are seen at less than `least` px, with their size. */
export const smallWords = (page: Page, least = 16): Promise<readonly string[]> =>
  page.evaluate((limit) => {
    const small: string[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const words = node.textContent?.trim() ?? '';
      const element = node.parentElement;
      if (words === '' || !element || !element.checkVisibility({ visibilityProperty: true })) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      const box = range.getBoundingClientRect();
      if (box.width < 1 || box.height < 1 || element.closest('.unseen, .skip, script, style')) continue;
      const style = Number.parseFloat(getComputedStyle(element).fontSize);
      // Words of a drawing are in its own units: what is seen is that by the scale it is drawn at.
      const drawn = element instanceof SVGGraphicsElement ? element.getScreenCTM() : null;
      const size = drawn ? style * Math.hypot(drawn.a, drawn.b) : style;
      if (size < limit - 0.01) small.push(`${size.toFixed(1)} px: ${words.slice(0, 60)}`);
    }
    return small;
  }, least);

/** By how much the page, or the words on it, are wider than their window, px: 0 where nothing has to be pushed sideways to be read. */
export const sideways = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const windows = [document.documentElement, ...document.querySelectorAll('main')];
    return Math.max(...windows.map((element) => element.scrollWidth - element.clientWidth));
  });
