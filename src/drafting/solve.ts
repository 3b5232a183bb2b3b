/**
 * The value between `low` and `high` at which `of` is zero, to within `within` of the argument: false
 * position held between bounds, Illinois variant (Dowell & Jarratt, 1971). Null where `of` has the same
 * sign at both bounds, so that a draft can say what does not work out.
 */
export const solveBetween = (
  of: (value: number) => number,
  low: number,
  high: number,
  within: number,
): number | null => {
  let [a, b] = [low, high];
  let [atA, atB] = [of(a), of(b)];
  if (atA === 0) return a;
  if (atB === 0) return b;
  if (atA > 0 === atB > 0) return null;
  let kept = 0;
  // False position gains a digit or more a round; sixty rounds of halving alone would already do.
  for (let round = 0; round < 100 && Math.abs(b - a) > within; round++) {
    const guess = (a * atB - b * atA) / (atB - atA);
    const value = guess > Math.min(a, b) && guess < Math.max(a, b) ? guess : (a + b) / 2;
    const at = of(value);
    if (at === 0) return value;
    if (at > 0 === atB > 0) {
      if (Math.abs(value - b) < within / 2) return value;
      [b, atB] = [value, at];
      if (kept === 1) atA /= 2;
      kept = 1;
    } else {
      if (Math.abs(value - a) < within / 2) return value;
      [a, atA] = [value, at];
      if (kept === -1) atB /= 2;
      kept = -1;
    }
  }
  return (a + b) / 2;
};

/** The value, kept between two bounds. */
export const settle = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
