import { describe, expect, it } from 'vitest';
import type { StoredDocument } from './api.ts';
import { Desk } from './desk.ts';

interface Note {
  readonly text: string;
}

/** A workroom of one document, which can be silenced, edited from elsewhere, or made to refuse. */
const workroom = () => {
  const state = {
    silent: false,
    refuse: false,
    now: 0,
    document: {
      id: 'a',
      kind: 'make',
      revision: 1,
      updatedAt: '2026-03-14T10:00:00Z',
      deleted: false,
      body: { text: 'one' },
    } as StoredDocument<Note>,
    puts: 0,
    /** Set to keep answers back until it is called. */
    hold: null as Promise<void> | null,
    loseAnswer: false,
  };
  const storage = new Map<string, string>();
  const waiting: (() => unknown)[] = [];
  const answer = (status: number, body: unknown) => new Response(JSON.stringify(body), { status });
  const desk = new Desk({
    fetcher: async (_path, init) => {
      if (state.silent) throw new TypeError('no answer');
      if (init.method !== 'PUT') return answer(200, state.document);
      state.puts += 1;
      if (state.refuse)
        return answer(507, { error: { code: 'store.full', message: 'The disk is full.', remedy: 'Make room.' } });
      const sent = JSON.parse(String(init.body)) as { revision: number; body: Note };
      if (sent.revision !== state.document.revision) {
        return answer(409, { problem: { code: 'store.stale' }, current: state.document });
      }
      state.document = { ...state.document, revision: sent.revision + 1, body: sent.body };
      const kept = answer(200, state.document);
      if (state.hold) await state.hold;
      if (state.loseAnswer) throw new TypeError('the answer was lost');
      return kept;
    },
    storage: {
      getItem: (key) => storage.get(key) ?? null,
      setItem: (key, value) => void storage.set(key, value),
      removeItem: (key) => void storage.delete(key),
    },
    now: () => state.now,
    later: (what) => waiting.push(what),
  });
  /** Lets every timer that is due run once, and what it started settle. */
  const pass = async () => {
    for (const what of waiting.splice(0)) await what();
    for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
    await new Promise((done) => setTimeout(done, 0));
  };
  return { state, storage, desk, pass };
};

const type = (desk: Desk, text: string) => desk.edit<Note>('a', () => ({ text }), 'text');

describe('the desk', () => {
  it('saves an edit after a pause, with the revision it was made from', async () => {
    const { state, storage, desk, pass } = workroom();
    await desk.load('a');
    type(desk, 'two');
    expect(desk.entry<Note>('a')).toMatchObject({ standing: 'waiting', body: { text: 'two' } });
    expect(storage.size).toBe(1);
    await pass();
    expect(state.document).toMatchObject({ revision: 2, body: { text: 'two' } });
    expect(desk.entry('a')?.standing).toBe('saved');
    expect(storage.size).toBe(0);
  });

  it('sends only the last of several edits made in one pause', async () => {
    const { state, desk, pass } = workroom();
    await desk.load('a');
    for (const text of ['t', 'tw', 'two']) type(desk, text);
    await pass();
    expect(state.puts).toBe(1);
    expect(state.document.body.text).toBe('two');
  });

  it('keeps what is typed while the workroom is silent, and saves it when it answers again', async () => {
    const { state, storage, desk, pass } = workroom();
    await desk.load('a');
    state.silent = true;
    type(desk, 'two');
    await pass();
    expect(desk.entry('a')?.standing).toBe('unreachable');
    expect(desk.reachable).toBe(false);
    expect(storage.get('easewright.unsaved.a')).toContain('two');
    state.silent = false;
    await pass();
    expect(desk.entry('a')?.standing).toBe('saved');
    expect(desk.reachable).toBe(true);
    expect(state.document.body.text).toBe('two');
  });

  it('takes up again, on the next page, what was left unsaved', async () => {
    const { state, storage, desk, pass } = workroom();
    storage.set('easewright.unsaved.a', JSON.stringify({ kind: 'make', revision: 1, body: { text: 'left' } }));
    await desk.load('a');
    expect(desk.entry<Note>('a')?.body.text).toBe('left');
    await pass();
    expect(state.document.body.text).toBe('left');
  });

  it('shows both versions of a conflict and saves the chosen one', async () => {
    const { state, desk, pass } = workroom();
    await desk.load('a');
    state.document = { ...state.document, revision: 5, body: { text: 'theirs' } };
    type(desk, 'mine');
    await pass();
    const entry = desk.entry<Note>('a');
    expect(entry).toMatchObject({ standing: 'conflict', body: { text: 'mine' }, theirs: { body: { text: 'theirs' } } });
    expect(state.document.body.text).toBe('theirs');
    desk.settle('a', 'mine');
    await pass();
    expect(state.document).toMatchObject({ revision: 6, body: { text: 'mine' } });
  });

  it('gives hers back by undo when the other version was taken', async () => {
    const { state, desk, pass } = workroom();
    await desk.load('a');
    state.document = { ...state.document, revision: 5, body: { text: 'theirs' } };
    type(desk, 'mine');
    await pass();
    desk.settle('a', 'theirs');
    expect(desk.entry<Note>('a')?.body.text).toBe('theirs');
    desk.undo('a');
    expect(desk.entry<Note>('a')?.body.text).toBe('mine');
  });

  it('sets what was left unsaved against a later version instead of saving over it', async () => {
    const { state, storage, desk, pass } = workroom();
    storage.set('easewright.unsaved.a', JSON.stringify({ kind: 'make', revision: 0, body: { text: 'left' } }));
    await desk.load('a');
    await pass();
    expect(desk.entry('a')?.standing).toBe('conflict');
    expect(state.puts).toBe(0);
  });

  it('says why a save was refused, keeps the edit, and sends it again when asked', async () => {
    const { state, desk, pass } = workroom();
    await desk.load('a');
    state.refuse = true;
    type(desk, 'two');
    await pass();
    expect(desk.entry('a')).toMatchObject({ standing: 'refused', refusal: { message: 'The disk is full.' } });
    state.refuse = false;
    desk.again('a');
    await pass();
    expect(state.document.body.text).toBe('two');
  });

  it('waits for one save to be acknowledged before it sends the next', async () => {
    const { state, desk, pass } = workroom();
    await desk.load('a');
    let release = () => {};
    state.hold = new Promise((done) => {
      release = done;
    });
    type(desk, 'two');
    const first = pass();
    await Promise.resolve();
    type(desk, 'three');
    await pass();
    expect(state.puts).toBe(1);
    release();
    await first;
    await pass();
    await pass();
    expect(desk.entry('a')?.standing).toBe('saved');
    expect(state.document).toMatchObject({ revision: 3, body: { text: 'three' } });
  });

  it('does not call it a conflict when only the acknowledgement was lost', async () => {
    const { state, desk, pass } = workroom();
    await desk.load('a');
    state.loseAnswer = true;
    type(desk, 'two');
    await pass();
    expect(desk.entry('a')?.standing).toBe('unreachable');
    state.loseAnswer = false;
    await pass();
    expect(desk.entry('a')).toMatchObject({ standing: 'saved', revision: 2 });
  });

  it('undoes a drag as one edit and separate edits one by one', async () => {
    const { state, desk } = workroom();
    await desk.load('a');
    for (const text of ['d1', 'd2', 'd3']) {
      state.now += 16;
      type(desk, text);
    }
    state.now += 5000;
    type(desk, 'later');
    desk.undo('a');
    expect(desk.entry<Note>('a')?.body.text).toBe('d3');
    desk.undo('a');
    expect(desk.entry<Note>('a')?.body.text).toBe('one');
    desk.redo('a');
    expect(desk.entry<Note>('a')?.body.text).toBe('d3');
  });
});
