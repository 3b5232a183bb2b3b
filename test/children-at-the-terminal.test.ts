import { describe, expect, it } from 'vitest';
import { childrenFile } from './children.ts';
import { easewright, put, withFolder } from './oracle/program.ts';

interface Drafted {
  readonly row: number;
  readonly ok: boolean;
  readonly code?: string;
  readonly girths: readonly { level: string; body: number; ease: number; finished: number }[];
}

const draft = (csv: string) =>
  withFolder((folder) =>
    easewright([
      'pattern',
      'draft',
      'raincoat',
      '--bodies',
      put(folder, 'children.csv', csv),
      '--survey',
      'children',
      '--json',
    ]),
  );

describe('children at the terminal', () => {
  it('are drafted for from a file of our own measures, what was not measured estimated', async () => {
    const { status, lines } = await draft('stature,bustGirth,armLength\n980,,\n1340,690,480\n98,550,\n,600,\n1700,,');
    expect(status).toBe(0);
    const drafts = lines as readonly Drafted[];
    expect(drafts.map(({ row }) => row)).toEqual([1, 2, 3, 4, 5]);
    expect(drafts.map(({ ok, code }) => (ok ? 'drafted' : code))).toEqual([
      'drafted',
      'drafted',
      'body.impossible',
      'body.no-stature',
      'body.not-a-childs-stature',
    ]);
    const bust = drafts[1]?.girths.find(({ level }) => level === 'bust');
    expect(bust?.body).toBe(690);
    expect(bust?.finished).toBeCloseTo(690 + (bust?.ease ?? 0), 6);
  });

  it('take a whole generated lot, one a line', async () => {
    const { status, lines } = await draft(childrenFile(24));
    expect(status).toBe(0);
    expect((lines as readonly Drafted[]).filter(({ ok }) => ok)).toHaveLength(24);
  });

  it('refuse a file that names no stature, and a survey that is none', async () => {
    const { status, lines } = await draft('bustGirth\n600');
    expect(status).toBe(2);
    expect(lines[0]).toMatchObject({ error: { code: 'body.no-stature-column' } });
  });
});
