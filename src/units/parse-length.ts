import type { LengthUnit } from './length.ts';
import { longestLength, millimetresPer } from './length.ts';
import type { WrittenNumber } from './number.ts';
import { takeNumber, worth } from './number.ts';
import type { Result } from './result.ts';
import { bad, good } from './result.ts';
import { plainWriting } from './writing.ts';

const unitNames: readonly (readonly [LengthUnit, RegExp])[] = [
  ['mm', /^(?:mm|millimet(?:re|er)s?)(?![a-z])\.?/],
  ['cm', /^(?:cm|centimet(?:re|er)s?)(?![a-z])\.?/],
  ['m', /^(?:m|met(?:re|er)s?)(?![a-z])\.?/],
  ['in', /^(?:"|(?:in|inch|inches)(?![a-z])\.?)/],
  ['ft', /^(?:'|(?:ft|foot|feet)(?![a-z])\.?)/],
  ['yd', /^(?:yd|yds|yards?)(?![a-z])\.?/],
];

/** What may follow a unit in one length, largest first; metric and inches never in the same length. */
const smaller: Readonly<Record<LengthUnit, readonly LengthUnit[]>> = {
  m: ['cm', 'mm'],
  cm: ['mm'],
  mm: [],
  yd: ['ft', 'in'],
  ft: ['in'],
  in: [],
};

/** The unit that need not be written after a larger one. After metres only two digits are surely centimetres: 2 m 5 may be meant as 2.5. */
const unsaidAfter = (before: LengthUnit, number: WrittenNumber): LengthUnit | null => {
  if (before === 'ft') return 'in';
  return before === 'm' && number.kind === 'decimal' && /^\d\d$/.test(number.digits) ? 'cm' : null;
};

interface Part {
  readonly number: WrittenNumber;
  readonly unit: LengthUnit | null;
}

const takeParts = (text: string): Result<readonly Part[]> => {
  const parts: Part[] = [];
  let rest = text;
  while (rest !== '') {
    const taken = takeNumber(rest);
    if (!taken) return bad('units.not-a-length', { text });
    rest = taken.rest.trimStart();
    const named = unitNames.find(([, name]) => name.test(rest));
    if (named) rest = rest.replace(named[1], '').trimStart();
    parts.push({ number: taken.number, unit: named ? named[0] : null });
  }
  return good(parts);
};

/** Three decimals are usual in inches, feet, yards and metres; in cm and mm a mark before three digits may group thousands. */
const finelyWritten = (unit: LengthUnit): boolean => unit !== 'mm' && unit !== 'cm';

const addParts = (parts: readonly Part[], text: string, unitless: LengthUnit): Result<number> => {
  let sum = 0;
  let before = null as LengthUnit | null;
  for (const [index, part] of parts.entries()) {
    // 5'5 and 5 ft 5: what follows feet without a unit is inches, as everybody writes it; 1m60 is metres and centimetres.
    const unit: LengthUnit | null = part.unit ?? (before === null ? unitless : unsaidAfter(before, part.number));
    if (unit === null || (index < parts.length - 1 && part.unit === null)) return bad('units.not-a-length', { text });
    if (before !== null && !smaller[before].includes(unit)) return bad('units.wrong-order', { text });
    const value = worth(part.number, finelyWritten(unit));
    if (!value.ok) return value;
    if (index < parts.length - 1 && !Number.isInteger(value.value)) return bad('units.broken-part', { text });
    const length = value.value * millimetresPer[unit];
    if (before !== null && length >= millimetresPer[before]) return bad('units.part-too-large', { text });
    sum += length;
    before = unit;
  }
  return good(sum);
};

/** The unit written last in plain writing that reads as a length, or null where none is written or it reads as none. */
export const unitWritten = (written: string): LengthUnit | null => {
  const parts = takeParts(written);
  return parts.ok ? (parts.value.findLast(({ unit }) => unit !== null)?.unit ?? null) : null;
};

/**
 * Reads a length: `5 ft 5 1/2 in`, `65½"`, `1-5/8"`, `166,4 cm`, `2 1/4 yd`, `1.9 m`, `1m60`, or a plain
 * number in `defaultUnit`. Gives millimetres, to the nearest nanometre. With `signed` a leading minus
 * is allowed, for amounts that may go either way; a tape measure never reads below nothing.
 *
 * Refused: `units.empty`, `units.not-a-length`, `units.not-a-number`, `units.negative`,
 * `units.zero-denominator`, `units.fraction-too-large`, `units.ambiguous-thousands`,
 * `units.wrong-order`, `units.broken-part`, `units.part-too-large`, `units.too-long`.
 */
export const parseLength = (
  text: string,
  defaultUnit: LengthUnit,
  options: { readonly signed?: boolean } = {},
): Result<number> => {
  const written = plainWriting(text);
  if (written === '') return bad('units.empty');
  if (written.length > 60) return bad('units.not-a-length', { text: `${written.slice(0, 40)}…` });
  const negative = /^- ?/.exec(written);
  if (negative && !options.signed) return bad('units.negative', { text: written });
  const unsigned = written.slice(negative ? negative[0].length : options.signed && written.startsWith('+') ? 1 : 0);
  const parts = takeParts(unsigned.trimStart());
  if (!parts.ok) return bad(parts.problem.code, { text: written });
  if (parts.value.length === 0) return bad('units.not-a-length', { text: written });
  const length = addParts(parts.value, written, defaultUnit);
  if (!length.ok) return length;
  if (length.value > longestLength) return bad('units.too-long', { text: written });
  const rounded = Math.round(length.value * 1e6) / 1e6;
  return good(negative && rounded !== 0 ? -rounded : rounded);
};
