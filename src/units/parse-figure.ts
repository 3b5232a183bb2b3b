import type { LengthUnit } from './length.ts';
import { parseLength, unitWritten } from './parse-length.ts';
import type { Result } from './result.ts';
import { bad, good } from './result.ts';
import { plainWriting } from './writing.ts';

/** A figure as printed in a chart, mm: one length (`low` equals `high`) or from and to. */
export interface PrintedFigure {
  readonly low: number;
  readonly high: number;
  /** The unit written beside it; null where the figure stands bare. */
  readonly unit: LengthUnit | null;
}

/** Every place where writing could be the two ends of a range: `32 to 34`, `32-34`, `24 1/2 - 25 1/2`. */
const halves = (written: string): readonly (readonly [string, string])[] =>
  [...written.matchAll(/ to | ?- ?/g)].map(({ 0: between, index }) => [
    written.slice(0, index),
    written.slice(index + between.length),
  ]);

/**
 * Reads one figure of a printed chart: a length in any style `parseLength` reads, or a range of two. A dash before a
 * fraction belongs to it (`24-1/2`); any other makes a range. Where only one end names a unit it holds for both.
 * Refused: what `parseLength` refuses, and `units.range-falls` where the second is not the larger.
 */
export const parseFigure = (text: string, defaultUnit: LengthUnit): Result<PrintedFigure> => {
  const written = plainWriting(text);
  const one = parseLength(written, defaultUnit);
  if (one.ok) return good({ low: one.value, high: one.value, unit: unitWritten(written) });
  for (const [from, to] of halves(written)) {
    const units = [unitWritten(from), unitWritten(to)] as const;
    const low = parseLength(from, units[1] ?? defaultUnit);
    const high = parseLength(to, units[0] ?? defaultUnit);
    if (!low.ok || !high.ok) continue;
    if (low.value >= high.value) return bad('units.range-falls', { text: written });
    return good({ low: low.value, high: high.value, unit: units[1] ?? units[0] });
  }
  return one;
};
