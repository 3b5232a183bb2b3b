import type { Drawing, DrawingLayer, GroupMark, Ink, Mark, PathMark, TextMark } from '../draw/index.ts';
import { pathToSvg } from '../geometry/index.ts';
import { inkStyles } from './ink-style.ts';

export interface SvgOptions {
  /** What a unit of the file is; 'mm' gives the file its true size, 'none' lets it fill what it is put in. */
  readonly unit: 'mm' | 'none';
  /** Layers to write; all when left out. */
  readonly layers?: readonly DrawingLayer[];
  /** Decimals of a coordinate in mm. */
  readonly decimals?: number;
  /** How many times their full-scale weight lines have, dashes with them: for pictures that are looked at small. */
  readonly weight?: number;
  /** Families named for words, first choice first, as CSS writes them. */
  readonly fontFamily?: string;
}

const usualFamily = "'Alegreya Sans', 'Gill Sans', sans-serif";

/**
 * A drawing as a standalone SVG: one style rule for each ink used, a group with a title for each thing that
 * can be pointed at, layers told by `data-layer`. Legible printed in black.
 */
export const writeSvg = (drawing: Drawing, options: SvgOptions = { unit: 'mm' }): string => {
  const { bounds } = drawing;
  const decimals = options.decimals ?? 4;
  const width = number(bounds.maxX - bounds.minX, decimals);
  const height = number(bounds.maxY - bounds.minY, decimals);
  const kept = keepLayers(drawing.marks, options.layers);
  const size = options.unit === 'mm' ? ` width="${width}mm" height="${height}mm"` : '';
  return [
    `<svg xmlns="http://www.w3.org/2000/svg"${size} viewBox="${number(bounds.minX, decimals)} ${number(bounds.minY, decimals)} ${width} ${height}" role="img" aria-label="${escaped(drawing.label)}">`,
    `<title>${escaped(drawing.label)}</title>`,
    `<style>\n${styleRules(kept, options.fontFamily ?? usualFamily, options.weight ?? 1)}\n</style>`,
    ...kept.map((mark) => markElement(mark, decimals, 0)),
    '</svg>',
    '',
  ].join('\n');
};

const keepLayers = (marks: readonly Mark[], layers: readonly DrawingLayer[] | undefined): readonly Mark[] =>
  layers === undefined
    ? marks
    : marks.flatMap((mark): Mark[] => {
        if (mark.kind === 'group') return [{ ...mark, marks: keepLayers(mark.marks, layers) }];
        return layers.includes(mark.layer) ? [mark] : [];
      });

const inksOf = (marks: readonly Mark[]): Set<Ink> =>
  new Set(marks.flatMap((mark) => (mark.kind === 'group' ? [...inksOf(mark.marks)] : [mark.ink])));

const styleRules = (marks: readonly Mark[], family: string, weight: number): string => {
  const inks = inksOf(marks);
  const lines = Object.entries(inkStyles)
    .filter(([ink]) => inks.has(ink as Ink))
    .map(([ink, { colour, width, dash }]) => {
      const times = (mm: number): string => number(mm * weight, 3);
      const dashes = dash.length === 0 ? '' : ` stroke-dasharray: ${dash.map(times).join(' ')};`;
      return `.${ink} { stroke: ${colour}; stroke-width: ${times(width)};${dashes} }\n.${ink}.filled, text.${ink} { fill: ${colour}; stroke: none; }`;
    });
  return [
    'path { fill: none; stroke-linejoin: round; }',
    `text { font-family: ${family}; font-variant-numeric: lining-nums tabular-nums; }`,
    '.bold { font-weight: 700; }',
    ...lines,
  ].join('\n');
};

const markElement = (mark: Mark, decimals: number, depth: number): string => {
  const indent = '  '.repeat(depth);
  if (mark.kind === 'group') return groupElement(mark, decimals, depth, indent);
  return indent + (mark.kind === 'path' ? pathElement(mark, decimals) : textElement(mark, decimals));
};

const groupElement = (mark: GroupMark, decimals: number, depth: number, indent: string): string =>
  [
    `${indent}<g id="${escaped(mark.id)}" role="group" aria-label="${escaped(mark.label)}">`,
    `${indent}  <title>${escaped(mark.label)}</title>`,
    ...mark.marks.map((inner) => markElement(inner, decimals, depth + 1)),
    `${indent}</g>`,
  ].join('\n');

const pathElement = (mark: PathMark, decimals: number): string => {
  const classes = mark.filled ? `${mark.ink} filled` : mark.ink;
  const colour = mark.colour && mark.filled ? ` style="fill: ${escaped(mark.colour)}"` : '';
  const data = mark.paths.filter((path) => path.length > 0).map((path) => pathToSvg(path, decimals));
  return `<path class="${classes}" data-layer="${mark.layer}"${colour} d="${data.join(' ')}"/>`;
};

const textElement = (mark: TextMark, decimals: number): string => {
  const [x, y] = [number(mark.at.x, decimals), number(mark.at.y, decimals)];
  const degrees = mark.angle ? ` transform="rotate(${number((mark.angle * 180) / Math.PI, 3)} ${x} ${y})"` : '';
  const bold = mark.weight === 'bold' ? ' bold' : '';
  const anchor = mark.anchor === 'start' ? '' : ` text-anchor="${mark.anchor}"`;
  return `<text class="${mark.ink}${bold}" data-layer="${mark.layer}" x="${x}" y="${y}" font-size="${number(mark.size, decimals)}"${anchor}${degrees}>${escaped(mark.text)}</text>`;
};

const number = (value: number, decimals: number): string => String(Number(value.toFixed(decimals)) + 0);

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** XML 1.0 allows no control characters but tab and line ends, even escaped. */
const escaped = (text: string): string =>
  text
    // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the ones XML forbids
    .replace(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '\ufffd')
    .replace(/[&<>"]/g, (letter) => escapes[letter] as string);
