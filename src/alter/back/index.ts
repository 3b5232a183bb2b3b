import type { Alteration } from '../types.ts';

export const backAlterations: readonly Alteration[] = [];
