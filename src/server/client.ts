import { demoDocuments } from '../../demo/index.ts';
import {
  type DocumentKind,
  type DocumentRevision,
  openWorkroom,
  placesOf,
  type RestoreChoice,
  readOwner,
  type StartChoice,
  type StoredDocument,
  type WorkroomFacts,
} from '../store/index.ts';
import type { Problem, Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';

/** A workroom as the terminal uses it: opened here where nobody has it, else through the server that does. */
export interface ReachedWorkroom {
  /** Through whom: this process, or a running server. */
  readonly through: 'here' | 'server';
  facts(): Promise<Result<WorkroomFacts>>;
  start(choice: StartChoice): Promise<Result<WorkroomFacts>>;
  list(choice?: { readonly kind?: DocumentKind; readonly deleted?: boolean }): Promise<Result<StoredDocument[]>>;
  read(id: string): Promise<Result<StoredDocument>>;
  history(id: string): Promise<Result<DocumentRevision[]>>;
  create(kind: DocumentKind, body: unknown): Promise<Result<StoredDocument>>;
  update(id: string, revision: number, body: unknown): Promise<Result<StoredDocument>>;
  remove(id: string, revision: number): Promise<Result<StoredDocument>>;
  restore(id: string, choice?: RestoreChoice): Promise<Result<StoredDocument>>;
  close(): Promise<void>;
}

const here = async (folder: string): Promise<Result<ReachedWorkroom>> => {
  const opened = await openWorkroom(folder);
  if (!opened.ok) return opened;
  const workroom = opened.value;
  return good({
    through: 'here',
    facts: async () => good(workroom.facts()),
    start: async (choice) => workroom.start(choice, choice === 'demo' ? demoDocuments() : []),
    list: async (choice) => workroom.list(choice),
    read: async (id) => workroom.read(id),
    history: async (id) => workroom.history(id),
    create: async (kind, body) => workroom.create(kind, body),
    update: async (id, revision, body) => workroom.update(id, revision, body),
    remove: async (id, revision) => workroom.remove(id, revision),
    restore: async (id, choice) => workroom.restore(id, choice),
    close: () => workroom.close(),
  });
};

type Method = 'GET' | 'POST' | 'PUT' | 'DELETE';

const through = (address: string, token: string): ReachedWorkroom => {
  const ask = async <T>(method: Method, path: string, body?: unknown): Promise<Result<T>> => {
    let response: Response;
    let read: unknown;
    try {
      response = await fetch(`${address}/api${path}`, {
        method,
        headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json' },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      read = await response.json();
    } catch {
      return bad('server.unreachable', { address });
    }
    if (response.ok) return good(read as T);
    // The sentence is made from the same code and values as it would be here.
    const { error } = read as { error?: Problem };
    return error ? bad(error.code, error.values) : bad('server.unreachable', { address });
  };
  const at = (id: string): string => `/documents/${encodeURIComponent(id)}`;

  return {
    through: 'server',
    facts: () => ask('GET', '/workroom'),
    start: (choice) => ask('POST', '/workroom/start', { choice }),
    list: async ({ kind, deleted = false } = {}) => {
      const query = new URLSearchParams({ ...(kind ? { kind } : {}), ...(deleted ? { deleted: 'yes' } : {}) });
      const listed = await ask<{ documents: StoredDocument[] }>('GET', `/documents?${query}`);
      return listed.ok ? good(listed.value.documents) : listed;
    },
    read: (id) => ask('GET', at(id)),
    history: async (id) => {
      const read = await ask<{ revisions: DocumentRevision[] }>('GET', `${at(id)}/history`);
      return read.ok ? good(read.value.revisions) : read;
    },
    create: (kind, body) => ask('POST', '/documents', { kind, body }),
    update: (id, revision, body) => ask('PUT', at(id), { revision, body }),
    remove: (id, revision) => ask('DELETE', at(id), { revision }),
    restore: (id, choice = {}) => ask('POST', `${at(id)}/restore`, choice),
    close: async () => undefined,
  };
};

/**
 * The workroom in a folder, whoever has it: opened by this process where nobody does, else through the
 * server whose address and token its owner left beside it.
 */
export const reachWorkroom = async (folder: string): Promise<Result<ReachedWorkroom>> => {
  const opened = await here(folder);
  if (opened.ok || !opened.problem.code.startsWith('store.in-use')) return opened;
  const owner = readOwner(placesOf(folder));
  return owner?.address ? good(through(owner.address, owner.token)) : opened;
};
