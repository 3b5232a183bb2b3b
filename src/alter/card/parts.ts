import type { Problem, Result } from '../../units/index.ts';
import type { FinishedChanges } from './finished.ts';
import type { Card, CardPicture, CardRequest } from './types.ts';

/** What an alteration's own file says for its card; the rest every card has alike. */
export interface CardParts {
  readonly title: Card['title'];
  readonly purpose: Card['purpose'];
  readonly amounts: Card['amounts'];
  readonly where: Card['where'];
  readonly steps: Card['steps'];
  readonly follows: Card['follows'];
  readonly holds: Card['holds'];
  readonly cautions: Card['cautions'];
  /** How much each finished measurement grows, mm. */
  readonly changes: FinishedChanges;
  readonly picture: CardPicture | null;
  readonly notDrawn: Problem | null;
}

/** Makes the parts of one alteration's card; a step that asks for nothing, or for what no card knows, is a problem. */
export type CardMaker = (request: CardRequest) => Result<CardParts>;

/** A saying without values, or with. */
export const say = (code: string, values?: Problem['values']): Problem => (values ? { code, values } : { code });

/** Several sayings that need no values. */
export const sayAll = (...codes: readonly string[]): readonly Problem[] => codes.map((code) => ({ code }));
