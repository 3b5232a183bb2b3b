import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { StoredDocument } from './documents.ts';
import { codeOf, handClock, open, poplin, temporaryFolder, valueIn } from './testing/workroom.ts';
import type { Workroom } from './workroom.ts';

/** The plainest thing a workroom could be: every state of every document, in order. */
type Plain = Map<string, StoredDocument[]>;

interface Real {
  workroom: Workroom;
  readonly folder: string;
  readonly clock: ReturnType<typeof handClock>;
}

type Act =
  | { readonly do: 'create'; readonly note: string }
  | { readonly do: 'update'; readonly which: number; readonly behind: number; readonly note: string }
  | { readonly do: 'remove'; readonly which: number; readonly behind: number }
  | { readonly do: 'restore'; readonly which: number; readonly to: number | null }
  | { readonly do: 'reopen' };

const note = fc.oneof(fc.constantFrom('a', 'b'), fc.string({ unit: 'binary', maxLength: 30 }));
const which = fc.nat(5);
const behind = fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, fc.integer({ min: -1, max: 2 }));

const act: fc.Arbitrary<Act> = fc.oneof(
  { weight: 3, arbitrary: fc.record({ do: fc.constant('create' as const), note }) },
  { weight: 6, arbitrary: fc.record({ do: fc.constant('update' as const), which, behind, note }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant('remove' as const), which, behind }) },
  {
    weight: 4,
    arbitrary: fc.record({
      do: fc.constant('restore' as const),
      which,
      to: fc.option(fc.integer({ min: 1, max: 6 })),
    }),
  },
  { weight: 1, arbitrary: fc.record({ do: fc.constant('reopen' as const) }) },
);

/** What the plain workroom makes of a change: the next state, or the code of the problem. */
const expected = (states: StoredDocument[], change: Act): Partial<StoredDocument> | string => {
  const last = states[states.length - 1];
  if (!last) throw new Error('a document without a state');
  const given = 'behind' in change ? last.revision - change.behind : last.revision;
  if (given !== last.revision) return 'store.conflict';
  switch (change.do) {
    case 'update':
      if (last.deleted) return 'store.deleted';
      return change.note === last.body.note ? last : { body: { ...poplin(change.note) }, deleted: false };
    case 'remove':
      return last.deleted ? last : { body: last.body, deleted: true };
    case 'restore': {
      if (change.to === null && last.deleted) return { body: last.body, deleted: false };
      const to = change.to ?? last.revision - 1;
      if (to === last.revision && !last.deleted) return last;
      const past = states.find(({ revision }) => revision === to);
      if (past) return { body: past.body, deleted: false };
      return change.to === null ? 'store.nothing-to-undo' : 'store.no-such-revision';
    }
    default:
      throw new Error(`not a change: ${change.do}`);
  }
};

const perform = async (real: Real, plain: Plain, change: Act): Promise<void> => {
  real.clock.forward(1);
  if (change.do === 'reopen') {
    await real.workroom.close();
    real.workroom = await open(real.folder, { now: real.clock.now });
    return;
  }
  if (change.do === 'create') {
    const made = valueIn(real.workroom.create('cloth', poplin(change.note)));
    plain.set(made.id, [made]);
    return;
  }
  const ids = [...plain.keys()];
  const id = ids[change.which % Math.max(1, ids.length)];
  if (id === undefined) return;
  const states = plain.get(id) ?? [];
  const last = states[states.length - 1];
  const revision = (last?.revision ?? 0) - ('behind' in change ? change.behind : 0);
  const result =
    change.do === 'update'
      ? real.workroom.update(id, revision, poplin(change.note))
      : change.do === 'remove'
        ? real.workroom.remove(id, revision)
        : real.workroom.restore(id, change.to === null ? {} : { to: change.to });
  const due = expected(states, change);
  if (typeof due === 'string') {
    expect(codeOf(result)).toBe(due);
    return;
  }
  const value = valueIn(result);
  expect(value).toMatchObject({ body: due.body, deleted: due.deleted });
  if (due === last) expect(value).toEqual(last);
  else {
    expect(value.revision).toBe((last?.revision ?? 0) + 1);
    states.push(value);
  }
};

const agree = (workroom: Workroom, plain: Plain): void => {
  const present = [...plain.values()].flatMap((states) => states.slice(-1));
  const byId = (documents: readonly StoredDocument[]) => [...documents].sort((a, b) => (a.id < b.id ? -1 : 1));
  expect(byId(valueIn(workroom.list({ deleted: true })))).toEqual(byId(present));
  expect(byId(valueIn(workroom.list({ kind: 'cloth' })))).toEqual(byId(present.filter(({ deleted }) => !deleted)));
  for (const [id, states] of plain) {
    const history = states.map(({ id: _id, kind: _kind, ...state }) => state).reverse();
    expect(valueIn(workroom.history(id))).toEqual(history);
  }
};

const fresh = Number(process.env.EASEWRIGHT_SEED ?? Date.now());

test.each([20261, fresh])('a workroom does what a plain list of states does (seed %i)', async (seed) => {
  console.info(`store: documents.property seed ${seed}`);
  await fc.assert(
    fc.asyncProperty(fc.array(act, { maxLength: 30 }), async (acts) => {
      const folder = temporaryFolder();
      const clock = handClock();
      const real: Real = { folder, clock, workroom: await open(folder, { now: clock.now }) };
      const plain: Plain = new Map();
      try {
        for (const change of acts) await perform(real, plain, change);
        agree(real.workroom, plain);
      } finally {
        await real.workroom.close();
      }
    }),
    { seed, numRuns: 40 },
  );
});
