import type { Alteration } from '../types.ts';

export const structureAlterations: readonly Alteration[] = [];
