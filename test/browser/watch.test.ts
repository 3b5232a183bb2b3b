import { describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { barriers, sideways, smallWords } from './legible.ts';
import { visit } from './page.ts';
import { stage } from './stage.ts';

describe.skipIf(chromiumPath === null)('motion', () => {
  const set = stage('demo');

  it('there is none where less is asked for', async () => {
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
