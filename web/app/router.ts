import { useSyncExternalStore } from 'react';

/** The pages, each with the document it is about. */
export type Route =
  | { readonly page: 'home' }
  | { readonly page: 'wearers' }
  | { readonly page: 'wearer'; readonly id: string }
  | { readonly page: 'patterns' }
  | { readonly page: 'pattern'; readonly id: string }
  | { readonly page: 'envelope'; readonly id: string }
  | { readonly page: 'cloths' }
  | { readonly page: 'cloth'; readonly id: string }
  | { readonly page: 'make-new' }
  | { readonly page: 'make'; readonly id: string }
  | { readonly page: 'nowhere' };

/** Pages that are about one document. */
export type DocumentPage = 'wearer' | 'pattern' | 'envelope' | 'cloth' | 'make';

const onePage: Readonly<Record<string, DocumentPage>> = {
  wearers: 'wearer',
  patterns: 'pattern',
  envelopes: 'envelope',
  cloth: 'cloth',
  makes: 'make',
};
const listPage: Readonly<Record<string, 'wearers' | 'patterns' | 'cloths'>> = {
  wearers: 'wearers',
  patterns: 'patterns',
  cloth: 'cloths',
};

const decoded = (part: string): string => {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
};

/** Which page an address names. */
export const routeOf = (pathname: string): Route => {
  const [place = '', id = '', ...rest] = pathname.split('/').filter((part) => part !== '');
  if (place === '') return { page: 'home' };
  if (rest.length > 0) return { page: 'nowhere' };
  if (id === '') {
    const page = listPage[place];
    return page ? { page } : { page: 'nowhere' };
  }
  if (place === 'makes' && id === 'new') return { page: 'make-new' };
  const page = onePage[place];
  return page ? { page, id: decoded(id) } : { page: 'nowhere' };
};

/** The address of a document's page. */
export const pathTo = (page: DocumentPage, id: string): string => {
  const place = Object.entries(onePage).find(([, name]) => name === page)?.[0] ?? '';
  return `/${place}/${encodeURIComponent(id)}`;
};

const listeners = new Set<() => void>();

const subscribe = (listener: () => void) => {
  listeners.add(listener);
  window.addEventListener('popstate', listener);
  return () => {
    listeners.delete(listener);
    window.removeEventListener('popstate', listener);
  };
};

/** Goes to an address of the program without loading the page anew. */
export const goTo = (path: string, options: { readonly replace?: boolean } = {}): void => {
  if (options.replace) window.history.replaceState(null, '', path);
  else window.history.pushState(null, '', path);
  for (const listener of listeners) listener();
};

export const usePathname = (): string => useSyncExternalStore(subscribe, () => window.location.pathname);
