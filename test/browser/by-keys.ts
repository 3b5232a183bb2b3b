import type { Page } from 'playwright-core';

/** What has the focus: its role as far as it matters here, its name, and whether the eye can see that it has it. */
export interface Focused {
  readonly name: string;
  readonly seen: boolean;
}

export const focused = (page: Page): Promise<Focused> =>
  page.evaluate(() => {
    const element = document.activeElement;
    if (!(element instanceof HTMLElement) || element === document.body) return { name: '', seen: false };
    const label = (element as HTMLInputElement).labels?.[0]?.textContent;
    const style = getComputedStyle(element);
    return {
      name: (element.getAttribute('aria-label') ?? label ?? element.textContent ?? '').trim().slice(0, 100),
      seen: Number.parseFloat(style.outlineWidth) >= 2 && style.outlineStyle !== 'none',
    };
  });

/** More stops than any page has before what is sought. */
const mostStops = 120;

/** Goes on with Tab (back with Shift) until what is so named has the focus. Throws where it never has, or unseen. */
export const tabTo = async (page: Page, name: string | RegExp, key: 'Tab' | 'Shift+Tab' = 'Tab'): Promise<void> => {
  const passed: string[] = [];
  for (let stop = 0; stop < mostStops; stop += 1) {
    await page.keyboard.press(key);
    const now = await focused(page);
    if (typeof name === 'string' ? now.name === name : name.test(now.name)) {
      if (!now.seen) throw new Error(`“${now.name}” has the focus, and nothing shows it`);
      return;
    }
    passed.push(now.name);
  }
  throw new Error(`${key} never comes to ${name}; it passed ${passed.slice(0, 40).join(' | ')}`);
};
