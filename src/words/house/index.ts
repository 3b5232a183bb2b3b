export { blouseWords } from './blouse.ts';
export { jacketWords } from './jacket.ts';
export { raincoatWords } from './raincoat.ts';
export { shirtDressWords } from './shirt-dress.ts';
export { skirtWords } from './skirt.ts';
export { sweatshirtMenWords, sweatshirtWords } from './sweatshirt.ts';
export { teeMenWords, teeWords } from './tee.ts';
export { trousersMenWords, trousersWords } from './trousers.ts';
export type { HouseWords, WorkStep } from './types.ts';
