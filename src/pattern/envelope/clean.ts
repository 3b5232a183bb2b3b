import { bad, good, type Result } from '../../units/index.ts';

/** More than any envelope prints; past them the text is something else. */
export const chartLimits = { characters: 60_000, lines: 400, columns: 80, line: 2000 } as const;

/** Marks that turn writing right to left, join or hide: they stand between pasted figures and are never seen. */
const unseen = /\p{Cf}|(?![\t\n])\p{Cc}/gu;
const lineEnds = /\r\n?|[\v\f\u2028\u2029]/g;
const spaces = /[^\S\t\n]/g;
const dashes = /[−–—‐‑‒―⸺﹘﹣－]/g;

/**
 * The lines of pasted writing, every space and dash a plain one, nothing unseen in them, empty ones left out.
 * Long and broad text is refused before it is looked at closely, so that no paste can keep the page waiting.
 */
export const chartLines = (text: string): Result<readonly string[]> => {
  const broadest = text
    .slice(0, chartLimits.characters)
    .split('\n', 50)
    .reduce((most, line) => Math.max(most, line.split(/[\t;|]|\s{2,}/, chartLimits.columns * 200).length), 0);
  if (broadest > chartLimits.columns) {
    return bad('envelope.chart-too-broad', { columns: broadest, most: chartLimits.columns });
  }
  if (text.length > chartLimits.characters) return bad('envelope.chart-too-long');
  const lines = text
    .replace(lineEnds, '\n')
    .replace(unseen, '')
    .replace(spaces, ' ')
    .replace(dashes, '-')
    .split('\n')
    .filter((line) => line.trim() !== '');
  if (lines.length === 0) return bad('envelope.chart-empty');
  const tooLong = lines.length > chartLimits.lines || lines.some((line) => line.length > chartLimits.line);
  return tooLong ? bad('envelope.chart-too-long') : good(lines);
};
