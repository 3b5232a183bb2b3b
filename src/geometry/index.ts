export * from './tolerance.ts';
export * from './types.ts';
