import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import type { Circumstances } from './circumstances.ts';
import type { Connection } from './sqlite.ts';
import { query, rows, type Tables, write } from './tables.ts';

export const photographTypes = ['image/jpeg', 'image/png', 'image/webp'] as const;
export type PhotographType = (typeof photographTypes)[number];

/** A photograph without its picture. */
export interface Photograph {
  readonly id: string;
  readonly mime: PhotographType;
  /** Size in pixels. */
  readonly width: number;
  readonly height: number;
  /** ISO moment, UTC. */
  readonly added: string;
  readonly deleted: boolean;
}

/** A picture as it is to be kept: whoever brings it has made sure that it is one. */
export interface Picture {
  readonly mime: PhotographType;
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
}

type Row = Tables['photographs'];

const told = ({ id, mime, width, height, added, deleted }: Omit<Row, 'bytes'>): Photograph => ({
  id,
  mime: mime as PhotographType,
  width,
  height,
  added,
  deleted: deleted === 1,
});

const find = (connection: Connection, id: string): Omit<Row, 'bytes'> | undefined =>
  rows(
    connection,
    query.selectFrom('photographs').select(['id', 'mime', 'width', 'height', 'added', 'deleted']).where('id', '=', id),
  )[0];

const missing = (id: string) => bad('store.no-such-photograph', { id });

/** Whether there is such a photograph, deleted or not. */
export const isPhotograph = (connection: Connection, id: string): boolean => find(connection, id) !== undefined;

/** Keeps a picture under a name of its own. Call within a transaction. */
export const addPhotograph = (
  connection: Connection,
  { now, newId }: Circumstances,
  { mime, bytes, width, height }: Picture,
): Result<Photograph> => {
  const row: Row = { id: newId(), mime, bytes, width, height, added: now().toISOString(), deleted: 0 };
  write(connection, query.insertInto('photographs').values(row));
  return good(told(row));
};

/** A photograph with its picture. A deleted one is only given to whoever asks for deleted ones too. */
export const readPhotograph = (
  connection: Connection,
  id: string,
  { deleted = false }: { readonly deleted?: boolean } = {},
): Result<Photograph & Picture> => {
  const row = rows(connection, query.selectFrom('photographs').selectAll().where('id', '=', id))[0];
  if (!row || (row.deleted === 1 && !deleted)) return missing(id);
  return good({ ...told(row), mime: row.mime as PhotographType, bytes: row.bytes });
};

/** Marks a photograph deleted, or takes that back; its picture stays. Call within a transaction. */
export const markPhotograph = (connection: Connection, id: string, deleted: boolean): Result<Photograph> => {
  const row = find(connection, id);
  if (!row) return missing(id);
  const mark = deleted ? 1 : 0;
  if (row.deleted !== mark)
    write(connection, query.updateTable('photographs').set({ deleted: mark }).where('id', '=', id));
  return good(told({ ...row, deleted: mark }));
};
