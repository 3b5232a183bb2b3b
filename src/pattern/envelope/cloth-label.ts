import { parseLength } from '../../units/index.ts';
import { chartWords } from '../../words/index.ts';
import { clothLayerOf } from './labels.ts';
import type { ClothRow } from './types.ts';
import type { UnitSystem } from './unit-words.ts';

type Nap = ClothRow['nap'];

/** Stars as envelopes have long used them: one for without nap, two for with, three or both for either; a legend of the chart's own outranks it. */
export type Stars = Readonly<Record<string, Nap>>;
export const usualStars: Stars = { '*': 'without', '**': 'with', '***': 'either' };

const napWords: readonly (readonly [Nap, RegExp])[] = [
  ['either', /\bwith (?:or|and|\/) ?without nap\b|\bwith(?:out)?(?:\/| or )with(?:out)? nap\b/i],
  ['without', /\bwithout nap\b|\bno nap\b|\bnon?-?nap(?:ped)?\b|\bw\/o nap\b/i],
  ['with', /\bwith nap\b|\bw\/ ?nap\b|\bnapped\b|\bone[- ]way\b|\bnap\b/i],
];

/** What writing says about nap, and the writing without it. */
export const napSaid = (text: string, stars: Stars): { readonly nap: Nap | null; readonly rest: string } => {
  for (const [nap, said] of napWords) {
    if (said.test(text)) return { nap, rest: text.replace(said, ' ').replace(/\*/g, ' ') };
  }
  const runs = text.match(/\*+/g);
  if (!runs) return { nap: null, rest: text };
  const naps = new Set(runs.map((run) => stars[run] ?? 'either'));
  const [first] = naps;
  return { nap: naps.size > 1 || !first ? 'either' : first, rest: text.replace(/\*+(?:\s*\/\s*(?=\*))?/g, ' ') };
};

/** A legend of the chart’s own, such as `* with nap  ** without nap`; null where the line is none. */
export const starsLegend = (line: string): Stars | null => {
  if (!/^\s*\*/.test(line) || !/nap/i.test(line) || /\d/.test(line)) return null;
  const entries = [...line.matchAll(/(\*+)\s*[=:-]?\s*([^*]+)/g)].flatMap(([, star = '', words = '']) => {
    const { nap } = napSaid(words, {});
    return nap ? [[star, nap] as const] : [];
  });
  return entries.length > 0 ? { ...usualStars, ...Object.fromEntries(entries) } : null;
};

const number = String.raw`\d+(?:[.,]\d+)?(?:[ -]\d+\/\d+| ?[½¼¾⅛⅜⅝⅞])?`;
const unitName = String.raw`"|''|inch(?:es)?|ins?\b|cms?\b|mm\b|m\b`;
const widthRun = new RegExp(
  String.raw`(${number})\s*(${unitName})?(?:\s*(?:/|-|to|,|\()\s*(${number})\s*(${unitName})?\s*\)?)?`,
  'i',
);

interface Width {
  readonly mm: number;
  readonly system: UnitSystem | null;
}

/** A bare width over this is centimetres, at or under it inches: no cloth is woven 75 inches wide for dress, none 75 cm or less but braid. */
const widestInches = 74;

/** Narrower is ribbon and wider is no loom, mm. */
const possible = [100, 5000] as const;

const widthOf = (figure: string | undefined, unit: string | undefined): Width | null => {
  if (figure === undefined) return null;
  const bare = Number.parseFloat(figure.replace(',', '.'));
  const named = unit ? (/^c|^m/i.test(unit) ? 'cm' : 'inches') : null;
  const system = named ?? (bare > widestInches ? 'cm' : 'inches');
  const read = parseLength(`${figure} ${unit ?? (system === 'cm' ? 'cm' : 'in')}`, 'cm');
  return read.ok && read.value >= possible[0] && read.value <= possible[1] ? { mm: read.value, system } : null;
};

export interface WidthSaid {
  /** By system, mm: 45"/115 cm says one width twice. Of a range the narrower, which needs more. */
  readonly widths: { readonly [K in UnitSystem]?: number };
  readonly rest: string;
}

/** The width a label names. Two figures in one unit are a range; a second in the other unit says the same again. */
export const widthSaid = (text: string): WidthSaid => {
  const run = widthRun.exec(text);
  if (!run) return { widths: {}, rest: text };
  const second = widthOf(run[3], run[4]);
  // 44/45": the first takes the unit of the second unless it is plainly the other system (45/115 cm).
  const bareFirst =
    run[2] === undefined &&
    run[4] !== undefined &&
    Number.parseFloat(run[1] ?? '') > Number.parseFloat(run[3] ?? '') / 2;
  const first = widthOf(run[1], bareFirst ? run[4] : run[2]);
  const found = [first, second].flatMap((width) => (width ? [width] : []));
  const widths: Record<string, number> = {};
  for (const { mm, system } of found) {
    if (system) widths[system] = Math.min(mm, widths[system] ?? mm);
  }
  return { widths, rest: `${text.slice(0, run.index)} ${text.slice(run.index + run[0].length)}` };
};

const besideWidth = new Set<string>(chartWords.besideWidth);

/** What is left of a label once width, nap and views are taken: a layer, nothing, or words to be asked about. */
export const layerSaid = (text: string): { readonly layer: ClothRow['layer'] | null; readonly unknown: string } => {
  const plain = text
    .replace(/[()"*]/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^[\s,:;/-]+|[\s,:;/-]+$/g, '');
  if (plain === '' || besideWidth.has(plain.toLowerCase())) return { layer: null, unknown: '' };
  const without = plain
    .replace(/\b(?:wide|width)\b/gi, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  const layer = clothLayerOf(plain) ?? clothLayerOf(without);
  return layer ? { layer, unknown: '' } : { layer: null, unknown: plain };
};
