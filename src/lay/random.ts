/**
 * A small seeded source of numbers, so that a search can be repeated.
 * The generator is sfc32 (Doty-Humphrey, PractRand), warmed up from a seed spread by splitmix32.
 */
export class Random {
  #a: number;
  #b: number;
  #c: number;
  #counter = 1;

  constructor(seed: number) {
    let state = (Math.floor(seed) ^ 0x9e3779b9) | 0;
    const spread = (): number => {
      state = (state + 0x9e3779b9) | 0;
      let z = state;
      z = Math.imul(z ^ (z >>> 16), 0x85ebca6b);
      z = Math.imul(z ^ (z >>> 13), 0xc2b2ae35);
      return (z ^ (z >>> 16)) | 0;
    };
    this.#a = spread();
    this.#b = spread();
    this.#c = spread();
    for (let i = 0; i < 12; i++) this.next();
  }

  /** Uniform in 0 ≤ r < 1. */
  next(): number {
    const sum = (((this.#a + this.#b) | 0) + this.#counter) | 0;
    this.#counter = (this.#counter + 1) | 0;
    this.#a = this.#b ^ (this.#b >>> 9);
    this.#b = (this.#c + (this.#c << 3)) | 0;
    this.#c = ((this.#c << 21) | (this.#c >>> 11)) + sum;
    this.#c |= 0;
    return (sum >>> 0) / 4294967296;
  }

  /** A whole number, 0 ≤ n < count. */
  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  between(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  /** Roughly normal, mean 0, deviation 1 (sum of twelve, Irwin–Hall). */
  normal(): number {
    let sum = -6;
    for (let i = 0; i < 12; i++) sum += this.next();
    return sum;
  }

  /** Puts the first `count` entries in random order, in place. */
  shuffle(values: Int32Array, count: number): void {
    for (let i = count - 1; i > 0; i--) {
      const j = this.below(i + 1);
      const held = values[i] as number;
      values[i] = values[j] as number;
      values[j] = held;
    }
  }
}
