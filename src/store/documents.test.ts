import { expect, test } from 'vitest';
import { housePattern } from '../drafting/index.ts';
import { readPattern, writePattern } from '../pattern/index.ts';
import { sentence } from '../words/index.ts';
import { codeOf, handClock, open, poplin, temporaryFolder, valueIn } from './testing/workroom.ts';

test('a document is stored, read, changed, deleted and brought back, and survives reopening', async () => {
  const folder = temporaryFolder();
  const clock = handClock();
  const workroom = await open(folder, { now: clock.now });
  const made = valueIn(workroom.create('cloth', poplin('as bought')));
  expect(made).toMatchObject({ kind: 'cloth', revision: 1, deleted: false, updatedAt: '2026-03-14T09:00:00.000Z' });

  clock.forward(1);
  const changed = valueIn(workroom.update(made.id, 1, poplin('washed')));
  expect(changed).toMatchObject({ revision: 2, updatedAt: '2026-03-14T10:00:00.000Z', body: { note: 'washed' } });
  const deleted = valueIn(workroom.remove(made.id, 2));
  expect(deleted).toMatchObject({ revision: 3, deleted: true, body: { note: 'washed' } });
  expect(valueIn(workroom.list({ kind: 'cloth' }))).toEqual([]);
  expect(valueIn(workroom.list({ deleted: true }))).toEqual([deleted]);
  await workroom.close();

  const again = await open(folder);
  expect(valueIn(again.read(made.id))).toEqual(deleted);
  expect(valueIn(again.restore(made.id))).toMatchObject({ revision: 4, deleted: false, body: { note: 'washed' } });
  expect(valueIn(again.restore(made.id, { to: 1 }))).toMatchObject({ revision: 5, body: { note: 'as bought' } });
  expect(valueIn(again.history(made.id)).map(({ revision, deleted, body }) => [revision, deleted, body.note])).toEqual([
    [5, false, 'as bought'],
    [4, false, 'washed'],
    [3, true, 'washed'],
    [2, false, 'washed'],
    [1, false, 'as bought'],
  ]);
});

test('a write made from an older state is a conflict and changes nothing', async () => {
  const workroom = await open(temporaryFolder());
  const { id } = valueIn(workroom.create('cloth', poplin('one')));
  const two = valueIn(workroom.update(id, 1, poplin('two')));
  for (const stale of [
    workroom.update(id, 1, poplin('other')),
    workroom.remove(id, 1),
    workroom.restore(id, { revision: 1 }),
    workroom.update(id, 3, poplin('from nowhere')),
  ]) {
    expect(codeOf(stale)).toBe('store.conflict');
  }
  expect(valueIn(workroom.read(id))).toEqual(two);
  expect(valueIn(workroom.history(id))).toHaveLength(2);
});

test('storing the same again makes no new state', async () => {
  const workroom = await open(temporaryFolder());
  const made = valueIn(workroom.create('cloth', poplin()));
  expect(valueIn(workroom.update(made.id, 1, poplin()))).toEqual(made);
});

test('undo without a named state takes back the last edit, and itself', async () => {
  const workroom = await open(temporaryFolder());
  const { id } = valueIn(workroom.create('cloth', poplin('one')));
  expect(codeOf(workroom.restore(id))).toBe('store.nothing-to-undo');
  valueIn(workroom.update(id, 1, poplin('two')));
  expect(valueIn(workroom.restore(id))).toMatchObject({ revision: 3, body: { note: 'one' } });
  expect(valueIn(workroom.restore(id))).toMatchObject({ revision: 4, body: { note: 'two' } });
  expect(codeOf(workroom.restore(id, { to: 9 }))).toBe('store.no-such-revision');
});

test('a deleted document is changed only after it was brought back', async () => {
  const workroom = await open(temporaryFolder());
  const { id } = valueIn(workroom.create('cloth', poplin()));
  valueIn(workroom.remove(id, 1));
  expect(codeOf(workroom.update(id, 2, poplin('new')))).toBe('store.deleted');
  expect(valueIn(workroom.remove(id, 2)).revision).toBe(2);
});

test.each([
  ['words for a width', { width: 'wide' }, 'In this cloth, the width in millimetres should be a number.'],
  ['a width in metres', { width: 1.48 }, 'In this cloth, the width in millimetres should be at least 50.'],
  ['no width', { width: undefined }, 'In this cloth, the width in millimetres is missing.'],
  ['another structure', { structure: 'felt' }, 'In this cloth, the structure should be one of: woven, knit.'],
  ['an empty name', { name: '' }, 'In this cloth, the name should not be empty.'],
  ['a part it has not', { drape: 3 }, 'This cloth has a part that this version does not know: drape.'],
  [
    'a newer format',
    { format: 'easewright-cloth/7' },
    'This was written by a newer Easewright: easewright-cloth version 7, and this program knows up to 1.',
  ],
])('%s is refused with a sentence, and nothing is stored', async (_, change, spoken) => {
  const workroom = await open(temporaryFolder());
  const refused = workroom.create('cloth', { ...poplin(), ...change });
  if (refused.ok) throw new Error('it was stored');
  expect(sentence(refused.problem, 'cm').message).toBe(spoken);
  expect(valueIn(workroom.list({ deleted: true }))).toEqual([]);
});

test('a wrong field deep in a make is named as she would name it', async () => {
  const workroom = await open(temporaryFolder());
  const wearer = 'w';
  const step = { id: 's1', alteration: 'full-bust', version: 1, on: 'yes', params: {} };
  const refused = workroom.create('make', {
    format: 'easewright-make/1',
    name: 'Blouse',
    wearer,
    pattern: 'house:blouse',
    cloth: null,
    size: null,
    steps: [{ ...step, on: true, id: 's0' }, step],
    fold: 'single',
    gap: 0,
    paper: 'a4',
    state: 'planned',
    note: '',
  });
  if (refused.ok) throw new Error('it was stored');
  expect(sentence(refused.problem, 'cm').message).toBe(
    'In this make, alteration 2, whether it is switched on should be true or false.',
  );
  expect(refused.problem.values?.path).toBe('steps.1.on');
});

test('a measure nobody has is refused, and so is a reading without its amount', async () => {
  const workroom = await open(temporaryFolder());
  const wearer = (readings: unknown[]) => ({
    format: 'easewright-wearer/1',
    name: 'Runa',
    comparedWith: 'women',
    sets: [{ id: 's', date: '2026-03-14', waistAt: 'narrowest', readings, note: '' }],
    note: '',
  });
  const bust = { measure: 'bustGirth', side: 'both', mm: 1010, written: '101 cm' };
  expect(codeOf(workroom.create('wearer', wearer([bust, { ...bust, mm: 10.1, written: '101' }])))).toBe(
    'body.impossible',
  );
  const { mm: _mm, ...without } = bust;
  const refused = workroom.create('wearer', wearer([bust, without]));
  if (refused.ok) throw new Error('it was stored');
  expect(sentence(refused.problem, 'cm').message).toBe(
    'In this wearer, set of measures 1, reading 2, the amount in millimetres is missing.',
  );
  expect(valueIn(workroom.list())).toEqual([]);
  valueIn(workroom.create('wearer', wearer([bust])));
});

test.each([[null], [[]], ['cloth'], [3]])('%j is no document', async (json) => {
  const workroom = await open(temporaryFolder());
  expect(codeOf(workroom.create('cloth', json))).toBe('store.not-a-document');
});

test('a make must name what is there', async () => {
  const workroom = await open(temporaryFolder());
  const cloth = valueIn(workroom.create('cloth', poplin()));
  const make = {
    format: 'easewright-make/1',
    name: 'Blouse',
    wearer: 'nobody',
    pattern: 'house:blouse',
    cloth: cloth.id,
    size: null,
    steps: [],
    fold: 'single',
    gap: 0,
    paper: 'a4',
    state: 'planned',
    note: '',
  };
  const refused = workroom.create('make', make);
  expect(codeOf(refused)).toBe('store.no-such-part');
  // A cloth is no wearer, though it is there.
  expect(codeOf(workroom.create('make', { ...make, wearer: cloth.id }))).toBe('store.no-such-part');
  expect(valueIn(workroom.list())).toHaveLength(1);
});

test('a workroom is started once, with all its documents or none', async () => {
  const folder = temporaryFolder();
  const workroom = await open(folder);
  expect(workroom.facts()).toEqual({ name: 'My workroom', started: false, demo: false });
  const draft = { id: 'c1', kind: 'cloth', body: poplin() } as const;
  const broken = { id: 'c2', kind: 'cloth', body: { ...poplin(), width: -1 } } as const;
  expect(codeOf(workroom.start('demo', [draft, broken]))).toBe('store.wrong-field');
  expect(workroom.facts().started).toBe(false);
  expect(valueIn(workroom.list())).toEqual([]);
  expect(valueIn(workroom.start('demo', [draft]))).toEqual({ name: 'Demo workroom', started: true, demo: true });
  expect(codeOf(workroom.start('own', []))).toBe('store.already-started');
  await workroom.close();
  expect((await open(folder)).facts()).toEqual({ name: 'Demo workroom', started: true, demo: true });
});

test('there is one settings document', async () => {
  const workroom = await open(temporaryFolder());
  const settings = { format: 'easewright-settings/1', unit: 'cm', paper: 'a4', onTheTable: null, page: {} };
  const first = valueIn(workroom.create('settings', settings));
  expect(codeOf(workroom.create('settings', settings))).toBe('store.one-settings');
  valueIn(workroom.remove(first.id, 1));
  valueIn(workroom.create('settings', { ...settings, unit: 'in' }));
  expect(codeOf(workroom.restore(first.id))).toBe('store.one-settings');
});

test('a pattern is kept as its readable document, and a broken one is not kept', async () => {
  const workroom = await open(temporaryFolder());
  const blouse = housePattern('blouse');
  if (!blouse) throw new Error('there is no blouse');
  const document = writePattern(blouse.pattern());
  const made = valueIn(workroom.create('pattern', document));
  expect(made.body).toEqual(JSON.parse(JSON.stringify(document)));
  expect(readPattern(valueIn(workroom.read(made.id)).body).ok).toBe(true);
  for (const broken of [
    { ...made.body, sizes: [] },
    { ...made.body, format: 'easewright-pattern/9' },
    { format: 'easewright-pattern/1' },
  ]) {
    const refused = workroom.create('pattern', broken);
    expect(codeOf(refused)).not.toBe('good');
  }
  expect(valueIn(workroom.list())).toHaveLength(1);
});
