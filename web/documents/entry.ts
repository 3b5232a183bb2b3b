import type { ProblemWords } from '../../src/words/index.ts';
import type { DocumentKind, StoredDocument } from './api.ts';

/**
 * How what is on the page stands to what the workroom keeps.
 * saved: the same. waiting: a moment until it is sent. saving: sent. unreachable: the workroom does not answer.
 * refused: it answered no. conflict: it keeps a later version than the one this was made from.
 */
export type Standing = 'saved' | 'waiting' | 'saving' | 'unreachable' | 'refused' | 'conflict';

/** One document on the page: its body now, how it stands, and the bodies before and after for undo. */
export interface Entry<Body = unknown> {
  readonly id: string;
  readonly kind: DocumentKind;
  /** Revision of the kept version this body was made from. */
  readonly revision: number;
  readonly body: Body;
  readonly standing: Standing;
  /** ISO time of the last save the workroom acknowledged. */
  readonly savedAt: string;
  readonly deleted: boolean;
  readonly refusal: ProblemWords | null;
  readonly theirs: StoredDocument<Body> | null;
  readonly before: readonly Body[];
  readonly after: readonly Body[];
  /** Edits under one name that follow each other closely undo as one: a drag, a word being typed. */
  readonly lastEdit: { readonly name: string; readonly at: number } | null;
}

/** What is put by in the browser while it is not yet saved, so that closing the page loses nothing. */
export interface Unsaved {
  readonly kind: DocumentKind;
  readonly revision: number;
  readonly body: unknown;
}

/** Steps of undo kept; more than anyone takes back by hand. */
const undoDepth = 200;
/** Edits of one name this close together, in ms, are one edit. */
const oneGesture = 1200;

export const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/** A document just read. What was left unsaved in the browser is taken up again, or set against a later kept version. */
export const opened = <Body>(stored: StoredDocument<Body>, unsaved: Unsaved | null): Entry<Body> => {
  const entry: Entry<Body> = {
    id: stored.id,
    kind: stored.kind,
    revision: stored.revision,
    body: stored.body,
    standing: 'saved',
    savedAt: stored.updatedAt,
    deleted: stored.deleted,
    refusal: null,
    theirs: null,
    before: [],
    after: [],
    lastEdit: null,
  };
  if (!unsaved || same(unsaved.body, stored.body)) return entry;
  const mine = { ...entry, body: unsaved.body as Body, before: [stored.body] };
  if (unsaved.revision === stored.revision) return { ...mine, standing: 'waiting' };
  return { ...mine, revision: unsaved.revision, standing: 'conflict', theirs: stored };
};

const unsettled = (standing: Standing): Standing => (standing === 'conflict' ? 'conflict' : 'waiting');

/** The entry after an edit. An edit that changes nothing is none. */
export const edited = <Body>(entry: Entry<Body>, body: Body, name: string, at: number): Entry<Body> => {
  if (same(body, entry.body)) return entry;
  const oneEdit = entry.lastEdit?.name === name && at - entry.lastEdit.at < oneGesture;
  return {
    ...entry,
    body,
    standing: unsettled(entry.standing),
    before: oneEdit ? entry.before : [...entry.before, entry.body].slice(-undoDepth),
    after: [],
    lastEdit: { name, at },
  };
};

export const undone = <Body>(entry: Entry<Body>): Entry<Body> => {
  const body = entry.before.at(-1);
  if (body === undefined) return entry;
  const moved = { before: entry.before.slice(0, -1), after: [entry.body, ...entry.after], lastEdit: null };
  return { ...entry, ...moved, body, standing: unsettled(entry.standing) };
};

export const redone = <Body>(entry: Entry<Body>): Entry<Body> => {
  const body = entry.after[0];
  if (body === undefined) return entry;
  const moved = { before: [...entry.before, entry.body], after: entry.after.slice(1), lastEdit: null };
  return { ...entry, ...moved, body, standing: unsettled(entry.standing) };
};

/** The entry after the workroom acknowledged `sent`. What was typed meanwhile still waits. */
export const acknowledged = <Body>(entry: Entry<Body>, stored: StoredDocument<Body>, sent: Body): Entry<Body> => ({
  ...entry,
  revision: stored.revision,
  savedAt: stored.updatedAt,
  deleted: stored.deleted,
  refusal: null,
  theirs: null,
  standing: same(entry.body, sent) ? 'saved' : 'waiting',
});

/** The conflict settled: hers is saved over theirs, or theirs is taken and hers can be had back by undo. */
export const settled = <Body>(entry: Entry<Body>, choice: 'mine' | 'theirs'): Entry<Body> => {
  const theirs = entry.theirs;
  if (!theirs) return entry;
  const over = { ...entry, revision: theirs.revision, theirs: null, refusal: null, lastEdit: null, after: [] };
  return choice === 'mine'
    ? { ...over, standing: 'waiting', before: [...entry.before, theirs.body] }
    : {
        ...over,
        standing: 'saved',
        body: theirs.body,
        savedAt: theirs.updatedAt,
        before: [...entry.before, entry.body],
      };
};
