import { sayId } from '../../src/draw/index.ts';

/** A level's or an edge's id as words: `upper-arm` is “Upper arm”. */
export const levelName = (id: string): string => sayId(id);
