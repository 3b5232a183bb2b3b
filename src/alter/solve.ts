/**
 * Where a function passes zero between two places at which its signs differ; null where they do not.
 * Regula falsi with the Illinois step (Dowell & Jarratt, 1971), to within `within` of zero.
 */
export const zeroBetween = (of: (at: number) => number, low: number, high: number, within: number): number | null => {
  let [a, b] = [low, high];
  let [fa, fb] = [of(a), of(b)];
  if (Math.abs(fa) <= within) return a;
  if (Math.abs(fb) <= within) return b;
  if (fa * fb > 0) return null;
  let side = 0;
  for (let round = 0; round < 60; round += 1) {
    const at = (fa * b - fb * a) / (fa - fb);
    const f = of(at);
    if (Math.abs(f) <= within) return at;
    if (f * fb > 0) {
      b = at;
      fb = f;
      if (side === -1) fa /= 2;
      side = -1;
    } else {
      a = at;
      fa = f;
      if (side === 1) fb /= 2;
      side = 1;
    }
  }
  return (a + b) / 2;
};
