/** Roots of a·t² + b·t + c strictly inside 0 to 1, rising; a double root counts once, an identically zero polynomial has none. */
export const quadraticRoots = (a: number, b: number, c: number): number[] => {
  const inside = (t: number): boolean => t > 0 && t < 1;
  const size = Math.abs(a) + Math.abs(b) + Math.abs(c);
  if (Math.abs(a) <= Number.EPSILON * size) return b === 0 ? [] : [-c / b].filter(inside);
  const square = b * b - 4 * a * c;
  if (square < 0) return [];
  // Avoids the loss of digits in −b ± √ (Press et al., Numerical Recipes, section 5.6).
  const q = -(b + (b < 0 ? -1 : 1) * Math.sqrt(square)) / 2;
  const first = q / a;
  const second = q === 0 ? first : c / q;
  return (first === second ? [first] : first < second ? [first, second] : [second, first]).filter(inside);
};

/**
 * Roots in 0 to 1, rising, of a polynomial given by its Bernstein coefficients. Halves the range until the
 * coefficients change sign at most once (Descartes' rule; Lane & Riesenfeld, Bounds on a polynomial, 1981)
 * and then closes in with the secant kept between bounds. Roots so close that rounding cannot part them come as one.
 */
export const bernsteinRoots = (coefficients: readonly number[]): number[] => {
  let largest = 0;
  for (const c of coefficients) largest = Math.max(largest, Math.abs(c));
  const roots: number[] = [];
  // Coefficients are sums of a few products, each good to the last bit of the largest.
  if (largest > 0) search(coefficients, 0, 1, largest * Number.EPSILON * 64, roots);
  return roots.filter((t, i) => i === 0 || t - (roots[i - 1] as number) > Number.EPSILON * 4);
};

function search(c: readonly number[], low: number, high: number, noise: number, roots: number[]): void {
  let changes = 0;
  let sign = 0;
  for (const value of c) {
    const now = Math.abs(value) <= noise ? 0 : Math.sign(value);
    if (now !== 0 && sign !== 0 && now !== sign) changes++;
    if (now !== 0) sign = now;
  }
  const first = c[0] as number;
  const last = c[c.length - 1] as number;
  const zeroAtStart = Math.abs(first) <= noise;
  const zeroAtEnd = Math.abs(last) <= noise;
  if (sign === 0) return;
  if (changes === 0) {
    if (zeroAtStart) roots.push(low);
    if (zeroAtEnd) roots.push(high);
    return;
  }
  if (changes === 1 && !zeroAtStart && !zeroAtEnd) {
    roots.push(low + (high - low) * closeIn(c));
    return;
  }
  if (high - low < 1e-12) {
    roots.push((low + high) / 2);
    return;
  }
  const [left, right] = halves(c);
  const middle = (low + high) / 2;
  search(left, low, middle, noise, roots);
  const found = roots.length;
  search(right, middle, high, noise, roots);
  // A root at the middle is the end of one half and the start of the other.
  if (found > 0 && roots.length > found && roots[found] === roots[found - 1]) roots.splice(found, 1);
}

/**
 * The one root of coefficients of opposite signs at the ends: Illinois variant of false position (Dowell & Jarratt
 * 1971), with a bisection whenever two rounds have not halved the bounds. Only narrow bounds end it: a small step
 * may be far from the root where the value at one end is next to nothing.
 */
function closeIn(c: readonly number[]): number {
  let low = 0;
  let high = 1;
  let atLow = c[0] as number;
  let atHigh = c[c.length - 1] as number;
  let side = 0;
  let width = 1;
  for (let round = 1; high - low > 2 * Number.EPSILON; round++) {
    const slow = round % 2 === 0 && high - low > width / 2;
    if (round % 2 === 0) width = high - low;
    const secant = (low * atHigh - high * atLow) / (atHigh - atLow);
    const t = slow || !(secant > low && secant < high) ? (low + high) / 2 : secant;
    if (t === low || t === high) return t;
    const value = evaluate(c, t);
    if (value === 0) return t;
    if (value > 0 === atHigh > 0) {
      high = t;
      atHigh = value;
      if (side === 1) atLow /= 2;
      side = 1;
    } else {
      low = t;
      atLow = value;
      if (side === -1) atHigh /= 2;
      side = -1;
    }
  }
  return (low + high) / 2;
}

/** de Casteljau's algorithm on numbers. */
function evaluate(c: readonly number[], t: number): number {
  const work = c.slice();
  for (let size = work.length - 1; size > 0; size--) {
    for (let i = 0; i < size; i++) {
      const value = work[i] as number;
      work[i] = value + ((work[i + 1] as number) - value) * t;
    }
  }
  return work[0] as number;
}

function halves(c: readonly number[]): [number[], number[]] {
  const work = c.slice();
  const left: number[] = [work[0] as number];
  const right: number[] = [work[work.length - 1] as number];
  for (let size = work.length - 1; size > 0; size--) {
    for (let i = 0; i < size; i++) work[i] = ((work[i] as number) + (work[i + 1] as number)) / 2;
    left.push(work[0] as number);
    right.push(work[size - 1] as number);
  }
  return [left, right.reverse()];
}
