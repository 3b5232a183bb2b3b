/** Solves a small set of linear equations by elimination with pivoting; null where they leave something open. */
const solved = (rows: readonly (readonly number[])[], values: readonly number[]): readonly number[] | null => {
  const m = rows.map((row, i) => [...row, values[i] as number]);
  const n = m.length;
  for (let k = 0; k < n; k += 1) {
    const pivot = m
      .slice(k)
      .reduce((best, row, i) => (Math.abs(row[k] as number) > Math.abs(m[best]?.[k] as number) ? k + i : best), k);
    [m[k], m[pivot]] = [m[pivot] as number[], m[k] as number[]];
    const own = m[k] as number[];
    if (Math.abs(own[k] as number) < 1e-9) return null;
    for (let i = k + 1; i < n; i += 1) {
      const row = m[i] as number[];
      const share = (row[k] as number) / (own[k] as number);
      for (let j = k; j <= n; j += 1) row[j] = (row[j] as number) - share * (own[j] as number);
    }
  }
  const x: number[] = Array.from({ length: n }, () => 0);
  for (let i = n - 1; i >= 0; i -= 1) {
    const row = m[i] as number[];
    const rest = row.slice(i + 1, n).reduce((sum, a, j) => sum + a * (x[i + 1 + j] as number), 0);
    x[i] = ((row[n] as number) - rest) / (row[i] as number);
  }
  return x;
};

const mostRounds = 10;

/** How far each unknown is moved to see what it does, mm. */
const probe = 0.25;

/**
 * Where several values are nothing at once, by Newton's method with differences for derivatives, from nothing on. Null
 * where it does not settle to `within`.
 */
export const newton = (
  values: (x: readonly number[]) => readonly number[],
  unknowns: number,
  within: number,
): readonly number[] | null => {
  let x: readonly number[] = Array.from({ length: unknowns }, () => 0);
  for (let round = 0; round < mostRounds; round += 1) {
    const at = values(x);
    if (at.every((value) => Math.abs(value) <= within)) return x;
    const columns = x.map((_, k) => values(x.map((value, i) => (i === k ? value + probe : value))));
    const rows = at.map((value, i) => columns.map((column) => ((column[i] as number) - value) / probe));
    const step = solved(rows, at);
    if (!step || step.some((by) => !Number.isFinite(by))) return null;
    x = x.map((value, i) => value - (step[i] as number));
  }
  return null;
};
