import { closeSync, existsSync, ftruncateSync, openSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { easewright, put, withFolder } from './oracle/program.ts';

interface Refused {
  readonly error: { readonly code: string; readonly message: string; readonly remedy: string };
}

/** Runs a command that must be refused: exit 2, one object saying what was wrong and what to do, the same in words beside it. */
const refused = async (args: readonly string[]): Promise<Refused['error']> => {
  const { status, lines, said } = await easewright(args);
  expect(status, said).toBe(2);
  expect(lines).toHaveLength(1);
  const { error } = lines[0] as Refused;
  expect(error.message).toMatch(/^\S.*[.!?]$/s);
  expect(error.message).not.toMatch(/\{\w+\}/);
  expect(error.remedy).toMatch(/\S/);
  expect(said).toContain(error.message);
  return error;
};

describe('the command line', () => {
  it('lists and catalogues as the contract says', async () => {
    const [patterns] = (await easewright(['pattern', 'list', '--json'])).lines as readonly [
      readonly Record<string, unknown>[],
    ];
    for (const pattern of patterns) {
      expect(pattern).toMatchObject({ id: expect.any(String), name: expect.any(String), sizes: expect.any(Array) });
      expect(['women', 'men', 'child']).toContain(pattern['for']);
    }
    const [catalogue] = (await easewright(['alteration', 'catalogue', '--json'])).lines as readonly [
      readonly Record<string, unknown>[],
    ];
    expect(catalogue.map((one) => one['id'])).toEqual(
      expect.arrayContaining(['full-bust', 'small-bust', 'lengthen-shorten']),
    );
    for (const one of catalogue)
      expect(one).toMatchObject({ version: expect.any(Number), holds: expect.any(Array), patterns: expect.any(Array) });
  });

  it('fits surveyed bodies, and what it suggests can be put into a list as it is', async () => {
    await withFolder(async (folder) => {
      const columns = {
        chestcircumference: 1010,
        waistcircumference: 880,
        buttockcircumference: 1040,
        stature: 1650,
        waistbacklength: 430,
        sleeveoutseam: 560,
      };
      const csv = put(folder, 'bodies.csv', `${Object.keys(columns).join(',')}\n${Object.values(columns).join(',')}\n`);
      const [row] = (await easewright(['fit', 'blouse', '--bodies', csv, '--survey', 'women', '--json']))
        .lines as readonly [
        {
          ok: boolean;
          recommended: number;
          ways: { startingSize: string; alterations: object[]; ease: object[]; reasons: object[]; minutes: number }[];
        },
      ];
      expect(row.ok).toBe(true);
      expect(row.ways.length).toBeGreaterThanOrEqual(2);
      for (const way of row.ways) {
        expect(way).toMatchObject({ ease: expect.any(Array), reasons: expect.any(Array), minutes: expect.any(Number) });
        const list = put(
          folder,
          'list.json',
          JSON.stringify({ format: 'easewright-alterations/1', pattern: 'blouse', steps: way.alterations }),
        );
        const [altered] = (
          await easewright(['alter', 'blouse', '--size', way.startingSize, '--alterations', list, '--json'])
        ).lines;
        expect(altered).toMatchObject({ ok: true });
      }
    });
  });

  it('keeps wearers in a workroom, through a door that is opened and closed', async () => {
    await withFolder(async (folder) => {
      const data = ['--data', join(folder, 'room')];
      expect((await easewright(['wearer', 'add', 'Runa', ...data])).status).toBe(0);
      const measured = await easewright([
        'wearer',
        'measure',
        'Runa',
        'bustGirth=38 1/2 in',
        'hipGirth=102 cm',
        ...data,
      ]);
      expect(measured.lines).toMatchObject([{ name: 'Runa', measures: { bustGirth: 977.9, hipGirth: 1020 } }]);
      expect((await refused(['wearer', 'measure', 'Runa', 'bustGirth=banana', ...data])).code).toMatch(/^units\./);
      expect((await refused(['wearer', 'measure', 'Runa', 'hatGirth=50 cm', ...data])).code).toBe(
        'cli.measure-unknown',
      );
      expect((await refused(['wearer', 'measure', 'Runa', 'bustGirth=4 m', ...data])).code).toMatch(/^body\./);
      expect((await refused(['wearer', 'show', 'Nobody', ...data])).code).toBe('cli.wearer-unknown');
      // What was refused left nothing behind.
      const [shown] = (await easewright(['wearer', 'show', 'Runa', '--json', ...data])).lines as readonly [
        { measures: Record<string, number> },
      ];
      expect(shown.measures['bustGirth']).toBe(977.9);
      expect((await easewright(['fit', 'blouse', '--wearer', 'Runa', '--json', ...data])).lines).toMatchObject([
        { ok: true },
      ]);
    });
  });

  it('exports a pattern, finds it sound, and works on the file as on the house pattern', async () => {
    await withFolder(async (folder) => {
      const file = join(folder, 'blouse.json');
      expect((await easewright(['pattern', 'export', 'blouse', '--out', file])).status).toBe(0);
      expect((await easewright(['pattern', 'check', file])).lines).toMatchObject([{ ok: true, id: 'blouse' }]);
      const list = put(folder, 'list.json', '{"format":"easewright-alterations/1","pattern":"blouse","steps":[]}');
      const [own] = (await easewright(['alter', 'blouse', '--size', '4', '--alterations', list, '--json']))
        .lines as readonly [{ seams: { lengthA: number }[] }];
      const [read] = (await easewright(['alter', file, '--size', '4', '--alterations', list, '--json']))
        .lines as readonly [{ seams: { lengthA: number }[] }];
      for (const [index, seam] of own.seams.entries()) expect(read.seams[index]?.lengthA).toBeCloseTo(seam.lengthA, 4);
      const inFile = ['alter', file, '--size', '4', '--alterations', list];
      expect((await refused([...inFile, '--view', 'long'])).code).toBe('cli.only-house');
      expect((await refused([...inFile, '--cup', '50'])).code).toBe('cli.only-house');
    });
  });

  it('refuses patterns that are none, cut short, of another version, open, unmated or far too large', async () => {
    await withFolder(async (folder) => {
      const whole = join(folder, 'blouse.json');
      await easewright(['pattern', 'export', 'blouse', '--out', whole]);
      const text = readFileSync(whole, 'utf8');
      const check = async (name: string, content: string) =>
        (await refused(['pattern', 'check', put(folder, name, content)])).code;
      expect(await check('short.json', text.slice(0, text.length / 2))).toBe('pattern.not-json');
      expect(await check('version.json', text.replace('easewright-pattern/1', 'easewright-pattern/9'))).toBe(
        'pattern.unknown-version',
      );
      expect(await check('none.json', '{"hello": 1}')).toBe('pattern.not-a-pattern');
      const open = JSON.parse(text) as { sizes: { pieces: { runs: { path: string }[] }[] }[] };
      const run = open.sizes[0]?.pieces[0]?.runs[1];
      if (run) run.path = run.path.replace(/[-\d.]+ [-\d.]+$/, '500 500');
      expect(await check('open.json', JSON.stringify(open))).toBe('pattern.open-edges');
      const unmated = JSON.parse(text) as { sizes: { pieces: unknown[] }[] };
      unmated.sizes[0]?.pieces.splice(1, 1);
      expect(await check('unmated.json', JSON.stringify(unmated))).toBe('pattern.mate-missing');
      const huge = join(folder, 'huge.json');
      const handle = openSync(huge, 'w');
      ftruncateSync(handle, 200_000_000);
      closeSync(handle);
      expect((await refused(['pattern', 'check', huge])).code).toBe('cli.file-too-large');
      expect((await refused(['pattern', 'import', huge, '--data', join(folder, 'room')])).code).toBe(
        'cli.file-too-large',
      );
    });
  });

  it('refuses sizes, patterns, lists, cloths, papers and options that are not there', async () => {
    await withFolder(async (folder) => {
      const list = put(folder, 'list.json', '{"format":"easewright-alterations/1","pattern":"tee","steps":[]}');
      expect((await refused(['pattern', 'draft', 'blouse', '--size', '99'])).code).toBe('pattern.size-unknown');
      expect((await refused(['pattern', 'draft', 'kaftan', '--size', '1'])).code).toBe('cli.no-pattern');
      expect((await refused(['alter', 'blouse', '--size', '4', '--alterations', list])).code).toBe(
        'cli.list-for-another',
      );
      expect((await refused(['alter', 'blouse', '--size', '4', '--alterations', join(folder, 'gone.json')])).code).toBe(
        'cli.file-missing',
      );
      expect((await refused(['lay', 'blouse', '--size', '4', '--width', '20 cm', '--seconds', '1'])).code).toMatch(
        /^lay\./,
      );
      expect((await refused(['lay', put(folder, 'bad.json', '{}'), '--seconds', '1'])).code).toMatch(/^lay\./);
      const out = join(folder, 'out.pdf');
      expect((await refused(['print', 'blouse', '--size', '4', '--paper', 'napkin', '--out', out])).code).toBe(
        'cli.choice',
      );
      expect(
        (await refused(['print', 'blouse', '--size', '4', '--out', join(folder, 'no', 'such', 'folder.pdf')])).code,
      ).toBe('cli.file-unwritable');
      expect(existsSync(out)).toBe(false);
      expect((await refused(['fit', 'blouse', '--bodies', list, '--survey', 'cats'])).code).toBe('cli.choice');
      expect((await refused(['sew', 'blouse'])).code).toBe('cli.command');
      expect((await refused(['pattern', 'list', '--loudly'])).code).toBe('cli.option');
    });
  });

  it('prints a pattern to a file that is whole', async () => {
    await withFolder(async (folder) => {
      const out = join(folder, 'blouse.pdf');
      const { status, lines } = await easewright(['print', 'blouse', '--size', '4', '--paper', 'a0', '--out', out]);
      expect(status).toBe(0);
      expect(lines).toMatchObject([{ ok: true, paper: 'a0', pages: expect.any(Number) }]);
      expect(statSync(out).size).toBeGreaterThan(5000);
      expect(readFileSync(out).subarray(0, 5).toString()).toBe('%PDF-');
    });
  });
});
