import { randomBytes, randomUUID } from 'node:crypto';
import { mkdirSync } from 'node:fs';
import type { Problem, Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { storeWords } from '../words/index.ts';
import { type Backup, backupIsDue, takeBackup } from './backup.ts';
import type { Circumstances } from './circumstances.ts';
import { openDatabase } from './database.ts';
import {
  createDocument,
  type DocumentDraft,
  type DocumentRevision,
  deleteDocument,
  documentHistory,
  listDocuments,
  type RestoreChoice,
  readDocument,
  restoreDocument,
  type StoredDocument,
  updateDocument,
} from './documents.ts';
import { problemFromFault } from './fault.ts';
import { type Places, placesOf } from './folder.ts';
import type { DocumentKind } from './kind.ts';
import { type Lock, type Owner, takeLock, writeOwner } from './lock.ts';
import { type Migration, migrations } from './migrations.ts';
import { addPhotograph, markPhotograph, type Photograph, type Picture, readPhotograph } from './photographs.ts';
import { type Connection, loadSqlite, type Sqlite } from './sqlite.ts';
import { query, rows, write } from './tables.ts';

export interface WorkroomFacts {
  readonly name: string;
  readonly started: boolean;
  readonly demo: boolean;
}

export type StartChoice = 'demo' | 'own';

/** An open workroom. Everything it acknowledges is on the disk. */
export interface Workroom {
  readonly folder: string;
  readonly owner: Owner;
  facts(): WorkroomFacts;
  /** Marks the workroom as started and stores what it starts with, all or nothing. */
  start(choice: StartChoice, documents: readonly DocumentDraft[]): Result<WorkroomFacts>;
  list(choice?: { readonly kind?: DocumentKind; readonly deleted?: boolean }): Result<StoredDocument[]>;
  read(id: string): Result<StoredDocument>;
  history(id: string): Result<DocumentRevision[]>;
  create(kind: DocumentKind, body: unknown): Result<StoredDocument>;
  update(id: string, revision: number, body: unknown): Result<StoredDocument>;
  remove(id: string, revision: number): Result<StoredDocument>;
  restore(id: string, choice?: RestoreChoice): Result<StoredDocument>;
  /** Keeps a picture that has passed the door (see the server's), under a name of its own. */
  addPhotograph(picture: Picture): Result<Photograph>;
  photograph(id: string, choice?: { readonly deleted?: boolean }): Result<Photograph & Picture>;
  removePhotograph(id: string): Result<Photograph>;
  restorePhotograph(id: string): Result<Photograph>;
  /** Writes down where a server over this workroom listens, for this person's other programs. */
  announce(address: string): Result<Owner>;
  backup(): Promise<Result<Backup>>;
  /** Takes a backup if the newest is a day old; null when none is due. */
  backupIfDue(): Promise<Result<Backup | null>>;
  close(): Promise<void>;
}

export interface OpenOptions extends Partial<Circumstances> {
  /** Called with the open connection; tests narrow its disk with it. */
  readonly prepare?: (connection: Connection) => void;
  /** The steps the tables are brought up by; the program's own unless a test adds to them. */
  readonly migrations?: readonly Migration[];
}

const nameOf = (choice: string | undefined): string =>
  choice === 'demo' ? storeWords.workrooms.demo : storeWords.workrooms.own;

const operate = (
  sqlite: Sqlite,
  connection: Connection,
  lock: Lock,
  places: Places,
  folder: string,
  first: Owner,
  circumstances: Circumstances,
): Workroom => {
  let owner = first;
  let copying: Promise<unknown> = Promise.resolve();

  const attempt = <T>(work: () => Result<T>): Result<T> => {
    try {
      return work();
    } catch (fault) {
      const problem = problemFromFault(fault, folder);
      if (!problem) throw fault;
      return { ok: false, problem };
    }
  };

  /** Runs a write as one transaction; a problem found on the way leaves nothing behind. */
  const changing = <T>(work: () => Result<T>): Result<T> => {
    class Refused extends Error {
      readonly problem: Problem;
      constructor(problem: Problem) {
        super(problem.code);
        this.problem = problem;
      }
    }
    return attempt(() => {
      try {
        return connection
          .transaction(() => {
            const result = work();
            if (!result.ok) throw new Refused(result.problem);
            return result;
          })
          .immediate();
      } catch (fault) {
        if (fault instanceof Refused) return { ok: false, problem: fault.problem };
        throw fault;
      }
    });
  };

  const choice = (): string | undefined =>
    rows(connection, query.selectFrom('facts').select('value').where('name', '=', 'started-as'))[0]?.value;

  const facts = (): WorkroomFacts => {
    const startedAs = choice();
    return { name: nameOf(startedAs), started: startedAs !== undefined, demo: startedAs === 'demo' };
  };

  const backup = (): Promise<Result<Backup>> => {
    const next = copying.then(() => takeBackup(sqlite, connection, places, circumstances.now()));
    copying = next.catch(() => undefined);
    return next;
  };

  return {
    folder,
    get owner() {
      return owner;
    },
    facts,
    start: (startedAs, documents) =>
      changing(() => {
        if (choice() !== undefined) return bad('store.already-started');
        for (const draft of documents) {
          const created = createDocument(connection, circumstances, draft);
          if (!created.ok) return created;
        }
        write(connection, query.insertInto('facts').values({ name: 'started-as', value: startedAs }));
        return good(facts());
      }),
    list: (filter) => attempt(() => listDocuments(connection, filter)),
    read: (id) => attempt(() => readDocument(connection, id)),
    history: (id) => attempt(() => documentHistory(connection, id)),
    create: (kind, body) => changing(() => createDocument(connection, circumstances, { kind, body })),
    update: (id, revision, body) => changing(() => updateDocument(connection, circumstances, id, revision, body)),
    remove: (id, revision) => changing(() => deleteDocument(connection, circumstances, id, revision)),
    restore: (id, filter) => changing(() => restoreDocument(connection, circumstances, id, filter)),
    addPhotograph: (picture) => changing(() => addPhotograph(connection, circumstances, picture)),
    photograph: (id, filter) => attempt(() => readPhotograph(connection, id, filter)),
    removePhotograph: (id) => changing(() => markPhotograph(connection, id, true)),
    restorePhotograph: (id) => changing(() => markPhotograph(connection, id, false)),
    announce: (address) =>
      attempt(() => {
        writeOwner(places, { ...owner, address });
        owner = { ...owner, address };
        return good(owner);
      }),
    backup,
    backupIfDue: async () => (backupIsDue(places, circumstances.now()) ? backup() : good(null)),
    close: async () => {
      await copying;
      // Leaves the folder with one plain file, which is easiest to copy; where that is not possible it is no harm.
      attempt(() => good(connection.pragma('wal_checkpoint(TRUNCATE)')));
      connection.close();
      lock.release();
    },
  };
};

/**
 * Opens the workroom in a folder, setting it up where there is none, and makes this process its one
 * owner. Problems: another process has it (`store.in-use…`), its file is damaged or gone and a backup is
 * offered (`store.damaged`, `store.missing`: see restoreBackup), a newer program wrote it
 * (`store.newer`), the disk is full or the folder cannot be written.
 */
export const openWorkroom = async (folder: string, options: OpenOptions = {}): Promise<Result<Workroom>> => {
  const circumstances: Circumstances = { now: options.now ?? (() => new Date()), newId: options.newId ?? randomUUID };
  const loaded = await loadSqlite();
  if (!loaded.ok) return loaded;
  const sqlite = loaded.value;
  const places = placesOf(folder);
  let lock: Lock | undefined;
  try {
    for (const place of [folder, places.backups]) mkdirSync(place, { recursive: true });
    const taken = takeLock(sqlite, places, folder);
    if (!taken.ok) return taken;
    lock = taken.value;
    const connection = await openDatabase(sqlite, places, folder, circumstances.now, options.migrations ?? migrations);
    if (!connection.ok) {
      lock.release();
      return connection;
    }
    options.prepare?.(connection.value);
    const owner: Owner = {
      pid: process.pid,
      since: circumstances.now().toISOString(),
      token: randomBytes(32).toString('hex'),
      address: null,
    };
    writeOwner(places, owner);
    return good(operate(sqlite, connection.value, lock, places, folder, owner, circumstances));
  } catch (fault) {
    lock?.release();
    const problem = problemFromFault(fault, folder);
    if (!problem) throw fault;
    return { ok: false, problem };
  }
};
