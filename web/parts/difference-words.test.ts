import { expect, it } from 'vitest';
import { formatLength } from '../../src/units/index.ts';
import { fill } from '../../src/words/index.ts';
import type { Say } from '../app/settings.tsx';
import { differences } from '../documents/differences.ts';
import { sayDifferences } from './difference-words.ts';

const say = (unit: 'cm' | 'in'): Say => ({
  unit,
  length: (mm, format) => formatLength(mm, unit, { locale: 'en-GB', ...format }),
  words: (template, values = {}) => fill(template, values, unit, 'en-GB'),
  problem: () => ({ message: '', remedy: '' }),
  date: () => '14 March 2026',
  time: (iso) => iso,
});

const plain = (unit: 'cm' | 'in', mine: unknown, theirs: unknown) =>
  sayDifferences(differences(mine, theirs), say(unit), (id) => (id === 'c1' ? 'Grey poplin' : id)).map((row) =>
    [row.what, row.mine, row.theirs].join(' | ').replaceAll('\u00a0', ' '),
  );

it('tells of a measure once, by its name, its day and in her unit', () => {
  const wearer = (mm: number, written: string) => ({
    sets: [{ date: '2026-03-14', readings: [{ measure: 'bustGirth', side: 'both', mm, written }] }],
  });
  expect(plain('cm', wearer(1040, '104 cm'), wearer(1010, '101 cm'))).toEqual([
    'Bust girth on 14 March 2026 | 104.0 cm | 101.0 cm',
  ]);
  expect(plain('in', wearer(1016, '40 in'), wearer(1010, '101 cm'))[0]).toMatch(/^Bust girth on 14 March 2026 \| 40/);
});

it('tells of an alteration, a cloth and what one side lacks in words', () => {
  const step = { id: 's1', alteration: 'full-bust', version: 1, on: true, params: { amount: 15 } };
  expect(
    plain(
      'cm',
      { cloth: 'c1', steps: [step] },
      { cloth: null, steps: [{ ...step, on: false, params: { amount: 20 } }] },
    ),
  ).toEqual([
    'Cloth | Grey poplin | nothing',
    'Full bust, counted in or left out | counted in | left out',
    'Full bust, amount | 1.5 cm | 2.0 cm',
  ]);
});

it('tells of an envelope’s figures by their rows, and of what else she has by name', () => {
  const envelope = (bust: number, cloth: number, where: string) => ({
    body: [{ measure: 'bustGirth', figures: [800, bust] }],
    finished: [{ of: 'hip', label: 'Hip', view: 'A', figures: [1000, null] }],
    clothNeeded: [{ view: 'A', layer: 'shell', width: 1143, nap: 'either', figures: [cloth] }],
    owned: { where },
  });
  expect(plain('cm', envelope(840, 2000, 'tin'), envelope(850, 2100, 'drawer'))).toEqual([
    'Body chart, Bust girth, figure, 2 | 84.0 cm | 85.0 cm',
    'Cloth needed, row, 1, figure, 1 | 2.0 m | 2.1 m',
    'Where it lies | tin | drawer',
  ]);
});
