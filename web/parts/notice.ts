import { useSyncExternalStore } from 'react';

/** A sentence that outlives the page it was left on, and a document it can put back. */
export interface Notice {
  readonly text: string;
  readonly restore: string | null;
}

class NoticePlace {
  #notice: Notice | null = null;
  readonly #listeners = new Set<() => void>();
  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };
  readonly notice = (): Notice | null => this.#notice;
  readonly leave = (notice: Notice | null): void => {
    this.#notice = notice;
    for (const listener of this.#listeners) listener();
  };
}

const place = new NoticePlace();

export const leaveNotice = place.leave;
export const useNotice = (): Notice | null => useSyncExternalStore(place.subscribe, place.notice);
