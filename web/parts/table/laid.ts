import { useEffect, useSyncExternalStore } from 'react';
import type { Drawing } from '../../../src/draw/index.ts';
import type { Bounds, Point } from '../../../src/geometry/index.ts';

/** A point of the drawing that can be taken hold of: moving it changes an amount. */
export interface Grip {
  /** What is changed, as a screen reader names it. */
  readonly label: string;
  /** Where it lies and where it goes for each millimetre of the amount, in the drawing's mm. */
  readonly at: Point;
  readonly perMillimetre: Point;
  readonly amount: number;
  readonly least: number;
  readonly most: number;
  /** The amount is a whole number of these, mm. */
  readonly stop: number;
  /** The amount in words, as it is read out, and as a figure beside the point. */
  readonly said: string;
  readonly figure: string;
  readonly onMove: (amount: number) => void;
}

/** What lies on the table. */
export interface Laid {
  readonly drawing: Drawing;
  /** Names what is shown: the table fits its drawing again only when this changes. */
  readonly subject: string;
  /** A photograph that lies under the drawing, `width` by `height` mm from its origin. */
  readonly photograph?: { readonly href: string; readonly width: number; readonly height: number };
  /** True when the drawing is a chart or note and wants a sheet of paper under it. */
  readonly onSheet?: boolean;
  /** The thing pointed at, and what to do when another is. */
  readonly picked?: string | null;
  readonly onPick?: (id: string) => void;
  readonly grip?: Grip | null;
}

/** What is taken up on the table: the drawing, or the sheet of paper it is drawn on. */
export const sheetBounds = ({ drawing, onSheet }: Laid): Bounds => {
  const { minX, maxX, minY, maxY } = drawing.bounds;
  const margin = onSheet ? Math.max(maxX - minX, maxY - minY) * 0.04 : 0;
  return { minX: minX - margin, maxX: maxX + margin, minY: minY - margin, maxY: maxY + margin };
};

/** The table outlives the pages that lay things on it, so what lies there is kept outside them. */
class TableTop {
  #laid: Laid | null = null;
  readonly #listeners = new Set<() => void>();

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly laid = (): Laid | null => this.#laid;

  readonly lay = (laid: Laid | null): void => {
    if (this.#laid === laid) return;
    this.#laid = laid;
    for (const listener of this.#listeners) listener();
  };
}

const tableTop = new TableTop();

export const useLaid = (): Laid | null => useSyncExternalStore(tableTop.subscribe, tableTop.laid);

/** Lays a drawing on the table for as long as the caller shows it; null leaves what lies there. Keep `laid` the same value while nothing changed. */
export const useLay = (laid: Laid | null): void => {
  useEffect(() => {
    if (laid) tableTop.lay(laid);
  }, [laid]);
};
