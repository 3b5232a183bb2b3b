import { sharedText } from '../shared-data.ts';

/** One body of the public survey: column → mm. */
export type Row = Readonly<Record<string, number>>;

const rows = (csv: string): readonly Row[] => {
  const [head = '', ...lines] = csv.split(/\r?\n/).filter((line) => line !== '');
  const names = head.split(',').map((name) => name.replaceAll('"', '').trim());
  return lines.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(names.map((name, place) => [name, Number(cells[place])]));
  });
};

/** The woman of the survey at the 85th percentile of bust girth; null where the shared data is absent. */
export const fullBustedWoman = (): Row | null => {
  const csv = sharedText('bodies/ansur2-women.csv');
  if (csv === null) return null;
  const ordered = rows(csv).toSorted((a, b) => (a['chestcircumference'] ?? 0) - (b['chestcircumference'] ?? 0));
  return ordered[Math.floor(0.85 * ordered.length)] ?? null;
};

/**
 * Her starred measures, mm, as a dressmaker would take them. Where the survey measures otherwise: its waist is at the
 * navel and wider than where a waistband sits, its back length runs down to the navel, its sleeve along a straight arm;
 * an upper bust it has not, and a fuller bust than most is 90 above it (patterns are drafted for some 50).
 */
export const starredMeasures = (row: Row) => {
  const column = (name: string): number => {
    const value = row[name];
    if (value === undefined) throw new Error(`the survey has no column ${name}`);
    return value;
  };
  return {
    Stature: column('stature'),
    'Bust girth': column('chestcircumference'),
    'Upper bust girth': column('chestcircumference') - 90,
    'Waist girth': 0.925 * column('waistcircumference'),
    'Hip girth': column('buttockcircumference'),
    'Back waist length': column('waistbacklength') - 46,
    'Arm length': 1.03 * column('sleeveoutseam'),
  } as const;
};

const eighths = ['', '1/8', '1/4', '3/8', '1/2', '5/8', '3/4', '7/8'];

/** As she reads it off an inch tape, to the nearest eighth: `41 3/8`. */
export const inInches = (mm: number): string => {
  const parts = Math.round((mm / 25.4) * 8);
  return `${Math.floor(parts / 8)} ${eighths[parts % 8]}`.trim();
};

/** As she reads it off a tape in centimetres, to the nearest millimetre: `104.8`. */
export const inCentimetres = (mm: number): string => (Math.round(mm) / 10).toFixed(1);
