import type { FigureFrom } from '../../fit/index.ts';
import type { Point } from '../../geometry/index.ts';
import type { AlterationStep, ClothRow, Envelope, FinishedOf, Garment, Piece } from '../../pattern/index.ts';
import type { Problem } from '../../units/index.ts';
import type { Held, PieceCut } from '../types.ts';

/** Something a card says, as data: its sentence stands in words/card.ts under the code. */
export type CardSaying = Problem;

/** What can be put on a card: alterations of the catalogue, and running the side seams into other sizes. */
export type CardAlteration = 'lengthen-shorten' | 'full-bust' | 'small-bust' | 'full-upper-arm' | 'sway-back' | 'blend';

export interface CardRequest {
  readonly envelope: Envelope;
  /** The view's id; null for what holds for every view. */
  readonly view: string | null;
  readonly size: string;
  /**
   * The step as an alteration list carries it. `blend` names the size to run to at each level:
   * `{ waist: '16', hip: '18' }`.
   */
  readonly step: AlterationStep;
  /** Steps carried out before it: its finished measurements and cloth begin where theirs end. Its drawing does not. */
  readonly earlier?: readonly AlterationStep[];
}

/** An amount both ways, always: in all and on each piece, mm, signed. */
export interface CardAmount {
  /** A body level, or where the amount goes. */
  readonly at: string;
  readonly total: number;
  readonly perPiece: number;
  readonly count: number;
  readonly said: CardSaying;
}

/** One finished measurement before and after, mm; null where nobody knows it. */
export interface CardFinished {
  readonly of: FinishedOf;
  readonly old: number | null;
  readonly from: FigureFrom | null;
  readonly by: number;
  readonly now: number | null;
}

/** One row of the envelope's cloth, and what this alteration makes of it, mm. An estimate, never less than the area needs. */
export interface CardCloth {
  readonly layer: ClothRow['layer'];
  readonly width: number;
  readonly nap: ClothRow['nap'];
  readonly old: number;
  readonly more: number;
  readonly now: number;
}

/** A length drawn between two points of a piece, before or after, in the piece's own coordinates; mm. */
export interface CardDimension {
  readonly piece: string;
  readonly on: 'before' | 'after';
  readonly from: Point;
  readonly to: Point;
  readonly mm: number;
}

/** The alteration carried out on a generic piece of the kind, ready to be drawn. */
export interface CardPicture {
  /** The house pattern that stands for the bought one. */
  readonly house: string;
  readonly houseName: string;
  /** Whether it was drafted for the size's own chart body, or stands in its own nearest size. */
  readonly draftedFor: 'chart-body' | 'own-size';
  readonly before: Garment;
  readonly after: Garment;
  readonly cuts: readonly PieceCut[];
  readonly dimensions: readonly CardDimension[];
  /** The same pieces in the other sizes a blend runs to, drawn faint. */
  readonly nested: readonly { readonly size: string; readonly pieces: readonly Piece[] }[];
  readonly held: readonly Held[];
}

/** What to do on the tissue of a bought pattern for one alteration. Lengths mm. */
export interface Card {
  readonly alteration: CardAlteration;
  readonly step: AlterationStep;
  readonly pattern: {
    readonly name: string;
    readonly house: string;
    readonly number: string;
    readonly view: string | null;
    readonly size: string;
  };
  readonly title: CardSaying;
  readonly purpose: CardSaying;
  readonly amounts: readonly CardAmount[];
  /** Where to cut, on which pieces. */
  readonly where: readonly CardSaying[];
  /** In the order of the work. */
  readonly steps: readonly CardSaying[];
  readonly follows: readonly CardSaying[];
  /** What must be as it was, to be checked with the tape. */
  readonly holds: readonly CardSaying[];
  readonly finished: readonly CardFinished[];
  readonly cloth: readonly CardCloth[];
  readonly clothSaid: CardSaying;
  readonly cautions: readonly CardSaying[];
  /** Null where no piece of ours stands for it, or the generic piece does not bear the amount: `notDrawn` says why. */
  readonly picture: CardPicture | null;
  readonly notDrawn: Problem | null;
}
