/** A dense square matrix, by rows. */
export type Matrix = readonly (readonly number[])[];

/**
 * Inverse of a symmetric positive definite matrix, by Cholesky's factor. Throws where it is not positive
 * definite: a covariance always is, so then the table it came from is broken.
 */
export const inverseOfCovariance = (matrix: Matrix): Matrix => {
  const n = matrix.length;
  const lower: number[][] = matrix.map(() => new Array<number>(n).fill(0));
  const at = (rows: Matrix, i: number, j: number): number => rows[i]?.[j] ?? 0;
  for (let i = 0; i < n; i++) {
    for (let j = 0; j <= i; j++) {
      let sum = at(matrix, i, j);
      for (let k = 0; k < j; k++) sum -= at(lower, i, k) * at(lower, j, k);
      const row = lower[i] as number[];
      if (i === j) {
        if (!(sum > 0)) throw new Error(`not positive definite at row ${i}: ${sum}`);
        row[j] = Math.sqrt(sum);
      } else row[j] = sum / at(lower, j, j);
    }
  }
  const solve = (unit: number): number[] => {
    const y = new Array<number>(n).fill(0);
    for (let i = 0; i < n; i++) {
      let sum = i === unit ? 1 : 0;
      for (let k = 0; k < i; k++) sum -= at(lower, i, k) * (y[k] ?? 0);
      y[i] = sum / at(lower, i, i);
    }
    for (let i = n - 1; i >= 0; i--) {
      let sum = y[i] ?? 0;
      for (let k = i + 1; k < n; k++) sum -= at(lower, k, i) * (y[k] ?? 0);
      y[i] = sum / at(lower, i, i);
    }
    return y;
  };
  return matrix.map((_, unit) => solve(unit));
};

export const dotProduct = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, value, index) => sum + value * (b[index] ?? 0), 0);
