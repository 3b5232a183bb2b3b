import { lengthenShorten } from '../lengthen-shorten.ts';
import type { Alteration } from '../types.ts';

export const lengthAlterations: readonly Alteration[] = [lengthenShorten];
