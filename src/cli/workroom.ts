import { completeMeasures, latestMeasures, type MeasureId, type Measures, type Wearer } from '../body/index.ts';
import {
  type DocumentKind,
  dataFolder,
  openWorkroom,
  placesOf,
  readOwner,
  type StoredDocument,
} from '../store/index.ts';
import { bad, good, type Problem, type Result } from '../units/index.ts';

/** The workroom as a command uses it, whether a server has it open or this command opens it itself. */
export interface WorkroomDoor {
  list(kind: DocumentKind): Promise<Result<readonly StoredDocument[]>>;
  create(kind: DocumentKind, body: unknown): Promise<Result<StoredDocument>>;
  update(id: string, revision: number, body: unknown): Promise<Result<StoredDocument>>;
}

interface Answer {
  readonly documents?: readonly StoredDocument[];
  readonly error?: { readonly code: string; readonly values?: Problem['values'] };
}

/** Reaches the workroom through the server that owns it, with the token only this person can read. */
const throughServer = (address: string, token: string): WorkroomDoor => {
  const ask = async <T>(method: string, path: string, body?: unknown): Promise<Result<T>> => {
    try {
      const answer = await fetch(`${address}${path}`, {
        method,
        headers: { authorization: `Bearer ${token}`, 'content-type': 'application/json' },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      });
      const json = (await answer.json()) as Answer & T;
      if (!json.error) return good(json);
      return bad(json.error.code, json.error.values);
    } catch {
      return bad('cli.server-silent', { address });
    }
  };
  return {
    list: async (kind) => {
      const answer = await ask<Required<Pick<Answer, 'documents'>>>('GET', `/api/documents?kind=${kind}`);
      return answer.ok ? good(answer.value.documents) : answer;
    },
    create: (kind, body) => ask('POST', '/api/documents', { kind, body }),
    update: (id, revision, body) => ask('PUT', `/api/documents/${encodeURIComponent(id)}`, { revision, body }),
  };
};

/** Runs a command's work with the workroom: through its server where one runs, else opened for as long as the work takes. */
export const withWorkroom = async <T>(
  data: string | undefined,
  work: (door: WorkroomDoor) => Promise<Result<T>>,
): Promise<Result<T>> => {
  const folder = dataFolder(data);
  const owner = readOwner(placesOf(folder));
  if (owner?.address && alive(owner.pid)) return work(throughServer(owner.address, owner.token));
  const opened = await openWorkroom(folder);
  if (!opened.ok) return opened;
  const workroom = opened.value;
  try {
    return await work({
      list: async (kind) => workroom.list({ kind }),
      create: async (kind, body) => workroom.create(kind, body),
      update: async (id, revision, body) => workroom.update(id, revision, body),
    });
  } finally {
    await workroom.close();
  }
};

const alive = (pid: number): boolean => {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
};

export const storeInWorkroom = (
  data: string | undefined,
  kind: DocumentKind,
  body: unknown,
): Promise<Result<StoredDocument>> => withWorkroom(data, (door) => door.create(kind, body));

const bodyOf = (document: StoredDocument): Wearer => document.body as unknown as Wearer;

/** A wearer by name (case is ignored) or document id. */
export const findWearer = async (
  door: WorkroomDoor,
  name: string,
): Promise<Result<{ document: StoredDocument; wearer: Wearer }>> => {
  const documents = await door.list('wearer');
  if (!documents.ok) return documents;
  const wanted = name.trim().toLowerCase();
  const found = documents.value.find((one) => one.id === name || bodyOf(one).name.trim().toLowerCase() === wanted);
  if (found) return good({ document: found, wearer: bodyOf(found) });
  return bad('cli.wearer-unknown', { name, names: documents.value.map((one) => bodyOf(one).name).join(', ') || '–' });
};

export interface KnownBody {
  readonly measures: Measures;
  readonly estimated: readonly MeasureId[];
  readonly known: Measures;
}

/** A wearer's latest measures, made whole by estimates where she is compared with a survey. */
export const measuresOfWearer = (data: string | undefined, name: string): Promise<Result<KnownBody>> =>
  withWorkroom(data, async (door) => {
    const found = await findWearer(door, name);
    if (!found.ok) return found;
    const known = latestMeasures(found.value.wearer);
    const survey = found.value.wearer.comparedWith;
    if (survey === null) return good({ measures: known, estimated: [], known });
    const { measures, estimated } = completeMeasures(known, survey);
    return good({ measures, estimated, known });
  });
