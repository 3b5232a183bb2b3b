export * from './schema.ts';
export * from './types.ts';
