-- migration 1: documents and their history (9ef03c085ac468ff)
CREATE TABLE documents (
  id TEXT PRIMARY KEY NOT NULL,
  kind TEXT NOT NULL,
  revision INTEGER NOT NULL CHECK (revision >= 1),
  updated_at TEXT NOT NULL,
  deleted INTEGER NOT NULL DEFAULT 0 CHECK (deleted IN (0, 1)),
  body TEXT NOT NULL CHECK (json_valid(body))
) STRICT;
CREATE TABLE facts (
  name TEXT PRIMARY KEY NOT NULL,
  value TEXT NOT NULL
) STRICT, WITHOUT ROWID;
CREATE TABLE history (
  document TEXT NOT NULL REFERENCES documents (id),
  revision INTEGER NOT NULL,
  updated_at TEXT NOT NULL,
  deleted INTEGER NOT NULL CHECK (deleted IN (0, 1)),
  body TEXT NOT NULL CHECK (json_valid(body)),
  PRIMARY KEY (document, revision)
) STRICT;
CREATE INDEX documents_by_kind ON documents (kind, deleted);
