import type { Garment } from '../pattern/index.ts';
import type { Alteration } from './types.ts';

/** Whether an alteration is for a garment: the pieces are and carry what it works on. */
export const suits = (alteration: Alteration, garment: Garment): boolean => alteration.needs(garment) === null;
