import { bad, good, type Result } from '../../src/units/index.ts';

const most = 60;

/** `8–24` as patterns name sizes: by twos, where both ends are even or both odd. */
const stretch = (text: string): readonly string[] | null => {
  const ends = /^(\d{1,3})\s*[-–—]\s*(\d{1,3})$/.exec(text);
  if (!ends) return null;
  const [from, to] = [Number(ends[1]), Number(ends[2])];
  const step = (to - from) % 2 === 0 ? 2 : 1;
  if (to <= from || (to - from) / step >= most) return null;
  return Array.from({ length: (to - from) / step + 1 }, (_, index) => String(from + index * step));
};

/** Names of sizes as she writes them: `8, 10, 12`, `XS S M`, `8–24` for the even ones between. */
export const readSizes = (text: string): Result<readonly string[]> => {
  const between = /[,;/]/.test(text) ? /[,;/]/ : /\s+(?![-–—])(?<![-–—]\s)/;
  const marked = text
    .split(between)
    .map((part) => part.trim())
    .filter((part) => part !== '');
  const whole = stretch(text.trim());
  const names = whole ?? marked.flatMap((part) => stretch(part) ?? [part]);
  if (names.length === 0) return bad('web.no-sizes');
  if (names.length > most) return bad('web.sizes-too-many');
  const long = names.find((name) => name.length > 30);
  if (long !== undefined) return bad('web.size-too-long', { size: long.slice(0, 60) });
  const twice = names.find((name, index) => names.findIndex((one) => one.toLowerCase() === name.toLowerCase()) < index);
  return twice === undefined ? good(names) : bad('web.sizes-twice', { size: twice });
};
