import type { MeasureId } from './types.ts';

/** One reading of the tape, kept as it was written so that it can be shown again as she wrote it. */
export interface Reading {
  readonly measure: MeasureId;
  /** Left and right are entered apart only where they differ; 'both' otherwise. */
  readonly side: 'both' | 'left' | 'right';
  readonly mm: number;
  /** As typed: `38 1/2 in`, `98 cm`. */
  readonly written: string;
}

/** The measures taken on one day. A second reading of the same measure is kept beside the first; the later one is used. */
export interface MeasureSet {
  readonly id: string;
  /** ISO date, `2026-03-14`. */
  readonly date: string;
  /** Where her waist was taken. */
  readonly waistAt: 'waistband' | 'narrowest' | 'midway';
  readonly readings: readonly Reading[];
  readonly note: string;
}

/** An alteration kept for a wearer, to be offered on the next garment of the kind. */
export interface UsualAlteration {
  readonly id: string;
  readonly alteration: string;
  readonly version: number;
  readonly params: Readonly<Record<string, number | string | boolean>>;
  /** Why, in her own words. */
  readonly reason: string;
  /** What the make it was found on is called, and its document. */
  readonly madeAs: string;
  readonly make: string;
  readonly kind: 'top' | 'dress' | 'jacket' | 'coat' | 'trousers' | 'skirt';
  /** ISO date it was kept. */
  readonly date: string;
}

/** A person garments are made for. Private: leaves the workroom only when its owner says so. */
export interface Wearer {
  readonly format: 'easewright-wearer/1';
  readonly name: string;
  /** Which survey her measures may be compared with; null for neither. */
  readonly comparedWith: 'women' | 'men' | null;
  readonly sets: readonly MeasureSet[];
  readonly note: string;
  /** Alterations that are usual for her; absent where none was kept yet. */
  readonly usual?: readonly UsualAlteration[];
}
