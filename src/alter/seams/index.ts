import type { Alteration } from '../types.ts';

export const seamsAlterations: readonly Alteration[] = [];
