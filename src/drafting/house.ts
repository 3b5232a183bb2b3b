import { blouse } from './blouse.ts';
import { dungarees, dungareesMen } from './dungarees.ts';
import { jacket } from './jacket.ts';
import { raincoat } from './raincoat.ts';
import { shirtDress } from './shirt-dress.ts';
import { skirt } from './skirt.ts';
import { sweatshirt, sweatshirtMen } from './sweatshirt.ts';
import { tee, teeMen } from './tee.ts';
import { trousers, trousersMen } from './trousers.ts';
import type { HousePattern } from './types.ts';

/** Every pattern of our own. */
export const housePatterns: readonly HousePattern[] = [
  blouse,
  shirtDress,
  jacket,
  skirt,
  trousers,
  dungarees,
  tee,
  sweatshirt,
  teeMen,
  sweatshirtMen,
  trousersMen,
  dungareesMen,
  raincoat,
];

/** The house pattern of that id; undefined where there is none. */
export const housePattern = (id: string): HousePattern | undefined =>
  housePatterns.find((candidate) => candidate.id === id);
