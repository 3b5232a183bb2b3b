/** What the store takes from outside itself: the clock, and names nothing else has. */
export interface Circumstances {
  readonly now: () => Date;
  readonly newId: () => string;
}
