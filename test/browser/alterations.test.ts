import type { Locator, Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { chromiumPath } from './chromium.ts';
import { inOrder } from './in-order.ts';
import { barriers, sideways, smallWords } from './legible.ts';
import { narrow, untilSaved, visit } from './page.ts';
import { stage } from './stage.ts';
import { stored } from './workroom.ts';

interface Step {
  readonly alteration: string;
  readonly params: Readonly<Record<string, number | string>>;
}

describe.skipIf(chromiumPath === null)('the alterations of a make', () => {
  inOrder();
  const set = stage('demo');
  let page: Page;
  let faults: readonly string[];
  let alterations: Locator;
  const grip = () => page.getByRole('slider', { name: /^Full bust: drag/ });
  /** The list as the workroom has it, of the make of this name. */
  const stepsOf = async (name: string): Promise<readonly Step[]> => {
    await untilSaved(page);
    const make = (await stored(set.served.address, 'make')).find(({ body }) => body['name'] === name);
    return (make?.body['steps'] ?? []) as readonly Step[];
  };
  const bustOf = async (name: string) =>
    (await stepsOf(name)).find(({ alteration }) => alteration === 'full-bust')?.params;
  const startMake = async (name: string) => {
    await page.goto('/#/');
    await page.getByRole('link', { name: 'Start a make' }).first().click();
    await page.getByRole('heading', { level: 1, name: 'Start a make' }).waitFor();
    const pattern = page.getByLabel('Pattern', { exact: true });
    const blouse = await pattern
      .locator('option', { hasText: /blouse/i })
      .first()
      .getAttribute('value');
    await pattern.selectOption(blouse ?? '');
    await page.getByLabel('What you call it').fill(name);
    await page.getByRole('button', { name: 'Start it' }).click();
    await page.getByRole('heading', { level: 2, name: 'Alterations' }).waitFor();
    alterations = page.getByRole('region', { name: 'Alterations', exact: true });
  };

  beforeAll(async () => {
    const seen = await visit(set.browser, set.served.address);
    page = seen.page;
    faults = seen.faults;
    await page.goto('/');
  });

  it('finds one by what it is for, and says of the others what the garment lacks', async () => {
    await startMake('First trial');
    await alterations.getByLabel('Find an alteration').fill('fuller bust');
    await alterations.getByRole('button', { name: 'Add Full bust to the list' }).waitFor();
    expect(await alterations.getByRole('button', { name: 'Add Lengthen or shorten to the list' }).count()).toBe(0);
    await alterations.getByLabel('Find an alteration').fill('nothing of the kind');
    await alterations.getByText('Nothing of that name or use.', { exact: false }).waitFor();
    await alterations.getByLabel('Find an alteration').fill('fuller bust');
    await alterations.getByRole('button', { name: 'Add Full bust to the list' }).click();
    await grip().waitFor();
  });

  it('changes the amount by dragging the bust point', async () => {
    await alterations.getByLabel('On each half of the front').fill('1.0');
    await expect.poll(() => grip().getAttribute('aria-valuetext')).toMatch(/^1\.0\scm on each half/);
    await grip().scrollIntoViewIfNeeded();
    const box = await grip().boundingBox();
    if (!box) throw new Error('the grip is not seen');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await page.mouse.move(x, y);
    await page.mouse.down();
    for (let far = 1; far <= 6; far += 1) await page.mouse.move(x, y + far);
    // The bust point goes out: which way that is on the screen, the way of its arrow says.
    const line = page.locator('.grip-way');
    const out = Number(await line.getAttribute('x2')) - Number(await line.getAttribute('x1'));
    for (let far = 1; far <= 6; far += 1) await page.mouse.move(x + Math.sign(out) * far * 2, y + 6);
    const moved = await grip().boundingBox();
    await page.mouse.up();
    const params = await bustOf('First trial');
    expect(params?.['amount']).toBeGreaterThan(12);
    expect(params?.['amount']).toBeLessThan(60);
    // The point went under the hand, and not by itself.
    expect(Math.sign(out) * ((moved?.x ?? 0) - box.x)).toBeGreaterThan(3);
  });

  it('stops where the dart is used up', async () => {
    await alterations.getByLabel('Find an alteration').fill('small bust');
    await alterations.getByRole('button', { name: 'Add Small bust to the list' }).click();
    // Left out, the first step leaves the pieces as drafted.
    await alterations.getByRole('checkbox', { name: 'Count in: Full bust' }).uncheck();
    await alterations.getByRole('checkbox', { name: 'Count in: Small bust' }).focus();
    const small = page.getByRole('slider', { name: /^Small bust: drag/ });
    await small.focus();
    await page.keyboard.press('End');
    const amount = async () =>
      Number((await stepsOf('First trial')).find(({ alteration }) => alteration === 'small-bust')?.params['amount']);
    // 40 mm are asked for; no dart of the blouse holds 20.
    await expect.poll(amount).toBeLessThan(20);
    expect(await amount()).toBeGreaterThan(9);
    expect(await alterations.locator('.step .field-trouble button').count()).toBe(0);
    await alterations.getByRole('button', { name: 'Take Small bust off the list' }).click();
    await alterations.getByRole('checkbox', { name: 'Count in: Full bust' }).check();
    await alterations.getByLabel('On each half of the front').fill('1.5');
    expect((await bustOf('First trial'))?.['amount']).toBeCloseTo(15, 6);
  });

  it('changes it by keys, a stop at a time', async () => {
    const before = Number((await bustOf('First trial'))?.['amount']);
    await grip().focus();
    await page.keyboard.press('PageUp');
    const more = Number((await bustOf('First trial'))?.['amount']);
    expect(more - before).toBeCloseTo(10, 6);
    await page.keyboard.press('PageDown');
    expect(Number((await bustOf('First trial'))?.['amount'])).toBeCloseTo(before, 6);
    const by = await page.evaluate(() => document.activeElement?.getAttribute('role'));
    expect(by).toBe('slider');
  });

  it('says what follows on the rest', async () => {
    const follows = alterations.getByRole('region', { name: 'What follows on the rest' });
    // The bust changes no seam: the side keeps its length with its dart closed.
    expect(await follows.getByText(/^Seams that changed/).count()).toBe(0);
    await follows.getByText(/^Finished bust: .* before, .* now$/).waitFor();
    await follows.getByText(/cm² more cloth/).waitFor();
  });

  it('is done on one half where asked', async () => {
    await alterations.getByText('Where and how', { exact: false }).click();
    await alterations.getByRole('radio', { name: 'Left', exact: true }).check();
    expect((await bustOf('First trial'))?.['side']).toBe('left');
    await alterations.getByRole('radio', { name: 'Both', exact: true }).check();
    expect((await bustOf('First trial'))?.['side']).toBe('both');
  });

  it('turns an amount the other way in the words of the alteration', async () => {
    await alterations.getByLabel('Find an alteration').fill('lengthen');
    await alterations.getByRole('button', { name: 'Add Lengthen or shorten to the list' }).click();
    await alterations.getByRole('radio', { name: 'Shorten', exact: true }).check();
    await alterations.getByLabel('By how much').fill('1.5');
    const shortened = (await stepsOf('First trial')).find(({ alteration }) => alteration === 'lengthen-shorten');
    expect(shortened?.params['amount']).toBeCloseTo(-15, 6);
    await page.getByRole('slider', { name: /^Lengthen or shorten: drag/ }).waitFor();
    await alterations.getByText(/^Seams that changed and still meet: .*side/).waitFor();
  });

  it('copies a step, takes it off, and puts it back after other edits', async () => {
    await alterations.getByRole('button', { name: 'Do Lengthen or shorten once more' }).click();
    await expect.poll(async () => (await stepsOf('First trial')).length).toBe(3);
    await alterations.getByRole('button', { name: 'Take Lengthen or shorten off the list' }).last().click();
    await expect.poll(async () => (await stepsOf('First trial')).length).toBe(2);
    await alterations.getByLabel('On each half of the front').fill('1.4');
    await alterations.getByRole('button', { name: /^Put back Lengthen or shorten/ }).click();
    await expect.poll(async () => (await stepsOf('First trial')).length).toBe(3);
    expect((await bustOf('First trial'))?.['amount']).toBeCloseTo(14, 6);
  });

  it('can be read by everyone, and on a phone', async () => {
    expect(await barriers(page)).toEqual([]);
    await page.setViewportSize(narrow);
    expect(await sideways(page)).toBe(0);
    expect(await smallWords(page)).toEqual([]);
    await page.setViewportSize({ width: 1600, height: 1000 });
  });

  it('is kept for the wearer with the reason, and offered on her next make', async () => {
    await alterations
      .getByRole('button', { name: /^Keep for / })
      .first()
      .click();
    await alterations.getByLabel(/^Why it is usual for/).fill('Drag lines from the bust');
    await alterations.getByRole('button', { name: 'Keep it', exact: true }).click();
    await alterations.getByText(/^Kept for /).waitFor();
    await expect
      .poll(async () => JSON.stringify((await stored(set.served.address, 'wearer')).map(({ body }) => body['usual'])))
      .toContain('Drag lines from the bust');
    await startMake('Second trial');
    const usual = alterations.getByRole('region', { name: /^Usually altered for / });
    await usual.getByText('Drag lines from the bust', { exact: false }).waitFor();
    await usual.getByRole('button', { name: 'Take Full bust' }).click();
    await expect.poll(async () => (await bustOf('Second trial'))?.['amount']).toBeCloseTo(14, 6);
    expect(await usual.count()).toBe(0);
  });

  it('says an amount on one half as of that half, and still offers what can be done after it', async () => {
    await alterations.getByLabel('Find an alteration').fill('sloping');
    await alterations.getByRole('button', { name: 'Add Shoulders squarer or more sloping to the list' }).click();
    const step = alterations.getByRole('listitem', { name: /Shoulders squarer/ });
    await step.getByText('Where and how', { exact: false }).click();
    await step.getByRole('radio', { name: 'Left', exact: true }).check();
    await step.getByRole('radio', { name: 'Lower', exact: true }).check();
    await step.getByLabel('By how much').fill('1.0');
    await step.getByText(/^Lower: 1\.0\scm on the left half only$/).waitFor();
    expect(await step.getByLabel('In all').count()).toBe(0);
    await alterations.getByLabel('Find an alteration').fill('shoulders');
    await alterations.getByRole('button', { name: 'Add Shoulders broader or narrower to the list' }).waitFor();
  });

  it('moves a dart along its new edge by hand, and names what it means whatever the order', async () => {
    await alterations.getByLabel('Find an alteration').fill('move a dart');
    await alterations.getByRole('button', { name: 'Add Move a dart to the list' }).click();
    const step = alterations.getByRole('listitem', { name: /Move a dart/ });
    await step.getByLabel('To which edge').selectOption({ label: 'Front hem' });
    const along = page.getByRole('slider', { name: /^Move a dart, how far along/ });
    await along.focus();
    await page.keyboard.press('PageUp');
    await step.getByText('How far along it: 60 %').waitFor();
    const moved = (await stepsOf('Second trial')).at(-1);
    expect(moved?.params).toMatchObject({ dart: 'front/bust', to: 'front/hem' });
    expect(Number(moved?.params['at'])).toBeCloseTo(0.6, 6);
    await alterations.getByLabel('Find an alteration').fill('gathers');
    await alterations.getByRole('button', { name: 'Add Dart let go into gathers, tucks or ease to the list' }).click();
    await alterations.getByRole('button', { name: /^Do Dart let go .* earlier$/ }).click();
    await alterations
      .getByText('“Front hem dart” is not there where this step stands in the list.', { exact: false })
      .waitFor();
    expect(await alterations.getByText(/front\/hem/).count()).toBe(0);
    await alterations.getByRole('button', { name: /^Do Dart let go .* later$/ }).click();
  });

  it('puts back every step that was taken off', async () => {
    const before = (await stepsOf('Second trial')).map(({ alteration }) => alteration);
    await alterations.getByRole('button', { name: /^Take Dart let go .* off the list$/ }).click();
    await alterations.getByRole('button', { name: 'Take Move a dart off the list' }).click();
    await alterations.getByRole('button', { name: /^Put back Move a dart/ }).click();
    await alterations.getByRole('button', { name: /^Put back Dart let go/ }).click();
    await expect.poll(async () => (await stepsOf('Second trial')).map(({ alteration }) => alteration)).toEqual(before);
    expect(faults).toEqual([]);
  });
});
