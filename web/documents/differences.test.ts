import { expect, it } from 'vitest';
import { differences } from './differences.ts';

it('finds what differs by name, not by place in a list', () => {
  const mine = { name: 'Maren', sets: [{ date: '2026-03-14', readings: [{ measure: 'waistGirth', mm: 700 }] }] };
  const theirs = {
    name: 'Maren',
    sets: [
      {
        date: '2026-03-14',
        readings: [
          { measure: 'hipGirth', mm: 980 },
          { measure: 'waistGirth', mm: 720 },
        ],
      },
    ],
  };
  expect(differences(mine, mine)).toEqual([]);
  expect(differences(mine, theirs)).toEqual([
    { path: ['sets', '2026-03-14', 'readings', 'waistGirth', 'mm'], mine: '700', theirs: '720' },
    { path: ['sets', '2026-03-14', 'readings', 'hipGirth', 'measure'], mine: null, theirs: 'hipGirth' },
    { path: ['sets', '2026-03-14', 'readings', 'hipGirth', 'mm'], mine: null, theirs: '980' },
  ]);
});
