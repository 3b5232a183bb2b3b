import type { Alteration } from '../types.ts';

export const widthAlterations: readonly Alteration[] = [];
