import { clothWidths, type Envelope, type Figure } from '../../src/pattern/index.ts';
import { bad, formatLength, good, parseFigure, type Result, type Unit } from '../../src/units/index.ts';
import { locale } from '../app/settings.tsx';
import type { LengthPurpose } from '../parts/length-words.ts';
import { plainUnit, shownLength } from '../parts/written.ts';

/** The unit the switch would have to stand at to show lengths as this envelope prints them. */
export const unitOf = (envelope: Pick<Envelope, 'printedIn'>): Unit => (envelope.printedIn === 'inches' ? 'in' : 'cm');

const shown = (mm: number, unit: Unit, purpose: 'measure' | 'cloth'): string =>
  purpose === 'cloth'
    ? shownLength(mm, null, unit, 'cloth', locale)
    : // To the sixteenth of an inch, lest a figure printed so is shown as another.
      formatLength(mm, unit, { purpose: 'amount', locale, bare: true });

/** A figure as it is printed, without the unit that stands at the head of its chart. */
export const writeFigure = (figure: Figure, unit: Unit, purpose: 'measure' | 'cloth'): string => {
  if (figure === null) return '';
  if (typeof figure === 'number') return shown(figure, unit, purpose);
  return `${shown(figure[0], unit, purpose)}–${shown(figure[1], unit, purpose)}`;
};

/**
 * A figure as it is typed: nothing, one length, or from and to. A dash alone is nothing printed. None of no length and
 * none over `most` mm is taken, since the envelope could not be stored with it.
 */
export const readFigure = (text: string, unit: Unit, purpose: LengthPurpose, most: number): Result<Figure> => {
  const typed = text.trim();
  if (typed === '' || /^[-–—.]+$/.test(typed)) return good(null);
  const read = parseFigure(typed, plainUnit(unit, purpose));
  if (!read.ok) return read;
  const { low, high } = read.value;
  if (low <= 0 || high > most) return bad('web.figure-outside', { most: { mm: most } });
  return good(low === high ? low : [low, high]);
};

/** A width cloth could have; with another the envelope could not be stored. */
export const checkClothWidth = (mm: number): Result<number> =>
  mm >= clothWidths.least && mm <= clothWidths.most ? good(mm) : bad('cloth.convert-no-width');
