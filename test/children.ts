import { childrenCsv } from '../src/drafting/testing/generated-children.ts';

/** Children about the documented chart, statures spread evenly over it, as a file for `--survey children`. */
export const childrenFile = (count: number, seed = 20261): string => childrenCsv(count, seed);
