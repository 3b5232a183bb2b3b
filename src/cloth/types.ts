/** Cloth in hand. Lengths mm, weight g/m², stretch and shrinkage as fractions. */
export interface Cloth {
  readonly format: 'easewright-cloth/1';
  readonly name: string;
  readonly structure: 'woven' | 'knit';
  /** Fibres in words: `cotton 97 %, elastane 3 %`. */
  readonly fibres: string;
  readonly weight: number | null;
  /** Usable width between the selvages. */
  readonly width: number;
  /** Length in hand; null when it is still to be bought. */
  readonly length: number | null;
  readonly stretchAcross: number;
  readonly stretchAlong: number;
  /** Looks different upside down, or carries a one-way print: everything is laid one way. */
  readonly oneWay: boolean;
  /** Taken by the first wash, along and across; 0 when it has been washed already. */
  readonly shrinkAlong: number;
  readonly shrinkAcross: number;
  readonly washed: boolean;
  /** A plain CSS colour for its swatch. */
  readonly colour: string;
  readonly terms: 'bought' | 'given' | 'given-in-return' | 'unknown';
  readonly from: string;
  readonly note: string;
}
