import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { HousePattern } from '../../src/drafting/index.ts';
import { type ClothAnswer, clothAnswer, clothQuestions, searchLayout } from '../../src/lay/index.ts';

/** Tables of cloth needed as they stand in docs/patterns: laid out once and kept, because laying takes minutes. */

const folder = join('docs', 'patterns', 'cloth');
const rounds = 400;
const seed = 20261;

export interface SizedAnswer extends ClothAnswer {
  readonly size: string;
}

/** Lays one size of a view on every usual width; the same on every machine. */
export const layOut = async (house: HousePattern, view: string, sizeId: string): Promise<readonly SizedAnswer[]> => {
  const pattern = house.pattern({ view });
  const size = pattern.sizes.find(({ id }) => id === sizeId);
  if (!size) throw new Error(`${house.id} has no size ${sizeId}`);
  const rows: SizedAnswer[] = [];
  for (const question of clothQuestions(size.garment, pattern.cloth)) {
    const plan = question.problem ? await searchLayout(question.problem, { rounds, seed }) : null;
    rows.push({ size: sizeId, ...clothAnswer(question, plan, pattern.cloth) });
  }
  return rows;
};

const fileOf = (house: HousePattern, view: string): string => join(folder, `${house.id}-${view}.json`);

export const keptTable = (house: HousePattern, view: string): readonly SizedAnswer[] =>
  existsSync(fileOf(house, view)) ? JSON.parse(readFileSync(fileOf(house, view), 'utf8')) : [];

/** The sizes a table is laid for: smallest, middle, largest. Those between lie between. */
export const sizesLaid = (house: HousePattern): readonly string[] => {
  const ids = house.chart.map(({ id }) => id);
  return [0, Math.floor((ids.length - 1) / 2), ids.length - 1].map((at) => ids[at] ?? '');
};

/** Lays those sizes anew and keeps the table. */
export const keepTable = async (house: HousePattern, view: string): Promise<void> => {
  const rows: SizedAnswer[] = [];
  for (const id of sizesLaid(house)) rows.push(...(await layOut(house, view, id)));
  writeFileSync(fileOf(house, view), `[\n${rows.map((row) => `  ${JSON.stringify(row)}`).join(',\n')}\n]\n`);
};
