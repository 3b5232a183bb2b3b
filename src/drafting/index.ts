export { blouse, draftBlouse } from './blouse.ts';
export { womenChart } from './chart-women.ts';
export { housePattern, housePatterns } from './house.ts';
export * from './types.ts';
