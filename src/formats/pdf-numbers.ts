/** PDF points in one millimetre: 72 to the inch of 25.4 mm. */
export const pointsPerMillimetre = 72 / 25.4;

/** Five decimals of a point are 4 nm: well under the millionth of a millimetre at which two points are the same. */
const decimals = 5;

/** A number as PDF wants it: plain decimals, never an exponent, no trailing noughts. */
export const pdfNumber = (value: number): string => {
  if (!Number.isFinite(value)) throw new Error(`not a number that can be printed: ${value}`);
  const fixed = value.toFixed(decimals).replace(/\.?0+$/, '');
  return fixed === '-0' ? '0' : fixed;
};
