/** Rounds of the secant method: lengths answer nearly evenly to what is drawn. */
const rounds = 12;

/** Where a value that grows or falls nearly evenly is nothing, by secants from two guesses; null where they do not settle. */
export const secant = (value: (x: number) => number, first: number, second: number, within: number): number | null => {
  let [a, b] = [first, second];
  let [atA, atB] = [value(a), value(b)];
  for (let i = 0; i < rounds; i += 1) {
    if (Math.abs(atB) <= within) return b;
    if (atA === atB) return null;
    const next = b - (atB * (b - a)) / (atB - atA);
    if (!Number.isFinite(next)) return null;
    [a, atA, b] = [b, atB, next];
    atB = value(b);
  }
  return Math.abs(atB) <= within ? b : null;
};
