-- migration 1: documents and their history (9ef03c085ac468ff)
-- migration 2: photographs, and patterns kept by their envelope (de641bad66404845)
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
CREATE TABLE photographs (
  id TEXT PRIMARY KEY NOT NULL,
  mime TEXT NOT NULL CHECK (mime IN ('image/jpeg', 'image/png', 'image/webp')),
  bytes BLOB NOT NULL CHECK (length(bytes) > 0),
  width INTEGER NOT NULL CHECK (width >= 1),
  height INTEGER NOT NULL CHECK (height >= 1),
  added TEXT NOT NULL,
  deleted INTEGER NOT NULL DEFAULT 0 CHECK (deleted IN (0, 1))
) STRICT;
CREATE INDEX documents_by_kind ON documents (kind, deleted);
