import { describe, expect, it } from 'vitest';
import type { Result } from '../units/index.ts';
import { readAlterationList, readPattern, readPatternText, sizeOf, writePattern } from './index.ts';
import { plainGarment } from './testing/bodice.ts';
import type { Pattern } from './types.ts';

const pattern: Pattern = {
  format: 'easewright-pattern/1',
  id: 'plain',
  name: 'Plain top',
  about: '',
  for: 'women',
  kind: 'top',
  draftedCup: 50,
  draftedStature: 1680,
  cloth: { structure: 'woven', weight: [80, 180], stretch: 0, cloths: ['lawn'] },
  notions: [],
  sizes: [{ id: '1', body: { bustGirth: 880 }, garment: plainGarment }],
};

/** A fresh document with something changed in it, as a careless editor would. */
const changed = (change: (document: Document) => void): unknown => {
  const document = JSON.parse(JSON.stringify(writePattern(pattern))) as Document;
  change(document);
  return document;
};

interface Document {
  format: string;
  sizes: {
    id: string;
    pieces: { id: string; runs: { edge?: string; path: string }[]; darts: { id: string }[] }[];
    seams: { a: { edge: string } }[];
  }[];
}

const codeOf = (result: Result<unknown>): string => (result.ok ? 'fine' : result.problem.code);

describe('a pattern document', () => {
  it('comes back as it was', () => {
    const read = readPattern(JSON.parse(JSON.stringify(writePattern(pattern))));
    expect(read).toEqual({ ok: true, value: pattern });
  });

  it('says what is wrong with a file that is none, cut short, or of a version not known', () => {
    const text = JSON.stringify(writePattern(pattern));
    expect(codeOf(readPatternText(text.slice(0, 500)))).toBe('pattern.not-json');
    expect(codeOf(readPatternText('[]'))).toBe('pattern.not-a-pattern');
    expect(codeOf(readPattern(changed((document) => (document.format = 'easewright-pattern/7'))))).toBe(
      'pattern.unknown-version',
    );
  });

  it('names the field that is not as it should be', () => {
    const read = readPattern(
      changed((document) => Object.assign(document.sizes[0]?.pieces[0] ?? {}, { role: 'wing' })),
    );
    expect(read).toMatchObject({
      ok: false,
      problem: { code: 'pattern.field', values: { where: 'sizes › 0 › pieces › 0 › role' } },
    });
  });

  it('names the piece whose outline is open, and the size it is in', () => {
    const read = readPattern(
      changed((document) => {
        const run = document.sizes[0]?.pieces[0]?.runs[1];
        if (run) run.path = 'M 70 0 L 180 43';
      }),
    );
    expect(read).toMatchObject({
      ok: false,
      problem: { code: 'pattern.open-edges', values: { piece: 'Front', edge: 'shoulder', size: '1' } },
    });
  });

  it('refuses a line it cannot read, a missing mate, and an edge nobody has', () => {
    const curve = changed((document) => {
      const run = document.sizes[0]?.pieces[0]?.runs[0];
      if (run) run.path = 'M 0 80 Q 1 2 3 4';
    });
    expect(codeOf(readPattern(curve))).not.toBe('fine');
    expect(codeOf(readPattern(changed((document) => document.sizes[0]?.pieces.splice(1, 1))))).toBe(
      'pattern.mate-missing',
    );
    const edge = changed((document) => {
      const seam = document.sizes[0]?.seams[0];
      if (seam) seam.a.edge = 'shulder';
    });
    expect(codeOf(readPattern(edge))).toBe('pattern.edge-unknown');
  });

  it('says which sizes there are', () => {
    expect(sizeOf(pattern, '9')).toMatchObject({
      ok: false,
      problem: { code: 'pattern.size-unknown', values: { sizes: '1' } },
    });
  });
});

describe('an alteration list', () => {
  it('is read, or refused with the field that is wrong', () => {
    const step = { id: 's1', alteration: 'full-bust', version: 1, on: true, params: { amount: 12 } };
    const list = { format: 'easewright-alterations/1', pattern: 'plain', steps: [step] };
    expect(readAlterationList(list)).toEqual({ ok: true, value: list });
    expect(codeOf(readAlterationList({ ...list, format: 'easewright-alterations/2' }))).toBe(
      'pattern.unknown-list-version',
    );
    expect(codeOf(readAlterationList({ ...list, steps: [{ ...step, version: 'one' }] }))).toBe('pattern.field');
    expect(codeOf(readAlterationList(7))).toBe('pattern.not-an-alteration-list');
  });
});
