export * from './types.ts';
export * from './wearer.ts';
