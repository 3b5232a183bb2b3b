import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { inOrder } from './in-order.ts';
import { barriers, sideways, smallWords } from './legible.ts';
import { narrow, untilSaved, type Visit, visit } from './page.ts';
import { stage } from './stage.ts';
import { stored } from './workroom.ts';

interface Round {
  readonly garment: string;
  readonly signs: readonly Readonly<Record<string, unknown>>[];
  readonly steps: readonly unknown[];
  readonly taken: readonly string[];
}
interface Step {
  readonly id: string;
  readonly alteration: string;
  readonly params: Readonly<Record<string, unknown>>;
}

describe.skipIf(chromiumPath === null)('reading a fitting', () => {
  inOrder();
  const set = stage('demo');
  let visited: Visit;
  let page: Page;
  let make = '';
  beforeAll(async () => {
    visited = await visit(set.browser, set.served.address);
    page = visited.page;
  });
  const table = () => page.getByRole('region', { name: 'The table' });
  const fitting = () => page.getByRole('region', { name: 'Trying on', exact: true });
  const goTo = (name: string) =>
    page.getByRole('navigation', { name: 'Passages of this make' }).getByRole('link', { name }).click();
  const document = async () => {
    const found = (await stored(set.served.address, 'make')).find(({ id }) => id === make);
    return found?.body as { readonly fittings?: readonly Round[]; readonly steps: readonly Step[] };
  };
  const picture = async (name: string) => {
    const folder = process.env['EASEWRIGHT_PICTURES'];
    if (folder) await page.screenshot({ path: `${folder}/fitting-${name}.png` });
  };

  it('begins a round on a toile, her body on the table', async () => {
    await page.goto('/');
    await page.getByRole('link', { name: 'Go on with it' }).click();
    make = new URL(page.url()).pathname.split('/').at(-1) ?? '';
    await goTo('Trying on');
    await fitting().getByRole('button', { name: 'Begin a round' }).click();
    await fitting()
      .getByRole('heading', { name: /^Round 1: a toile/ })
      .waitFor();
    await expect.poll(() => table().locator('path.ink-body').count()).toBeGreaterThan(0);
    expect(await barriers(page)).toEqual([]);
  });

  it('marks what is seen where it is pressed on the drawing, with what was pinned', async () => {
    await table()
      .getByRole('button', { name: /^Bust: press/ })
      .first()
      .locator('path')
      .first()
      .click();
    await expect.poll(() => fitting().getByLabel('Where', { exact: true }).inputValue()).toBe('bust');
    await fitting().getByRole('radio', { name: 'taut lines' }).check();
    await fitting().getByRole('radio', { name: 'pointing at the fullest place' }).check();
    await fitting().getByLabel('Pinned, or opened by').fill('1.4');
    await fitting().getByRole('button', { name: 'Mark it' }).click();
    await table().getByRole('button', { name: 'Bust: taut lines' }).waitFor();
    // Rays on either half, and the pinned amount written at them.
    await expect.poll(() => table().getByText('1.4 cm').count()).toBe(2);
    await untilSaved(page);
    expect((await document()).fittings?.[0]?.signs).toEqual([
      { zone: 'bust', kind: 'taut', direction: 'to-point', posture: 'standing', half: 'both', pinned: 14 },
    ]);
    await picture('bust');
  });

  it('answers with the likelier first, each and in all, and puts it into the list at one press', async () => {
    const first = fitting().getByRole('listitem').filter({ hasText: 'The bust is fuller than the pattern’s' });
    await first.getByText(/1\.4\scm on each piece, 2\.8\scm in all/).waitFor();
    const before = (await document()).steps.length;
    await first.getByRole('button', { name: /Put into the alterations: Full bust/ }).click();
    await first.getByText(/in the list of alterations now/).waitFor();
    await untilSaved(page);
    const { steps, fittings } = await document();
    expect(steps.length).toBe(before + 1);
    expect(steps.at(-1)).toMatchObject({ alteration: 'full-bust', params: { amount: 14 } });
    expect(fittings?.[0]?.taken).toEqual([steps.at(-1)?.id]);
    await first.scrollIntoViewIfNeeded();
    await picture('answer');
    expect(await barriers(page)).toEqual([]);
  });

  it('looks at tight hips before a sway back, from behind, by the list and the keyboard', async () => {
    await fitting().getByLabel('Where', { exact: true }).selectOption('above-back-waist');
    await expect.poll(() => fitting().getByRole('radio', { name: 'the back', exact: true }).isChecked()).toBe(true);
    await fitting().getByRole('radio', { name: 'slack folds' }).press('Space');
    await fitting().getByRole('radio', { name: 'level, across the body' }).press('Space');
    await fitting().getByRole('button', { name: 'Mark it' }).press('Enter');
    const sway = fitting().getByRole('listitem').filter({ hasText: 'The back is hollow at the waist' });
    await sway.getByText(/Open the side seams from the hip down/).waitFor();
    await sway.getByText(/guess/).waitFor();
    await picture('back');
    await fitting().getByRole('radio', { name: 'the side', exact: true }).check();
    await table()
      .getByRole('button', { name: /^Hip: press/ })
      .waitFor();
    await picture('side');
    expect(await barriers(page)).toEqual([]);
  });

  it('starts the next round from the alterations of the first, and keeps both', async () => {
    await fitting().getByRole('button', { name: 'Begin the next round' }).click();
    await fitting()
      .getByRole('heading', { name: /^Round 2/ })
      .waitFor();
    await untilSaved(page);
    const { steps, fittings } = await document();
    expect(fittings?.map(({ signs }) => signs.length)).toEqual([2, 0]);
    expect(fittings?.[1]?.steps).toEqual(steps);
    await fitting().getByRole('button', { name: 'Look at round 1' }).click();
    await fitting()
      .getByRole('button', { name: /^Take away: Bust: taut lines/ })
      .waitFor();
  });

  it('works by the mirror, on a phone', async () => {
    const phone = await visit(set.browser, set.served.address, { viewport: narrow, hasTouch: true, isMobile: true });
    page = phone.page;
    await page.goto(`/makes/${make}#fitting`);
    await goTo('Trying on');
    await fitting().getByRole('button', { name: 'Look at round 1' }).tap();
    await table()
      .getByRole('button', { name: /^Waist: press/ })
      .waitFor();
    await picture('phone');
    expect(await smallWords(page)).toEqual([]);
    expect(await sideways(page)).toBeLessThanOrEqual(0);
    expect(await barriers(page)).toEqual([]);
    const targets = await fitting()
      .locator('label.choice-option, button, select')
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height).filter((height) => height > 0));
    expect(Math.min(...targets)).toBeGreaterThanOrEqual(43.5);
    expect([...visited.faults, ...phone.faults, ...visited.elsewhere, ...phone.elsewhere]).toEqual([]);
  });
});
