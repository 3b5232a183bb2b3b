import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import type { Circumstances } from './circumstances.ts';
import type { Body } from './format.ts';
import type { DocumentKind } from './kind.ts';
import { checkBody, readStored } from './kinds.ts';
import { isPhotograph } from './photographs.ts';
import type { Connection } from './sqlite.ts';
import { query, rows, type Tables, write } from './tables.ts';

type Row = Tables['documents'];

/** A document as page, terminal and server exchange it. */
export interface StoredDocument {
  readonly id: string;
  readonly kind: DocumentKind;
  /** Counts from 1; every write adds one, and says which it was made from. */
  readonly revision: number;
  /** ISO moment, UTC. */
  readonly updatedAt: string;
  readonly deleted: boolean;
  readonly body: Body;
}

/** One state a document has been in; the newest is its present one. */
export type DocumentRevision = Omit<StoredDocument, 'id' | 'kind'>;

/** A document to be stored, with an id of its own where others refer to it. */
export interface DocumentDraft {
  readonly id: string;
  readonly kind: DocumentKind;
  readonly body: unknown;
}

const stored = (row: Row): Result<StoredDocument> => {
  const kind = row.kind as DocumentKind;
  const body = readStored(kind, row.body);
  if (!body.ok) return body;
  const { id, revision, updated_at: updatedAt, deleted } = row;
  return good({ id, kind, revision, updatedAt, deleted: deleted === 1, body: body.value });
};

const collect = <T>(results: readonly Result<T>[]): Result<T[]> => {
  const values: T[] = [];
  for (const result of results) {
    if (!result.ok) return result;
    values.push(result.value);
  }
  return good(values);
};

const find = (connection: Connection, id: string): Row | undefined =>
  rows(connection, query.selectFrom('documents').selectAll().where('id', '=', id))[0];

const missing = (id: string) => bad('store.no-such-document', { id });

const conflict = (row: Row, revision: number) =>
  bad('store.conflict', { id: row.id, current: row.revision, given: revision });

/** Documents of one kind, or all, latest change first. Deleted ones only where asked for. */
export const listDocuments = (
  connection: Connection,
  { kind, deleted = false }: { readonly kind?: DocumentKind; readonly deleted?: boolean } = {},
): Result<StoredDocument[]> => {
  let built = query.selectFrom('documents').selectAll().orderBy('updated_at', 'desc').orderBy('id');
  if (kind) built = built.where('kind', '=', kind);
  if (!deleted) built = built.where('deleted', '=', 0);
  return collect(rows(connection, built).map(stored));
};

export const readDocument = (connection: Connection, id: string): Result<StoredDocument> => {
  const row = find(connection, id);
  return row ? stored(row) : missing(id);
};

/** Every state a document has been in, newest first. */
export const documentHistory = (connection: Connection, id: string): Result<DocumentRevision[]> => {
  const row = find(connection, id);
  if (!row) return missing(id);
  const past = rows(
    connection,
    query.selectFrom('history').selectAll().where('document', '=', id).orderBy('revision', 'desc'),
  );
  const all = collect([row, ...past].map((state) => stored({ ...state, id, kind: row.kind })));
  return all.ok ? good(all.value.map(({ id: _id, kind: _kind, ...revision }) => revision)) : all;
};

/** What each part of a make may be. A bought pattern is known by its pieces or by its envelope alone. */
const partKinds: Readonly<Record<'wearer' | 'pattern' | 'cloth', readonly DocumentKind[]>> = {
  wearer: ['wearer'],
  pattern: ['pattern', 'envelope'],
  cloth: ['cloth'],
};

const checkMake = (connection: Connection, body: Body): Result<null> => {
  for (const part of ['wearer', 'pattern', 'cloth'] as const) {
    const id = body[part];
    if (typeof id !== 'string' || (part === 'pattern' && id.startsWith('house:'))) continue;
    const kind = find(connection, id)?.kind;
    if (!partKinds[part].some((one) => one === kind)) return bad('store.no-such-part', { part, id });
  }
  return good(null);
};

const checkEnvelope = (connection: Connection, body: Body): Result<null> => {
  const { photographs } = body as { readonly photographs?: readonly string[] };
  const lacking = (photographs ?? []).find((id) => !isPhotograph(connection, id));
  return lacking === undefined ? good(null) : bad('store.no-such-photograph', { id: lacking });
};

/** What a document names has to be there; it may be deleted, since a deletion can be taken back. */
const checkReferences = (connection: Connection, kind: DocumentKind, body: Body): Result<null> => {
  if (kind === 'make') return checkMake(connection, body);
  if (kind === 'envelope') return checkEnvelope(connection, body);
  return good(null);
};

const onlyOneSettings = (connection: Connection, kind: DocumentKind): Result<null> =>
  kind === 'settings' &&
  rows(connection, query.selectFrom('documents').select('id').where('kind', '=', 'settings').where('deleted', '=', 0))
    .length > 0
    ? bad('store.one-settings')
    : good(null);

/** Stores a new document. Call within a transaction. */
export const createDocument = (
  connection: Connection,
  { now, newId }: Circumstances,
  { id, kind, body }: Omit<DocumentDraft, 'id'> & { readonly id?: string },
): Result<StoredDocument> => {
  const checked = checkBody(kind, body);
  if (!checked.ok) return checked;
  for (const check of [onlyOneSettings(connection, kind), checkReferences(connection, kind, checked.value)]) {
    if (!check.ok) return check;
  }
  const row: Row = {
    id: id ?? newId(),
    kind,
    revision: 1,
    updated_at: now().toISOString(),
    deleted: 0,
    body: JSON.stringify(checked.value),
  };
  write(connection, query.insertInto('documents').values(row));
  return stored(row);
};

/** Puts a row into its next state and keeps the one before. */
const advance = (
  connection: Connection,
  { now }: Circumstances,
  row: Row,
  change: Partial<Pick<Row, 'body' | 'deleted'>>,
): Result<StoredDocument> => {
  const next: Row = { ...row, ...change, revision: row.revision + 1, updated_at: now().toISOString() };
  const { id: document, kind: _kind, ...state } = row;
  write(connection, query.insertInto('history').values({ document, ...state }));
  const { id, kind: _same, ...changed } = next;
  write(connection, query.updateTable('documents').set(changed).where('id', '=', id));
  return stored(next);
};

/** Stores a new body made from `revision`. The same body again is no change. Call within a transaction. */
export const updateDocument = (
  connection: Connection,
  circumstances: Circumstances,
  id: string,
  revision: number,
  body: unknown,
): Result<StoredDocument> => {
  const row = find(connection, id);
  if (!row) return missing(id);
  if (row.revision !== revision) return conflict(row, revision);
  if (row.deleted) return bad('store.deleted', { id });
  const kind = row.kind as DocumentKind;
  const checked = checkBody(kind, body);
  if (!checked.ok) return checked;
  const whole = checkReferences(connection, kind, checked.value);
  if (!whole.ok) return whole;
  const text = JSON.stringify(checked.value);
  return text === row.body ? stored(row) : advance(connection, circumstances, row, { body: text });
};

/** Marks a document deleted; its body and history stay. Call within a transaction. */
export const deleteDocument = (
  connection: Connection,
  circumstances: Circumstances,
  id: string,
  revision: number,
): Result<StoredDocument> => {
  const row = find(connection, id);
  if (!row) return missing(id);
  if (row.revision !== revision) return conflict(row, revision);
  return row.deleted ? stored(row) : advance(connection, circumstances, row, { deleted: 1 });
};

export interface RestoreChoice {
  /** The revision this is decided on; left out, the present one is taken. */
  readonly revision?: number;
  /** The past revision to go back to; left out, a deletion is taken back, else the last edit. */
  readonly to?: number;
}

/** Goes back to an earlier state by adding a new one that equals it, so that going back can be taken back too. Call within a transaction. */
export const restoreDocument = (
  connection: Connection,
  circumstances: Circumstances,
  id: string,
  { revision, to }: RestoreChoice = {},
): Result<StoredDocument> => {
  const row = find(connection, id);
  if (!row) return missing(id);
  if (revision !== undefined && row.revision !== revision) return conflict(row, revision);
  const only = onlyOneSettings(connection, row.kind as DocumentKind);
  if (row.deleted && !only.ok) return only;
  if (to === undefined && row.deleted) return advance(connection, circumstances, row, { deleted: 0 });
  const wanted = to ?? row.revision - 1;
  if (wanted === row.revision)
    return row.deleted ? advance(connection, circumstances, row, { deleted: 0 }) : stored(row);
  const [past] = rows(
    connection,
    query.selectFrom('history').selectAll().where('document', '=', id).where('revision', '=', wanted),
  );
  if (!past)
    return bad(to === undefined ? 'store.nothing-to-undo' : 'store.no-such-revision', { id, revision: wanted });
  return advance(connection, circumstances, row, { body: past.body, deleted: 0 });
};
