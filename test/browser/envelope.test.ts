import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Locator, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readPdf } from '../oracle/read-pdf.ts';
import { focused } from './by-keys.ts';
import { chromiumPath, openBrowser } from './chromium.ts';
import { envelopePicture, harbourDress } from './envelope-picture.ts';
import { inOrder } from './in-order.ts';
import { barriers, sideways, smallWords } from './legible.ts';
import { narrow, untilSaved, type Visit, visit, wide } from './page.ts';
import { begin, newFolder, removeFolder, type Served, serve, stored } from './workroom.ts';

const inch = 25.4;

/** Fuller in the bust than the pattern is drafted for, and longer in the waist. */
const wearer = {
  format: 'easewright-wearer/1',
  name: 'Sunniva Rask',
  comparedWith: 'women',
  sets: [
    {
      id: 'm1',
      date: '2026-03-14',
      waistAt: 'narrowest',
      readings: Object.entries({
        stature: 1680,
        bustGirth: 990,
        upperBustGirth: 870,
        waistGirth: 740,
        hipGirth: 990,
        backWaistLength: 430,
        armLength: 580,
        upperArmGirth: 300,
      }).map(([measure, mm]) => ({ measure, side: 'both', mm, written: `${mm / 10} cm` })),
      note: '',
    },
  ],
  note: '',
};

interface Kept {
  readonly sizes: readonly string[];
  readonly views: readonly { readonly id: string }[];
  readonly body: readonly { readonly measure: string; readonly figures: readonly unknown[] }[];
  readonly finished: readonly {
    readonly of: string;
    readonly view: string | null;
    readonly label: string;
    readonly figures: readonly number[];
  }[];
  readonly clothNeeded: readonly {
    readonly view: string;
    readonly width: number;
    readonly figures: readonly number[];
  }[];
  readonly kept: readonly string[];
  readonly flat: readonly unknown[];
  readonly photographs: readonly string[];
  readonly draftedCup: number | null;
  readonly owned: Readonly<Record<string, unknown>>;
}

const keep = async (address: string, kind: string, body: unknown): Promise<void> => {
  const answer = await fetch(`${address}/api/documents`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: address },
    body: JSON.stringify({ kind, body }),
  });
  if (!answer.ok) throw new Error(await answer.text());
};

describe.skipIf(chromiumPath === null)('a bought pattern, from its envelope to printed cards', () => {
  inOrder();
  const folder = newFolder();
  let served: Served;
  let browser: Browser;
  let visited: Visit;
  let page: Page;
  let place = '';

  beforeAll(async () => {
    [served, browser] = await Promise.all([serve(folder), openBrowser()]);
    await begin(served.address, 'own');
    await keep(served.address, 'wearer', wearer);
    visited = await visit(browser, served.address);
    await visited.context.grantPermissions(['clipboard-read', 'clipboard-write']);
    page = visited.page;
  });
  afterAll(async () => {
    await browser?.close();
    await served?.stop();
    removeFolder(folder);
  });

  const passage = (name: string): Locator => page.getByRole('region', { name, exact: true });
  const kept = async (): Promise<Kept> => (await stored(served.address, 'envelope'))[0]?.body as unknown as Kept;
  const cell = (row: string, size: string): Locator => page.getByLabel(`${row}, size ${size}`, { exact: true });
  const paste = async (into: Locator, text: string) => {
    await page.evaluate((words) => navigator.clipboard.writeText(words), text);
    await into.click();
    await page.keyboard.press('ControlOrMeta+V');
  };

  it('is begun by its name, and says what it is', async () => {
    await page.goto('/patterns');
    const start = passage('Bring in a pattern from its envelope');
    await start.getByLabel('What it is called').fill(harbourDress.name);
    await start.getByRole('button', { name: 'Begin the envelope' }).click();
    await page.getByRole('heading', { level: 1, name: harbourDress.name }).waitFor();
    place = new URL(page.url()).pathname;
    const what = passage('What it is');
    await what.getByLabel('Who sells it').fill(harbourDress.house);
    await what.getByLabel('Its number').fill(harbourDress.number);
    await what.getByLabel('A pattern for a').selectOption({ label: 'dress' });
    await what.getByRole('radio', { name: 'inches' }).click();
    await untilSaved(page);
    expect(await kept()).toMatchObject({ printedIn: 'inches', kind: 'dress', number: '63' });
  });

  it('keeps a photograph of it, upright and without what the camera adds, and lays it on the table', async () => {
    const taken = await sharp(await envelopePicture())
      .withExif({ IFD0: { Make: 'Kvist' }, IFD3: { GPSLatitude: '62/1 28/1 0/1' } })
      .toBuffer();
    const file = join(folder, 'envelope.jpg');
    writeFileSync(file, taken);
    const photographs = passage('Photograph of the envelope');
    await photographs.getByLabel('Photograph of the envelope', { exact: true }).setInputFiles(file);
    const picture = photographs.getByRole('img', { name: `Photograph 1 of the envelope of ${harbourDress.name}` });
    await picture.waitFor();
    await expect.poll(() => picture.evaluate((image) => (image as HTMLImageElement).naturalWidth)).toBe(1000);
    await page.getByRole('region', { name: 'The table' }).locator('image.photograph').waitFor();
    await untilSaved(page);
    const [id = ''] = (await kept()).photographs;
    const answer = await fetch(`${served.address}/api/photographs/${id}`);
    const bytes = Buffer.from(await answer.arrayBuffer());
    expect([answer.headers.get('content-type'), (await sharp(bytes).metadata()).exif]).toEqual([
      'image/jpeg',
      undefined,
    ]);
    expect(bytes.includes('Kvist')).toBe(false);
  });

  it('refuses what is no photograph, in words, and keeps the one there is', async () => {
    const file = join(folder, 'list.jpg');
    writeFileSync(file, 'thread, needles, tea');
    const photographs = passage('Photograph of the envelope');
    await photographs.getByLabel('Photograph of the envelope', { exact: true }).setInputFiles(file);
    await photographs.getByRole('alert').getByText('This is not a photograph that can be kept here.').waitFor();
    expect(await photographs.getByRole('img').count()).toBe(1);
    visited.faults.length = 0;
  });

  it('takes a photograph away, and has it back by undo', async () => {
    const photographs = passage('Photograph of the envelope');
    await photographs.getByRole('button', { name: 'Take photograph 1 away' }).click();
    await photographs.getByText('No photograph yet.').waitFor();
    await untilSaved(page);
    await page.getByRole('button', { name: 'Undo' }).click();
    const picture = photographs.getByRole('img');
    await picture.waitFor();
    await expect.poll(() => picture.evaluate((image) => (image as HTMLImageElement).naturalWidth)).toBe(1000);
    await photographs.getByRole('button', { name: 'Lay photograph 1 on the table' }).click();
    await page.getByRole('region', { name: 'The table' }).locator('image.photograph').waitFor();
    await untilSaved(page);
    expect((await kept()).photographs).toHaveLength(1);
    // The browser complains of the picture that was gone for a moment.
    visited.faults.length = 0;
  });

  it('reads a pasted body chart with fractions and ranges into a table at once', async () => {
    const chart = passage('Body chart');
    await paste(chart.getByLabel('The body chart, line by line as it is printed'), harbourDress.body.join('\n'));
    await chart.getByText('Read: 4 rows in 5 sizes.').waitFor();
    expect(await cell('Bust girth', 'M').inputValue()).toBe('35–36');
    expect(await cell('Back waist length', 'L').inputValue()).toBe('16½');
    await untilSaved(page);
    const { sizes, body } = await kept();
    expect(sizes).toEqual(['XS', 'S', 'M', 'L', 'XL']);
    expect(body.find(({ measure }) => measure === 'hipGirth')?.figures[3]).toEqual([1016, 1066.8]);
    // The photograph it is read from stays on the table until she asks for the chart as a picture.
    const table = page.getByRole('region', { name: 'The table' });
    expect(await table.locator('image.photograph').count()).toBe(1);
    await chart.getByLabel('On the table').selectOption({ label: 'the chart as a picture' });
    await table
      .getByText(/99\.0 cm|39″/)
      .first()
      .waitFor({ state: 'attached' });
    await table.locator('path.ink-body').first().waitFor({ state: 'attached' });
  });

  it('goes from cell to cell by keys, and types as it is printed', async () => {
    await cell('Waist girth', 'S').focus();
    await page.keyboard.press('Enter');
    expect((await focused(page)).name).toBe('Hip girth, size S');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.press('ArrowRight');
    expect((await focused(page)).name).toBe('Waist girth, size M');
    // Within what was typed the arrow moves by letters, as anywhere.
    await page.keyboard.press('Home');
    await page.keyboard.press('ArrowRight');
    expect((await focused(page)).name).toBe('Waist girth, size M');
    await cell('Waist girth', 'M').fill('28 1/2–29');
    await page.keyboard.press('Tab');
    expect((await focused(page)).name).toBe('Waist girth, size L');
    await expect.poll(() => cell('Waist girth', 'M').inputValue()).toBe('28½–29');
    // A block of cells copied from elsewhere goes in from the cell it is pasted into.
    await paste(cell('Waist girth', 'XS'), '23–24\t25–26\n33 1/2–34 1/2\t35 1/2–36 1/2\n');
    await expect.poll(() => cell('Hip girth', 'S').inputValue()).toBe('35½–36½');
    expect(await cell('Waist girth', 'XS').inputValue()).toBe('23–24');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => cell('Hip girth', 'S').inputValue()).toBe('36–37');
    // What does not read stays as typed, and is said.
    await cell('Waist girth', 'M').fill('twenty');
    await page.keyboard.press('Tab');
    await passage('Body chart').getByText('does not read as a figure').waitFor();
    await untilSaved(page);
    await page.reload();
    await page.getByRole('heading', { level: 1, name: harbourDress.name }).waitFor();
    expect(await cell('Waist girth', 'M').inputValue()).toBe('twenty');
    await cell('Waist girth', 'M').fill('28–29');
    await page.keyboard.press('Enter');
    await untilSaved(page);
    expect((await kept()).body.find(({ measure }) => measure === 'waistGirth')?.figures[2]).toEqual([711.2, 736.6]);
  });

  it('asks about a row it does not know, and doubts a slip of the printer’s beside its cell', async () => {
    const chart = passage('Finished measurements');
    await paste(
      chart.getByLabel('The finished measurements, line by line as they are printed'),
      harbourDress.finished.join('\n'),
    );
    await chart.getByText(/^Read: 8 rows/).waitFor();
    await chart.getByLabel('“Bell of the sleeve” is').selectOption({ label: 'Round the sleeve hem' });
    await expect.poll(async () => await cell('Round the sleeve hem, all views', 'M').inputValue()).toBe('20');
    // 37 1/2 between 32 1/2 and 38.
    const correct = chart.getByRole('button', { name: 'Correct it: Waist, all views' }).first();
    await correct.waitFor();
    await correct.click();
    expect((await focused(page)).name).toBe('Waist, all views, size L');
    await page.keyboard.type('35 1/2');
    await page.keyboard.press('Enter');
    await correct.waitFor({ state: 'hidden' });
    await untilSaved(page);
    const waist = (await kept()).finished.find(({ of }) => of === 'waist');
    expect(waist?.figures[3]).toBeCloseTo(35.5 * inch, 6);
    expect((await kept()).views.map(({ id }) => id)).toEqual(['A', 'B', 'C']);
  });

  it('takes “it is printed so” for an answer, and does not ask again', async () => {
    const chart = passage('Finished measurements');
    await cell('Hip, View C', 'L').fill('47');
    await page.keyboard.press('Enter');
    const so = chart.getByRole('button', { name: 'It is printed so: Hip, View C' }).first();
    await so.waitFor();
    // “Correct it” puts the cursor into the row, and it stays there.
    await chart.getByRole('button', { name: 'Correct it: Hip, View C' }).first().click();
    await page.waitForTimeout(1000);
    expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toMatch(
      /^Hip, View C, size /,
    );
    for (;;) {
      if ((await so.count()) === 0) break;
      await so.click();
      await page.waitForTimeout(900);
    }
    await untilSaved(page);
    expect((await kept()).kept.length).toBeGreaterThan(0);
    await page.reload();
    await page.getByRole('heading', { level: 1, name: harbourDress.name }).waitFor();
    await page.waitForTimeout(1000);
    expect(await so.count()).toBe(0);
    await cell('Hip, View C', 'L').fill('43 1/2');
    await page.keyboard.press('Enter');
    await untilSaved(page);
  });

  it('loses nothing of a paste that is no chart', async () => {
    const chart = passage('Cloth needed');
    const box = chart.getByLabel('The cloth needed, line by line as it is printed');
    const letter = 'Dear Oda,\nthe thread was 3 crowns and the needles went missing again.';
    const before = await kept();
    await paste(box, letter);
    await chart.getByRole('alert').waitFor();
    expect(await chart.getByRole('alert').textContent()).toContain('stay in the box');
    await page.reload();
    await page.getByRole('heading', { level: 1, name: harbourDress.name }).waitFor();
    expect(await box.inputValue()).toBe(letter);
    expect(await kept()).toEqual(before);
    await chart.getByRole('button', { name: 'Empty the box' }).click();
    expect(await box.inputValue()).toBe('');
  });

  it('reads cloth needed by view and width, and reckons it for another width as an estimate', async () => {
    const chart = passage('Cloth needed');
    await paste(chart.getByLabel('The cloth needed, line by line as it is printed'), harbourDress.cloth.join('\n'));
    await chart.getByText('Read: 6 rows in 5 sizes.').waitFor();
    expect(await cell('View B, cloth 60″ wide', 'L').inputValue()).toBe('3');
    await untilSaved(page);
    const rows = (await kept()).clothNeeded;
    expect(rows.find(({ view, width }) => view === 'A' && Math.abs(width - 45 * inch) < 1)?.figures[2]).toBeCloseTo(
      3 * 914.4,
      3,
    );
    const convert = page.getByRole('region', { name: 'In another width' });
    await convert.getByLabel('Usable width').fill('140');
    const said = await convert.getByText(/^Estimate: buy/).textContent();
    const metres = Number(/buy\s([\d.]+)\sm/.exec(said ?? '')?.[1]);
    // Never less than the area it was cut from on the narrower cloth.
    expect(metres * 1000 * 1400).toBeGreaterThanOrEqual(3 * 914.4 * 45 * inch * 0.75);
    expect(metres).toBeLessThan(3.2);
  });

  it('takes a piece measured flat in place of what is not printed, and shows where the tape goes', async () => {
    const chart = passage('Finished measurements');
    await chart.getByText('Not printed, and wanted to judge the fit: upper arm.').waitFor();
    await chart.getByRole('button', { name: 'Measure a piece flat' }).click();
    const editor = page.getByRole('region', { name: 'Measure a piece flat' });
    await editor.getByLabel('Size', { exact: true }).selectOption('M');
    const table = page.getByRole('region', { name: 'The table' });
    await table.getByText('tape').first().waitFor({ state: 'attached' });
    expect(await editor.getByText('Leave out:').isVisible()).toBe(true);
    await editor.getByLabel('Measured flat, from edge to edge').fill('41.2');
    await editor.getByLabel('Seam allowances within that').fill('3.2');
    await editor.getByText('This comes to 38.0 cm finished.').waitFor();
    // Half measured and the page left: it is taken up again where it was.
    await page.reload();
    await editor.getByText('This comes to 38.0 cm finished.').waitFor();
    await editor.getByRole('button', { name: 'Keep it' }).click();
    await chart.getByText('Upper arm, size M, all views: 38.0 cm, measured flat').waitFor();
    await untilSaved(page);
    expect((await kept()).flat).toHaveLength(1);
  });

  it('keeps allowance, cup and what else she has of it', async () => {
    const sheet = passage('Notions, allowance and advice');
    await sheet.getByLabel('Notions for all views').fill('Zip 20 in\nThread');
    await sheet.getByLabel('Seam allowance included').fill('1.5');
    await sheet.getByLabel('Drafted for a bust larger than the upper bust by').fill('2 in');
    const owned = passage('What else you have of it');
    await owned.getByLabel('Where it lies').fill('The tin under the window');
    await owned.getByRole('group', { name: 'Sizes traced' }).getByLabel('M').check();
    await owned.getByLabel('How it is drafted').fill('Shoulders run broad.');
    await untilSaved(page);
    expect(await kept()).toMatchObject({
      draftedCup: 2 * inch,
      owned: { where: 'The tin under the window', traced: ['M'], drafting: 'Shoulders run broad.' },
    });
  });

  it.each([
    ['wide', wide],
    ['on a phone', narrow],
  ] as const)('can be read and used by all, %s', async (_, viewport) => {
    await page.setViewportSize(viewport);
    await page.waitForTimeout(300);
    for (const summary of await page.locator('summary').all()) await summary.click();
    expect({ barriers: await barriers(page), small: await smallWords(page), sideways: await sideways(page) }).toEqual({
      barriers: [],
      small: [],
      sideways: 0,
    });
    for (const summary of await page.locator('summary').all()) await summary.click();
    await page.setViewportSize(wide);
  });

  it('opens as a make: a starting size from the figures, with reasons and what is not known', async () => {
    await page.goto(place);
    await page.getByRole('link', { name: 'Start a make from it' }).click();
    await page.getByRole('heading', { level: 1, name: 'Start a make' }).waitFor();
    await page.getByLabel('View', { exact: true }).selectOption({ label: 'View B' });
    await page.getByRole('button', { name: 'Start it' }).click();
    const fit = passage('Fit');
    await fit.getByRole('heading', { name: /^Start from size [A-Z]+$/ }).waitFor();
    await fit.getByText('This pattern is known by its envelope').waitFor();
    await fit
      .getByRole('button', { name: /^Take size [A-Z]+ with these alterations$/ })
      .first()
      .click();
    await untilSaved(page);
    const [make] = await stored(served.address, 'make');
    expect(make?.body).toMatchObject({ view: 'B', size: expect.any(String) });
    const steps = make?.body['steps'] as readonly { readonly alteration: string }[];
    expect(steps.map(({ alteration }) => alteration)).toContain('full-bust');
  });

  it('has a card for each alteration, drawn, and prints them', async () => {
    const cards = passage('Alterations');
    await cards.getByRole('heading', { name: /Full bust/ }).waitFor();
    await cards.getByRole('heading', { name: /Full bust/ }).click();
    const table = page.getByRole('region', { name: 'The table' });
    await table.locator('path.ink-changed').first().waitFor({ state: 'attached' });
    await cards.getByRole('button', { name: 'Print the cards' }).click();
    const link = cards.getByRole('link', { name: 'Download the cards' });
    await link.waitFor();
    const [download] = await Promise.all([page.waitForEvent('download'), link.click()]);
    const file = join(folder, 'cards.pdf');
    await download.saveAs(file);
    const pdf = await readPdf(new Uint8Array(readFileSync(file)));
    const words = pdf.pages.flatMap((one) => one.texts.map(({ text }) => text)).join(' ');
    const [make] = await stored(served.address, 'make');
    const steps = make?.body['steps'] as readonly { readonly on: boolean }[];
    expect(pdf.pages.length).toBeGreaterThanOrEqual(steps.filter(({ on }) => on).length);
    expect(words).toMatch(/full bust/i);
    expect(words).toContain(harbourDress.name);
    expect(words).toContain('View B');
    // Amounts both ways, and no more of the wearer than the make's own name says.
    expect(words).toMatch(/in all/);
    expect(words).not.toContain('99.0 cm');
    expect(pdf.pages.some((one) => one.lines.length > 20)).toBe(true);

    // On the other paper they are printed anew.
    await cards.getByRole('radio', { name: 'Letter' }).check();
    await expect.poll(() => link.count()).toBe(0);
    await cards.getByRole('button', { name: 'Print the cards' }).click();
    await link.waitFor();
    const [onLetter] = await Promise.all([page.waitForEvent('download'), link.click()]);
    expect(onLetter.suggestedFilename()).toBe('cards-letter.pdf');
    await onLetter.saveAs(file);
    const letter = await readPdf(new Uint8Array(readFileSync(file)));
    expect(letter.pages.map(({ width, height }) => [Math.round(width), Math.round(height)])).toContainEqual([216, 279]);
  });

  it('says plainly what wants the pieces, and reckons the cloth meanwhile', async () => {
    await passage('Seams')
      .getByText(/an envelope has none/)
      .waitFor();
    await passage('Print')
      .getByText(/Sheets are printed from the pieces/)
      .waitFor();
    await passage('Cutting layout')
      .getByText(/^Estimate: buy/)
      .waitFor();
  });

  it.each([
    ['wide', wide],
    ['on a phone', narrow],
  ] as const)('the make too can be read and used by all, %s', async (_, viewport) => {
    await page.setViewportSize(viewport);
    await page.waitForTimeout(300);
    expect({ barriers: await barriers(page), small: await smallWords(page), sideways: await sideways(page) }).toEqual({
      barriers: [],
      small: [],
      sideways: 0,
    });
  });

  it('asked nothing of another machine, and complained of nothing', () => {
    expect({ elsewhere: visited.elsewhere, faults: visited.faults }).toEqual({ elsewhere: [], faults: [] });
  });
});
