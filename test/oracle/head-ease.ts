/** Sleeve-head ease the trade gives the cloth a pattern is for, mm; patterns without a set-in sleeve have none. */
const ranges: Readonly<Record<string, readonly [number, number]>> = {
  blouse: [15, 35],
  tee: [0, 12],
  'tee-men': [0, 12],
  sweatshirt: [0, 12],
  'sweatshirt-men': [0, 12],
  'shirt-dress': [0, 20],
  jacket: [15, 50],
  raincoat: [0, 20],
};

export const headEaseOf = (pattern: string): readonly [number, number] => ranges[pattern] ?? [0, 0];
