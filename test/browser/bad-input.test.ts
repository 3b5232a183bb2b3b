import { readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { easewright } from '../oracle/program.ts';
import { chromiumPath } from './chromium.ts';
import { untilSaved, type Visit, visit } from './page.ts';
import { stage } from './stage.ts';
import { stored } from './workroom.ts';

interface Wearer {
  readonly sets: readonly { readonly readings: readonly { readonly measure: string; readonly mm: number }[] }[];
}

/** What a person can read as a sentence: begins with a capital, a figure or a quotation, ends with a stop. */
const sentence = /^[“"\p{Lu}\d].{15,}[.!?]$/su;

describe.skipIf(chromiumPath === null)('what cannot be is said in a sentence, and nothing of it is stored', () => {
  const set = stage('own');
  let visited: Visit;
  let page: Page;
  beforeAll(async () => {
    visited = await visit(set.browser, set.served.address);
    page = visited.page;
  });

  const readings = async () => {
    const [wearer] = await stored(set.served.address, 'wearer');
    return (wearer?.body as unknown as Wearer | undefined)?.sets[0]?.readings ?? [];
  };
  /** What is said beside the field that is invalid. */
  const saidOf = async (name: string): Promise<string> => {
    const field = page.getByLabel(name, { exact: true });
    await expect.poll(() => field.getAttribute('aria-invalid')).toBe('true');
    const ids = ((await field.getAttribute('aria-describedby')) ?? '').split(' ');
    const trouble = ids.find((id) => id.endsWith('-trouble'));
    return (await page.locator(`[id="${trouble}"]`).textContent())?.trim() ?? '';
  };

  it('a wearer or a cloth without a name', async () => {
    await page.goto('/wearers');
    await page.getByRole('button', { name: 'Keep a wearer' }).click();
    expect(await page.getByText('Write a name first.').isVisible()).toBe(true);
    await page.goto('/cloth');
    await page.getByRole('button', { name: 'Keep a cloth' }).click();
    expect(await page.getByText('Write what you call it first.').isVisible()).toBe(true);
    expect([await stored(set.served.address, 'wearer'), await stored(set.served.address, 'cloth')]).toEqual([[], []]);
  });

  it('impossible and nonsense measures', async () => {
    await page.goto('/wearers');
    await page.getByLabel('Name').fill('Ottilie Brandt');
    await page.getByRole('button', { name: 'Keep a wearer' }).click();
    await page.getByRole('heading', { level: 1, name: 'Ottilie Brandt' }).waitFor();
    const bust = page.getByLabel('Bust girth', { exact: true });
    for (const written of ['9000', '1', '0', '-96', 'herring', '38 1/0 in', '96 stone', '9 6 4 2']) {
      await bust.fill(written);
      expect(await saidOf('Bust girth'), written).toMatch(sentence);
      // What does not read is not lost: it stays as she typed it.
      expect(await bust.inputValue()).toBe(written);
    }
    await page.getByLabel('Date', { exact: true }).fill('2026-02-31');
    expect(await saidOf('Date')).toMatch(sentence);
    await untilSaved(page);
    expect(await readings()).toEqual([]);
  });

  it('keeps nonsense where it was typed until it reads, across a reload', async () => {
    await page.reload();
    const bust = page.getByLabel('Bust girth', { exact: true });
    await expect.poll(() => bust.inputValue()).toBe('9 6 4 2');
    expect(await saidOf('Bust girth')).toMatch(sentence);
    await bust.fill('96.4');
    await expect.poll(() => bust.getAttribute('aria-invalid')).not.toBe('true');
    await untilSaved(page);
    await expect.poll(readings).toMatchObject([{ measure: 'bustGirth', mm: 964 }]);
  });

  it('a good measure is not lost to a bad one typed over it', async () => {
    await page.getByLabel('Bust girth', { exact: true }).fill('96,4 fathoms');
    expect(await saidOf('Bust girth')).toMatch(sentence);
    expect(await readings()).toMatchObject([{ measure: 'bustGirth', mm: 964 }]);
    await page.getByLabel('Bust girth', { exact: true }).fill('96.4');
    await untilSaved(page);
  });

  it('queries a measure that is out of keeping with the others, and keeps it', async () => {
    for (const [name, cm] of [
      ['Stature', '166'],
      ['Upper bust girth', '90'],
      ['Waist girth', '52'],
      ['Hip girth', '142'],
    ] as const) {
      await page.getByLabel(name, { exact: true }).fill(cm);
    }
    await page
      .getByText(/^(Waist|Hip) girth reads .* likely\. Measure it again, or keep it if it is so\./)
      .first()
      .waitFor();
    await untilSaved(page);
    expect((await readings()).map(({ mm }) => mm).toSorted()).toEqual([1420, 1660, 520, 900, 964].toSorted());
  });

  it('too few measures for a fit', async () => {
    await page.goto('/wearers');
    await page.getByLabel('Name').fill('Fenna Vos');
    await page.getByRole('button', { name: 'Keep a wearer' }).click();
    await page.getByRole('link', { name: 'Start a make for Fenna Vos' }).click();
    await page.getByRole('button', { name: 'Start it' }).click();
    const fit = page.getByRole('region', { name: 'Fit', exact: true });
    await fit.getByText(/Too little is known of the body/).waitFor();
    await fit.getByRole('link', { name: 'Measure Fenna Vos' }).click();
    await page.getByRole('heading', { level: 1, name: 'Fenna Vos' }).waitFor();
  });

  it('an alteration beyond what can be done', async () => {
    await page.goBack();
    const alterations = page.getByRole('region', { name: 'Alterations', exact: true });
    await alterations.getByLabel('Find an alteration').fill('full bust');
    await alterations.getByRole('button', { name: 'Add Full bust to the list' }).click();
    const each = alterations.getByLabel('On each half of the front');
    await each.waitFor();
    await untilSaved(page);
    const amount = async () => {
      const [make] = await stored(set.served.address, 'make');
      const steps = make?.body['steps'] as readonly { params: { amount: number } }[] | undefined;
      return steps?.[0]?.params.amount;
    };
    const before = await amount();
    expect(before).toBeGreaterThan(0);
    for (const written of ['40', '-3', 'a little']) {
      await each.fill(written);
      expect(await saidOf('On each half of the front')).toMatch(sentence);
    }
    await untilSaved(page);
    expect(await amount()).toBe(before);
    await each.fill('1.5');
    await untilSaved(page);
    expect(await amount()).toBeCloseTo(15, 6);
  });

  it('cloth narrower than a piece, and of a width no cloth has', async () => {
    const make = page.url();
    await page.goto('/cloth');
    await page.getByLabel('What you call it').fill('Ribbon end');
    await page.getByRole('button', { name: 'Keep a cloth' }).click();
    await page.getByRole('heading', { level: 1, name: 'Ribbon end' }).waitFor();
    await page.getByLabel('Usable width').fill('4000');
    expect(await saidOf('Usable width')).toMatch(sentence);
    await page.getByLabel('Usable width').fill('30');
    await untilSaved(page);
    expect((await stored(set.served.address, 'cloth'))[0]?.body['width']).toBe(300);
    await page.goto(make);
    await page
      .getByRole('navigation', { name: 'Passages of this make' })
      .getByRole('link', { name: 'Cutting layout' })
      .click();
    const layout = page.getByRole('region', { name: 'Cutting layout', exact: true });
    await layout.getByRole('combobox', { name: 'Cloth', exact: true }).selectOption({ label: 'Ribbon end' });
    await layout.getByText(/is .*cm across, and the cloth only .*cm wide\./).waitFor();
    expect(await layout.getByRole('term').filter({ hasText: 'To buy' }).count()).toBe(0);
  });

  it('pattern files cut short, of another version, with open edges, no pattern at all, or far too large', async () => {
    const whole = join(set.folder, 'blouse.json');
    await easewright(['pattern', 'export', 'blouse', '--out', whole]);
    const text = readFileSync(whole, 'utf8');
    const file = (name: string, content: string) => {
      const path = join(set.folder, name);
      writeFileSync(path, content);
      return path;
    };
    // The hem of one piece ends 3 mm early.
    const opened = JSON.parse(text);
    const hem = opened.sizes[0].pieces[0].runs.find((run: { edge?: string }) => run.edge === 'hem');
    hem.path = hem.path.replace(/L (-?[\d.]+) /, (_: string, x: string) => `L ${Number(x) + 3} `);
    const large = file('large.json', text);
    truncateSync(large, 200e6);
    const asked = [
      [file('short.json', text.slice(0, text.length / 2)), /cut short/],
      [file('newer.json', text.replace('easewright-pattern/1', 'easewright-pattern/9')), /easewright-pattern\/9/],
      [file('open.json', JSON.stringify(opened)), /open/],
      [file('letter.json', '{"dear": "aunt"}'), /not a pattern document/],
      [large, /200 MB/],
    ] as const;
    await page.goto('/patterns');
    const choose = page.getByLabel('Pattern file');
    for (const [path, says] of asked) {
      await choose.setInputFiles(path);
      const trouble = page.getByRole('region', { name: 'Bring in a pattern' }).getByText(says).first();
      await trouble.waitFor();
      expect((await trouble.textContent())?.trim(), path).toMatch(sentence);
      expect(new URL(page.url()).pathname).toBe('/patterns');
    }
    expect(await stored(set.served.address, 'pattern')).toEqual([]);
    // The whole file, by the same way, is taken: it was the faults that were refused.
    await choose.setInputFiles(whole);
    await page.getByRole('heading', { level: 1, name: opened.name }).waitFor();
    expect(await stored(set.served.address, 'pattern')).toHaveLength(1);
  });

  it('broke no rule of its own over all this', () => {
    expect([visited.elsewhere, visited.faults]).toEqual([[], []]);
  });
});
