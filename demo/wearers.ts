import type { MeasureId, MeasureSet, Reading, Wearer } from '../src/body/index.ts';
import { parseLength } from '../src/units/index.ts';

const reading = (measure: MeasureId, written: string): Reading => {
  const mm = parseLength(written, 'cm');
  if (!mm.ok) throw new Error(`the demo workroom has a reading that is none: ${written}`);
  return { measure, side: 'both', mm: mm.value, written };
};

const measured = (
  id: string,
  date: string,
  note: string,
  readings: readonly (readonly [MeasureId, string])[],
): MeasureSet => ({
  id,
  date,
  waistAt: 'narrowest',
  readings: readings.map(([measure, written]) => reading(measure, written)),
  note,
});

/** Sings alto in the harbour choir; sews her own concert clothes. Fuller in the bust than patterns are drafted for. */
export const runa: Wearer = {
  format: 'easewright-wearer/1',
  name: 'Runa Tideman',
  comparedWith: 'women',
  sets: [
    measured('autumn', '2025-10-04', 'Measured by Oda, over a vest.', [
      ['stature', '5 ft 5 1/2 in'],
      ['bustGirth', '40 3/4 in'],
      ['upperBustGirth', '36 3/4 in'],
      ['waistGirth', '33 in'],
      ['hipGirth', '41 1/2 in'],
      ['backWaistLength', '16 1/8 in'],
      ['armLength', '22 3/4 in'],
    ]),
    measured('spring', '2026-03-14', 'Measured twice, with the rehearsal shoes off.', [
      ['stature', '166,4 cm'],
      ['bustGirth', '104 cm'],
      ['upperBustGirth', '94 cm'],
      ['underBustGirth', '83 cm'],
      ['waistGirth', '84 cm'],
      ['hipGirth', '106 cm'],
      ['waistToHip', '20,5 cm'],
      ['neckBaseGirth', '37,5 cm'],
      ['shoulderLength', '12,2 cm'],
      ['acrossBack', '35,5 cm'],
      ['backWaistLength', '41 cm'],
      ['bustDepth', '28 cm'],
      ['bustSpan', '20 cm'],
      ['upperArmGirth', '31 cm'],
      ['armLength', '58 cm'],
      ['wristGirth', '16,5 cm'],
    ]),
  ],
  note: 'Stands to sing for two hours: wants room to breathe across the back.',
};

/** Her nephew, who works at the boatyard and wants tees that stay tucked in. */
export const jory: Wearer = {
  format: 'easewright-wearer/1',
  name: 'Jory Tideman',
  comparedWith: 'men',
  sets: [
    measured('winter', '2026-01-18', '', [
      ['stature', '181 cm'],
      ['bustGirth', '104 cm'],
      ['waistGirth', '90 cm'],
      ['hipGirth', '102 cm'],
      ['shoulderLength', '15 cm'],
      ['backWaistLength', '46 cm'],
      ['armLength', '64 cm'],
      ['upperArmGirth', '34 cm'],
    ]),
  ],
  note: 'Reaches overhead all day.',
};
