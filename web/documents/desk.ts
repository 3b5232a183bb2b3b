import { type Answer, ask, type DocumentKind, type Fetcher, type StoredDocument } from './api.ts';
import { acknowledged, type Entry, edited, opened, redone, same, settled, type Unsaved, undone } from './entry.ts';

/** What the desk needs of the browser, passed in so that it can be tried without one. */
export interface DeskTools {
  readonly fetcher: Fetcher;
  readonly storage: Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>;
  readonly now: () => number;
  readonly later: (what: () => void, ms: number) => unknown;
}

/** A pause in typing this long, in ms, sends what was typed. */
const pause = 400;
/** While the workroom does not answer, it is asked again this often, in ms. */
const retry = 2500;

const unsavedName = (id: string) => `easewright.unsaved.${id}`;

/**
 * The documents open on the page: loaded once, edited at once, saved by themselves with the revision they were
 * made from. Whatever is not yet acknowledged is also put by in the browser's own storage.
 */
export class Desk {
  readonly #tools: DeskTools;
  readonly #entries = new Map<string, Entry>();
  readonly #lists = new Map<DocumentKind, readonly StoredDocument[]>();
  readonly #listeners = new Set<() => void>();
  /** Documents whose save is on its way: a second save before its answer would carry a revision that is about to be stale. */
  readonly #onTheWay = new Set<string>();
  #reachable = true;

  constructor(tools: DeskTools) {
    this.#tools = tools;
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  get reachable(): boolean {
    return this.#reachable;
  }

  entry<Body>(id: string): Entry<Body> | undefined {
    return this.#entries.get(id) as Entry<Body> | undefined;
  }

  /** The documents of a kind as last listed, with what has been edited since; undefined until they were listed. */
  list<Body>(kind: DocumentKind): readonly StoredDocument<Body>[] | undefined {
    return this.#lists.get(kind) as readonly StoredDocument<Body>[] | undefined;
  }

  async ask<T>(method: 'GET' | 'POST' | 'PUT' | 'DELETE', path: string, body?: unknown): Promise<Answer<T>> {
    const answer = await ask<T>(this.#tools.fetcher, method, path, body);
    this.#heard(answer.kind !== 'silence');
    return answer;
  }

  async loadList(kind: DocumentKind): Promise<Answer<readonly StoredDocument[]>> {
    const answer = await this.ask<{ documents: readonly StoredDocument[] }>('GET', `/api/documents?kind=${kind}`);
    if (answer.kind !== 'answer') return answer;
    const documents = answer.value.documents.filter((document) => !document.deleted);
    for (const document of documents) this.#open(document);
    this.#lists.set(
      kind,
      documents.map((document) => this.#asEdited(document)),
    );
    this.#tell();
    return { kind: 'answer', value: documents };
  }

  async load<Body>(id: string): Promise<Answer<Entry<Body>>> {
    const had = this.#entries.get(id);
    if (had) {
      void this.#lookAgain(id);
      return { kind: 'answer', value: had as Entry<Body> };
    }
    const answer = await this.ask<StoredDocument>('GET', `/api/documents/${encodeURIComponent(id)}`);
    if (answer.kind !== 'answer') return answer;
    return { kind: 'answer', value: this.#open(answer.value) as Entry<Body> };
  }

  /** Another page may have changed it meanwhile: what is saved here is brought up to what is kept. */
  async #lookAgain(id: string): Promise<void> {
    const answer = await this.ask<StoredDocument>('GET', `/api/documents/${encodeURIComponent(id)}`);
    if (answer.kind === 'answer') this.#open(answer.value);
  }

  async create<Body>(kind: DocumentKind, body: Body): Promise<Answer<StoredDocument<Body>>> {
    const answer = await this.ask<StoredDocument<Body>>('POST', '/api/documents', { kind, body });
    if (answer.kind === 'answer') {
      this.#open(answer.value);
      const listed = this.#lists.get(kind);
      if (listed) this.#lists.set(kind, [...listed, answer.value]);
      this.#tell();
    }
    return answer;
  }

  /** Changes a document on the page now, and in the workroom after a pause. Edits under one name undo together. */
  edit<Body>(id: string, change: (body: Body) => Body, name: string): void {
    const entry = this.#entries.get(id);
    if (!entry) throw new Error(`edited a document that is not open: ${id}`);
    this.#put(edited(entry, change(entry.body as Body), name, this.#tools.now()));
  }

  undo(id: string): void {
    const entry = this.#entries.get(id);
    if (entry) this.#put(undone(entry));
  }

  redo(id: string): void {
    const entry = this.#entries.get(id);
    if (entry) this.#put(redone(entry));
  }

  settle(id: string, choice: 'mine' | 'theirs'): void {
    const entry = this.#entries.get(id);
    if (entry) this.#put(settled(entry, choice));
  }

  /** Sends a refused document once more. */
  again(id: string): void {
    const entry = this.#entries.get(id);
    if (entry?.standing === 'refused') this.#put({ ...entry, standing: 'waiting' });
  }

  async remove(id: string): Promise<Answer<unknown>> {
    const entry = this.#entries.get(id);
    const answer = await this.ask('DELETE', `/api/documents/${encodeURIComponent(id)}`, {
      revision: entry?.revision ?? 0,
    });
    if (answer.kind === 'answer') this.#forget(id);
    return answer;
  }

  async restore(id: string): Promise<Answer<StoredDocument>> {
    const answer = await this.ask<StoredDocument>('POST', `/api/documents/${encodeURIComponent(id)}/restore`);
    if (answer.kind !== 'answer') return answer;
    this.#open(answer.value);
    const listed = this.#lists.get(answer.value.kind);
    if (listed) this.#lists.set(answer.value.kind, [...listed.filter((one) => one.id !== id), answer.value]);
    this.#tell();
    return answer;
  }

  /** Sends all that waits, at once: the page is being put away. */
  flush(): void {
    for (const entry of this.#entries.values()) {
      if (entry.standing === 'waiting' && !this.#onTheWay.has(entry.id)) void this.#save(entry.id, true);
    }
  }

  #forget(id: string): void {
    const kind = this.#entries.get(id)?.kind;
    this.#entries.delete(id);
    this.#tools.storage.removeItem(unsavedName(id));
    if (kind) {
      const listed = this.#lists.get(kind);
      if (listed)
        this.#lists.set(
          kind,
          listed.filter((document) => document.id !== id),
        );
    }
    this.#tell();
  }

  #open(stored: StoredDocument): Entry {
    const had = this.#entries.get(stored.id);
    if (had && (had.standing !== 'saved' || had.revision >= stored.revision)) return had;
    const entry = had
      ? { ...had, revision: stored.revision, body: stored.body, savedAt: stored.updatedAt, deleted: stored.deleted }
      : opened(stored, this.#unsaved(stored.id));
    this.#entries.set(stored.id, entry);
    const listed = this.#lists.get(stored.kind);
    if (had && listed)
      this.#lists.set(
        stored.kind,
        listed.map((one) => (one.id === stored.id ? stored : one)),
      );
    if (entry.standing === 'waiting') this.#sendLater(stored.id);
    this.#tell();
    return entry;
  }

  #unsaved(id: string): Unsaved | null {
    const written = this.#tools.storage.getItem(unsavedName(id));
    if (!written) return null;
    try {
      return JSON.parse(written) as Unsaved;
    } catch {
      return null;
    }
  }

  #asEdited(document: StoredDocument): StoredDocument {
    const entry = this.#entries.get(document.id);
    return entry ? { ...document, body: entry.body, revision: entry.revision } : document;
  }

  #put(entry: Entry): void {
    if (this.#entries.get(entry.id) === entry) return;
    this.#entries.set(entry.id, entry);
    const listed = this.#lists.get(entry.kind);
    if (listed) {
      this.#lists.set(
        entry.kind,
        listed.map((document) => (document.id === entry.id ? this.#asEdited(document) : document)),
      );
    }
    this.#putBy(entry);
    if (entry.standing === 'waiting') this.#sendLater(entry.id);
    this.#tell();
  }

  /** A full or forbidden browser storage must not stop her work: the workroom itself still gets every save. */
  #putBy(entry: Entry): void {
    try {
      if (entry.standing === 'saved') this.#tools.storage.removeItem(unsavedName(entry.id));
      else {
        const unsaved: Unsaved = { kind: entry.kind, revision: entry.revision, body: entry.body };
        this.#tools.storage.setItem(unsavedName(entry.id), JSON.stringify(unsaved));
      }
    } catch {
      // Nothing to do: see above.
    }
  }

  #sendLater(id: string): void {
    const sent = this.#entries.get(id);
    this.#tools.later(() => {
      const entry = this.#entries.get(id);
      if (entry && entry === sent && entry.standing === 'waiting' && !this.#onTheWay.has(id))
        void this.#save(id, false);
    }, pause);
  }

  async #save(id: string, keepalive: boolean): Promise<void> {
    const entry = this.#entries.get(id);
    if (!entry) return;
    this.#onTheWay.add(id);
    this.#put({ ...entry, standing: 'saving' });
    const answer = await ask<StoredDocument>(
      this.#tools.fetcher,
      'PUT',
      `/api/documents/${encodeURIComponent(id)}`,
      { revision: entry.revision, body: entry.body },
      { keepalive },
    );
    this.#onTheWay.delete(id);
    this.#heard(answer.kind !== 'silence');
    this.#answered(id, entry.body, answer);
  }

  #answered(id: string, sent: unknown, answer: Answer<StoredDocument>): void {
    const entry = this.#entries.get(id);
    if (!entry) return;
    if (answer.kind === 'answer') this.#put(acknowledged(entry, answer.value, sent));
    else if (answer.kind === 'silence') {
      this.#put({ ...entry, standing: 'unreachable' });
      this.#tools.later(() => this.#retry(id), retry);
    } else if (answer.status === 409 && answer.current && same(answer.current.body, sent)) {
      // The save had arrived and only its acknowledgement was lost.
      this.#put(acknowledged(entry, answer.current, sent));
    } else if (answer.status === 409 && answer.current) {
      const conflict: Entry = { ...entry, standing: 'conflict', theirs: answer.current };
      // How the page is set is nobody's work: the last hand on the switch decides, without asking.
      this.#put(entry.kind === 'settings' ? settled(conflict, 'mine') : conflict);
    } else this.#put({ ...entry, standing: 'refused', refusal: answer.words });
  }

  #retry(id: string): void {
    if (this.#entries.get(id)?.standing === 'unreachable') void this.#save(id, false);
  }

  #heard(reachable: boolean): void {
    if (this.#reachable === reachable) return;
    this.#reachable = reachable;
    this.#tell();
    if (!reachable) this.#knock();
  }

  /** Asks after a silent workroom until it answers, so that the page can say so. */
  #knock(): void {
    this.#tools.later(async () => {
      if (this.#reachable) return;
      const answer = await ask(this.#tools.fetcher, 'GET', '/api/workroom');
      if (answer.kind === 'silence') this.#knock();
      else this.#heard(true);
    }, retry);
  }

  #tell(): void {
    for (const listener of this.#listeners) listener();
  }
}
