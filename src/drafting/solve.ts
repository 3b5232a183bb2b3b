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
  // False position gains digits every round; where it creeps up on one end, the last step below crosses over.
  for (let round = 0; round < mostRounds && Math.abs(b - a) > within; round++) {
    const guess = (a * atB - b * atA) / (atB - atA);
    const inside = guess > Math.min(a, b) && guess < Math.max(a, b) && round % halveEvery !== halveEvery - 1;
    // A guess all but on an end is moved a little inside, so that the other bound comes close too.
    const value = inside ? awayFromEnds(guess, a, b, within / 2) : (a + b) / 2;
    const at = of(value);
    if (at === 0) return value;
    if (at > 0 === atB > 0) {
      [b, atB] = [value, at];
      if (kept === 1) atA /= 2;
      kept = 1;
    } else {
      [a, atA] = [value, at];
      if (kept === -1) atB /= 2;
      kept = -1;
    }
  }
  return (a + b) / 2;
};

/** Halving alone would do in this many rounds, since every sixth round halves. */
const mostRounds = 400;
const halveEvery = 6;

const awayFromEnds = (guess: number, a: number, b: number, by: number): number => {
  if (Math.abs(guess - a) < by) return a + Math.sign(b - a) * by;
  return Math.abs(guess - b) < by ? b + Math.sign(a - b) * by : guess;
};

/** The value, kept between two bounds. */
export const settle = (value: number, low: number, high: number): number => Math.min(Math.max(value, low), high);
