import type { Unit } from '../../../src/units/index.ts';
import { millimetresPer } from '../../../src/units/index.ts';

/** One stroke of the rule: where along the table, mm; how far it reaches in, 0 to 1; its number, if it has one. */
export interface Tick {
  readonly mm: number;
  readonly reach: number;
  readonly number: string | null;
}

interface Step {
  readonly mm: number;
  /** Strokes between two numbers. */
  readonly parts: number;
}

const inch = millimetresPer.in;

/** As rules are cut: inches by halves to eighths and then by feet and yards; centimetres by millimetres, fives and tens. */
const steps: Readonly<Record<Unit, readonly Step[]>> = {
  in: [
    { mm: inch / 4, parts: 4 },
    { mm: inch / 2, parts: 4 },
    { mm: inch, parts: 8 },
    { mm: 2 * inch, parts: 8 },
    { mm: 6 * inch, parts: 6 },
    { mm: 12 * inch, parts: 12 },
    { mm: 36 * inch, parts: 6 },
    { mm: 180 * inch, parts: 5 },
  ],
  cm: [
    { mm: 5, parts: 5 },
    { mm: 10, parts: 10 },
    { mm: 50, parts: 5 },
    { mm: 100, parts: 10 },
    { mm: 200, parts: 4 },
    { mm: 500, parts: 5 },
    { mm: 1000, parts: 10 },
    { mm: 5000, parts: 5 },
  ],
};

const fractions: Readonly<Record<number, string>> = { 0.25: '¼', 0.5: '½', 0.75: '¾' };

const numberOf = (mm: number, unit: Unit): string => {
  const value = mm / (unit === 'in' ? inch : 10);
  const whole = Math.floor(Math.abs(value) + 1e-9);
  const rest = Math.abs(value) - whole;
  const sign = value < -1e-9 ? '−' : '';
  if (rest < 1e-6) return `${sign}${whole}`;
  const fraction = unit === 'in' ? fractions[Number(rest.toFixed(3))] : undefined;
  return fraction ? `${sign}${whole === 0 ? '' : whole}${fraction}` : `${sign}${Math.abs(value).toFixed(1)}`;
};

/** About how wide a figure of the rule is, px. */
const figureWidth = 9;

/** Whether a stroke's number stands on the rule whole: clear of the corner, where the unit stands, and of the end. `at` and both bounds px. */
export const hasRoom = ({ number }: Tick, at: number, from: number, to: number): boolean => {
  const half = ((number?.length ?? 0) * figureWidth) / 2;
  return number !== null && at - half >= from && at + half <= to;
};

/**
 * The strokes of a rule that shows the table from `from` to `to` mm at `scale` px a mm: numbers at least
 * `apart` px from each other, and strokes at least 5.
 */
export const rule = (from: number, to: number, scale: number, unit: Unit, apart = 64): readonly Tick[] => {
  const ladder = steps[unit];
  const step = ladder.find((one) => one.mm * scale >= apart) ?? ladder.at(-1);
  if (!step || !(to > from)) return [];
  const parts = (step.mm / step.parts) * scale >= 5 ? step.parts : 1;
  const stroke = step.mm / parts;
  const ticks: Tick[] = [];
  for (let index = Math.ceil(from / stroke); index <= Math.floor(to / stroke); index += 1) {
    const within = ((index % parts) + parts) % parts;
    const mm = index * stroke;
    if (within === 0) ticks.push({ mm, reach: 1, number: numberOf(mm, unit) });
    else ticks.push({ mm, reach: within * 2 === parts ? 0.6 : 0.35, number: null });
  }
  return ticks;
};
