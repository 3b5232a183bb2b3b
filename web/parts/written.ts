import {
  formatLength,
  type LengthPurpose,
  type LengthUnit,
  parseLength,
  type Result,
  type Unit,
} from '../../src/units/index.ts';

/** True when what was typed names its unit: `98 cm`, `38 1/2"`, `5'5`. */
export const namesUnit = (text: string): boolean => /[a-z"'″′“”‘’]/i.test(text);

/** What was typed, with the unit it was meant in: `38 1/2` becomes `38 1/2 in`. */
export const withUnit = (text: string, unit: LengthUnit): string =>
  namesUnit(text) ? text.trim() : `${text.trim()} ${unit}`;

/** The unit a plain number is meant in: the switch's, or metres and yards for lengths of cloth. */
export const plainUnit = (unit: Unit, purpose: LengthPurpose): LengthUnit => {
  if (purpose === 'cloth') return unit === 'cm' ? 'm' : 'yd';
  if (purpose === 'fine' && unit === 'cm') return 'mm';
  return unit;
};

/**
 * What a field shows of a kept length: as it was typed where that was in the unit in use, without the unit
 * that stands beside the field; otherwise turned into the unit in use.
 */
export const shownLength = (
  mm: number | null,
  written: string | null,
  unit: Unit,
  purpose: LengthPurpose,
  locale: string,
): string => {
  if (mm === null) return '';
  const plain = plainUnit(unit, purpose);
  const ending = new RegExp(`^([-−+]?[0-9 .,/½⅓⅔¼¾⅛⅜⅝⅞-]+)\\s*${plain}$`);
  const typed = written ? ending.exec(written)?.[1]?.trim() : undefined;
  if (typed !== undefined) return typed;
  // A stature in feet and inches has no one unit to leave away.
  if (purpose === 'stature' && unit === 'in')
    return formatLength(mm, unit, { purpose, locale }).replace(/\u00a0/g, ' ');
  // Cloth in hand is never shown as more than there is, and eighths of a yard seldom say it exactly.
  if (purpose === 'cloth') {
    const said = formatLength(mm, unit, { purpose, locale, round: 'down' }).replace(/\u00a0/g, ' ');
    return said.endsWith(` ${plain}`) ? said.slice(0, -plain.length - 1) : said;
  }
  return formatLength(mm, unit, { purpose, locale, bare: true });
};

/** Reads what was typed into a field: nothing at all, a length, or a problem. */
export const readTyped = (
  text: string,
  unit: Unit,
  purpose: LengthPurpose,
  signed: boolean,
): Result<number> | 'empty' =>
  text.trim() === '' ? 'empty' : parseLength(text, plainUnit(unit, purpose), signed ? { signed } : {});
