export * from './length.ts';
export * from './parse-figure.ts';
export { parseLength } from './parse-length.ts';
export * from './print-length.ts';
export * from './quantities.ts';
export * from './result.ts';
export { setFraction } from './writing.ts';
