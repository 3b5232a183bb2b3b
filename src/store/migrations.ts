import type { Connection } from './sqlite.ts';

export interface Migration {
  readonly name: string;
  readonly sql: string;
}

/**
 * Every change of the tables since the first version, oldest first. Only ever add to the end: a
 * workroom remembers in `user_version` how many it has had. Never edit one that was released.
 */
export const migrations: readonly Migration[] = [
  {
    name: 'documents and their history',
    sql: `
      CREATE TABLE documents (
        id TEXT PRIMARY KEY NOT NULL,
        kind TEXT NOT NULL,
        revision INTEGER NOT NULL CHECK (revision >= 1),
        updated_at TEXT NOT NULL,
        deleted INTEGER NOT NULL DEFAULT 0 CHECK (deleted IN (0, 1)),
        body TEXT NOT NULL CHECK (json_valid(body))
      ) STRICT;
      CREATE INDEX documents_by_kind ON documents (kind, deleted);

      -- Past revisions only; the present one stands in documents.
      CREATE TABLE history (
        document TEXT NOT NULL REFERENCES documents (id),
        revision INTEGER NOT NULL,
        updated_at TEXT NOT NULL,
        deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
        body TEXT NOT NULL CHECK (json_valid(body)),
        PRIMARY KEY (document, revision)
      ) STRICT;

      -- What is known of the workroom itself, such as how it was started.
      CREATE TABLE facts (
        name TEXT PRIMARY KEY NOT NULL,
        value TEXT NOT NULL
      ) STRICT, WITHOUT ROWID;
    `,
  },
  {
    // Also the mark of the first program that keeps documents of the kind `envelope`: one before it leaves them alone.
    name: 'photographs, and patterns kept by their envelope',
    sql: `
      -- Kept in the database, so that a backup of the one file has them too.
      CREATE TABLE photographs (
        id TEXT PRIMARY KEY NOT NULL,
        mime TEXT NOT NULL CHECK (mime IN ('image/jpeg', 'image/png', 'image/webp')),
        bytes BLOB NOT NULL CHECK (length(bytes) > 0),
        width INTEGER NOT NULL CHECK (width >= 1),
        height INTEGER NOT NULL CHECK (height >= 1),
        added TEXT NOT NULL,
        deleted INTEGER NOT NULL DEFAULT 0 CHECK (deleted IN (0, 1))
      ) STRICT;
    `,
  },
];

/** Marks a file as a workroom (SQLite's `application_id`): the letters E a s e. */
export const applicationId = 0x45617365;

/** Brings a workroom's tables up to the newest version, each step wholly or not at all. */
export const migrate = (connection: Connection, steps: readonly Migration[] = migrations): void => {
  const done = connection.pragma('user_version', { simple: true }) as number;
  steps.slice(done).forEach((step, index) => {
    connection
      .transaction(() => {
        connection.exec(step.sql);
        connection.pragma(`application_id = ${applicationId}`);
        connection.pragma(`user_version = ${done + index + 1}`);
      })
      .immediate();
  });
};
