import { createContext, useContext, useEffect, useState, useSyncExternalStore } from 'react';
import type { ProblemWords } from '../../src/words/index.ts';
import type { DocumentKind, StoredDocument } from '../documents/api.ts';
import type { Desk } from '../documents/desk.ts';
import type { Entry } from '../documents/entry.ts';

const DeskContext = createContext<Desk | null>(null);
export const DeskProvider = DeskContext.Provider;

export const useDesk = (): Desk => {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('used outside the desk');
  return desk;
};

/** Whether the workroom answered when it was last asked. */
export const useReachable = (): boolean => {
  const desk = useDesk();
  return useSyncExternalStore(desk.subscribe, () => desk.reachable);
};

/** Something asked of the workroom: on its way, refused in words, or here. */
export type Asked<T> =
  | { readonly state: 'asking' }
  | { readonly state: 'refused'; readonly words: ProblemWords; readonly missing: boolean }
  | { readonly state: 'here'; readonly value: T };

type Trouble = { readonly words: ProblemWords; readonly missing: boolean } | null;

/** A document, loaded when first used, and as it is on the page from then on. Asked again once a silent workroom answers. No id asks for nothing. */
export const useDocument = <Body>(id: string): Asked<Entry<Body>> => {
  const desk = useDesk();
  const reachable = useReachable();
  const entry = useSyncExternalStore(desk.subscribe, () => desk.entry<Body>(id));
  const [trouble, setTrouble] = useState<Trouble>(null);
  useEffect(() => {
    if (!reachable || id === '') return;
    setTrouble(null);
    let current = true;
    void desk.load(id).then((answer) => {
      if (current && answer.kind === 'refusal') setTrouble({ words: answer.words, missing: answer.status === 404 });
    });
    return () => {
      current = false;
    };
  }, [desk, id, reachable]);
  if (entry) return { state: 'here', value: entry };
  if (trouble) return { state: 'refused', ...trouble };
  return { state: 'asking' };
};

/** All documents of a kind. */
export const useDocuments = <Body>(kind: DocumentKind): Asked<readonly StoredDocument<Body>[]> => {
  const desk = useDesk();
  const reachable = useReachable();
  const list = useSyncExternalStore(desk.subscribe, () => desk.list<Body>(kind));
  const [trouble, setTrouble] = useState<Trouble>(null);
  useEffect(() => {
    if (!reachable) return;
    let current = true;
    void desk.loadList(kind).then((answer) => {
      if (current) setTrouble(answer.kind === 'refusal' ? { words: answer.words, missing: false } : null);
    });
    return () => {
      current = false;
    };
  }, [desk, kind, reachable]);
  if (list) return { state: 'here', value: list };
  if (trouble) return { state: 'refused', ...trouble };
  return { state: 'asking' };
};
