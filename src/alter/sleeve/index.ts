import type { Alteration } from '../types.ts';

export const sleeveAlterations: readonly Alteration[] = [];
