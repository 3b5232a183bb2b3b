import type { ReactNode } from 'react';
import type { Wearer } from '../../src/body/index.ts';
import type { EaseCell, Fit, Way } from '../../src/fit/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { Result } from '../../src/units/index.ts';

/** What the fit passage shows, whether the pattern is known by its pieces or by its envelope alone. */
export interface FitInHand {
  readonly make: Make;
  readonly wearer: Wearer;
  readonly pattern: { readonly id: string; readonly name: string };
  readonly sizes: readonly string[];
  /** The size in hand: chosen, or else recommended. */
  readonly size: string;
  readonly fit: Result<Fit>;
  /** Ease of the size in hand as altered; none where nothing is altered or too little is known. */
  readonly alteredEase: readonly EaseCell[];
  readonly change: (change: (make: Make) => Make, name: string) => void;
  /** The make in a way's size, with what that way alters. */
  readonly take: (make: Make, way: Way, ways: readonly Way[]) => Make;
  /** What stands before the ways. */
  readonly before?: ReactNode;
}
