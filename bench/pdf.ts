import { readFileSync } from 'node:fs';
import { housePattern } from '../src/drafting/index.ts';
import { printPdf } from '../src/formats/index.ts';
import type { Paper } from '../src/make/index.ts';

/** A full-scale PDF of the blouse on each paper: packing, drawing, tiling and writing, fonts read from memory. */
const blouse = housePattern('blouse');
if (!blouse) throw new Error('The blouse is missing');
const { sizes } = blouse.pattern();
const { garment, id } = sizes[Math.floor(sizes.length / 2)] as (typeof sizes)[number];
const font = (folder: string): Uint8Array =>
  new Uint8Array(
    readFileSync(new URL(import.meta.resolve(`@expo-google-fonts/alegreya-sans/${folder}/AlegreyaSans_${folder}.ttf`))),
  );
const fonts = { regular: font('400Regular'), bold: font('700Bold') };

const quantile = (sorted: readonly number[], share: number): string =>
  (sorted[Math.min(Math.floor(share * sorted.length), sorted.length - 1)] as number).toFixed(0);

const rounds = 12;
const rows: Record<string, string | number>[] = [];
for (const paper of ['a4', 'letter', 'a0', 'roll36'] satisfies Paper[]) {
  const times: number[] = [];
  let pages = 0;
  let bytes = 0;
  // The first rounds also compile; they are not counted.
  for (let round = 0; round < rounds + 2; round += 1) {
    const start = performance.now();
    const print = await printPdf({
      garment,
      title: 'Blouse',
      size: id,
      make: 'Concert blouse',
      paper,
      unit: 'cm',
      fonts,
    });
    const taken = performance.now() - start;
    if (!print.ok) throw new Error(print.problem.code);
    pages = print.value.pages;
    bytes = print.value.bytes.length;
    if (round >= 2) times.push(taken);
  }
  times.sort((a, b) => a - b);
  rows.push({
    paper,
    pages,
    kB: Math.round(bytes / 1000),
    'median ms': quantile(times, 0.5),
    'least ms': quantile(times, 0),
    'p95 ms': quantile(times, 0.95),
  });
}
console.table(rows);
