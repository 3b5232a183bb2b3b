export { applyAlterations } from './apply.ts';
export { type AlterationCache, createAlterationCache } from './cache.ts';
export * from './card/index.ts';
export { alterationCatalogue } from './catalogue.ts';
export * from './reading/index.ts';
export { suits } from './suits.ts';
export * from './types.ts';
