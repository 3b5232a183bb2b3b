export { blouseWords } from './blouse.ts';
export { teeMenWords, teeWords } from './tee.ts';
export type { HouseWords, WorkStep } from './types.ts';
