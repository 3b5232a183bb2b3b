import type { Alteration } from '../types.ts';

export const legsAlterations: readonly Alteration[] = [];
