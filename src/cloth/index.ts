export * from './convert.ts';
export * from './schema.ts';
export * from './shrinkage.ts';
export * from './types.ts';
