export * from './complete.ts';
export * from './describe.ts';
export * from './known.ts';
export * from './survey-csv.ts';
export * from './survey-row.ts';
export * from './types.ts';
export * from './wearer.ts';
export * from './wearer-document.ts';
