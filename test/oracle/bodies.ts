/** Rows of a survey file, chosen without knowing what will be asked of them. */

/**
 * So many rows spread evenly over the bodies in the order of one column, smallest and largest of several
 * columns always among them. Gives a file of the same form.
 */
export const stratified = (csv: string, count: number, by = 'chestcircumference'): string => {
  const [head = '', ...rows] = csv.split(/\r?\n/).filter((line) => line !== '');
  const names = head.split(',').map((name) => name.replaceAll('"', '').trim());
  const value = (row: string, name: string): number => Number(row.split(',')[names.indexOf(name)]);
  const ordered = [...rows].sort((a, b) => value(a, by) - value(b, by));
  const chosen = new Set<string>();
  for (const name of [
    'chestcircumference',
    'stature',
    'waistcircumference',
    'buttockcircumference',
    'shoulderlength',
    'bicepscircumferenceflexed',
  ]) {
    const sorted = [...rows].sort((a, b) => value(a, name) - value(b, name));
    for (const row of [sorted[0], sorted[sorted.length - 1]]) if (row !== undefined) chosen.add(row);
  }
  for (let i = 0; chosen.size < count && i < 4 * count; i += 1) {
    const row = ordered[Math.floor((i * 0.6180339887498949 * ordered.length) % ordered.length)];
    if (row !== undefined) chosen.add(row);
  }
  return [head, ...chosen].join('\n');
};
