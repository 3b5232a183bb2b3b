import { type Compilable, DummyDriver, Kysely, SqliteAdapter, SqliteIntrospector, SqliteQueryCompiler } from 'kysely';
import type { Connection } from './sqlite.ts';

interface DocumentRow {
  readonly id: string;
  readonly kind: string;
  readonly revision: number;
  readonly updated_at: string;
  readonly deleted: number;
  readonly body: string;
}

interface HistoryRow {
  readonly document: string;
  readonly revision: number;
  readonly updated_at: string;
  readonly deleted: number;
  readonly body: string;
}

interface FactRow {
  readonly name: string;
  readonly value: string;
}

interface PhotographRow {
  readonly id: string;
  readonly mime: string;
  readonly bytes: Uint8Array;
  readonly width: number;
  readonly height: number;
  readonly added: string;
  readonly deleted: number;
}

export interface Tables {
  readonly documents: DocumentRow;
  readonly history: HistoryRow;
  readonly facts: FactRow;
  readonly photographs: PhotographRow;
}

/** Builds typed queries; it runs none. Running them here, at once, keeps a transaction one uninterrupted turn. */
export const query = new Kysely<Tables>({
  dialect: {
    createAdapter: () => new SqliteAdapter(),
    createDriver: () => new DummyDriver(),
    createIntrospector: (database) => new SqliteIntrospector(database),
    createQueryCompiler: () => new SqliteQueryCompiler(),
  },
});

/** All rows of a reading query. */
export const rows = <Row>(connection: Connection, built: Compilable<Row>): Row[] => {
  const { sql, parameters } = built.compile();
  return connection.prepare(sql).all(...parameters) as Row[];
};

/** Runs a writing query; the number of rows it changed. */
export const write = (connection: Connection, built: Compilable): number => {
  const { sql, parameters } = built.compile();
  return connection.prepare(sql).run(...parameters).changes;
};
