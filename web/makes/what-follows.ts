import { saySeam } from '../../src/draw/index.ts';
import { outlineArea } from '../../src/geometry/index.ts';
import { finishedGirths, type Garment, outlineOf, walkAll } from '../../src/pattern/index.ts';
import { millimetresPer } from '../../src/units/index.ts';
import { fitWords, webWords } from '../../src/words/index.ts';
import type { Say } from '../app/settings.tsx';
import { levelName } from '../parts/level-name.ts';

const words = webWords.make.alterations;

/** Less than this, mm, is nothing at a table. */
const worthSaying = 0.5;

/** Area that is cut in all, each piece as often as it is cut from its cloth, mm². */
const cutArea = (garment: Garment): number =>
  garment.pieces.reduce((sum, piece) => {
    const count = piece.cut.reduce((times, { count }) => times + count, 0);
    const onFold = piece.edges.some(({ finish }) => finish === 'fold') ? 2 : 1;
    return sum + Math.abs(outlineArea(outlineOf(piece))) * count * onFold;
  }, 0);

const isSleeve = (garment: Garment, id: string): boolean =>
  ['sleeve', 'under-sleeve'].includes(String(garment.pieces.find((piece) => piece.id === id)?.role));

/** A sleeve set into what is no sleeve: elsewhere too something longer is eased in, as a waist into its band. */
const isSleeveHead = (garment: Garment, { a, b }: Garment['seams'][number]): boolean =>
  isSleeve(garment, a.piece) !== isSleeve(garment, b.piece);

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/**
 * What a list of alterations does to the rest: seams that changed and whether they meet, ease of the sleeve head, finished
 * girths, pieces that came or went, and cloth; a line each, in words.
 */
export const sayWhatFollows = (before: Garment, after: Garment, say: Say): readonly string[] => {
  if (before === after) return [];
  const lines: string[] = [];
  const amount = (mm: number) => say.length(mm, { purpose: 'amount' });
  const old = new Map(walkAll(before).map((walk) => [walk.seam.id, walk]));
  const changed = walkAll(after).filter((walk) => {
    const was = old.get(walk.seam.id);
    return (
      !was || Math.abs(was.lengthA - walk.lengthA) >= worthSaying || Math.abs(was.lengthB - walk.lengthB) >= worthSaying
    );
  });
  const named = (walk: { seam: Garment['seams'][number] }) => lowerFirst(saySeam(after, walk.seam));
  const meeting = changed.filter(({ meets }) => meets);
  if (meeting.length > 0) lines.push(say.words(words.seamsMeet, { seams: meeting.map(named).join('; ') }));
  for (const walk of changed.filter(({ meets }) => !meets))
    lines.push(say.words(words.seamsMiss, { seam: named(walk) }));
  for (const walk of changed.filter(({ seam }) => seam.how === 'eased')) {
    const was = old.get(walk.seam.id);
    if (!was || Math.abs(was.difference - walk.difference) < worthSaying) continue;
    lines.push(
      say.words(isSleeveHead(after, walk.seam) ? words.capEase : words.easedIn, {
        seam: named(walk),
        before: amount(was.difference),
        after: amount(walk.difference),
      }),
    );
  }
  const girths = finishedGirths(before);
  for (const girth of finishedGirths(after)) {
    const was = girths.find((one) => one.level === girth.level && one.measure === girth.measure);
    if (!was || Math.abs(was.finished - girth.finished) < worthSaying) continue;
    const level = fitWords.levels[girth.level as keyof typeof fitWords.levels] ?? levelName(girth.level);
    lines.push(
      say.words(words.girthLine, {
        level: lowerFirst(level),
        before: amount(was.finished),
        after: amount(girth.finished),
      }),
    );
  }
  const names = (of: Garment, others: Garment) =>
    of.pieces.filter(({ id }) => !others.pieces.some((one) => one.id === id)).map(({ name }) => name);
  const [made, gone] = [names(after, before), names(before, after)];
  if (made.length > 0) lines.push(say.words(words.pieceNew, { pieces: made.join(', ') }));
  if (gone.length > 0) lines.push(say.words(words.pieceLost, { pieces: gone.join(', ') }));
  const square = say.unit === 'cm' ? 10 : millimetresPer.in;
  const area = Math.round((cutArea(after) - cutArea(before)) / (square * square));
  if (area !== 0) {
    const amountOf = say.words(say.unit === 'cm' ? words.squareCentimetres : words.squareInches, {
      area: Math.abs(area),
    });
    lines.push(say.words(area > 0 ? words.areaMore : words.areaLess, { area: amountOf }));
  }
  return lines;
};
