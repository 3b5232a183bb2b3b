import type { Alteration } from '../types.ts';

export const shoulderNeckAlterations: readonly Alteration[] = [];
