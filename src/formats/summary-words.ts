import type { Altered, Applied } from '../alter/index.ts';
import { cutPlaces, pieceDiffers, piecesTold, sayId, sayOutcomes, saySeam } from '../draw/index.ts';
import {
  type AlterationStep,
  finishedGirths,
  type Garment,
  type Piece,
  type SeamWalk,
  walkAll,
} from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { alterWords, fill, formatsWords, sentence } from '../words/index.ts';
import type { FlowItem } from './text-flow.ts';

const words = formatsWords.summary;

/** What a summary is about. */
export interface SummarySubject {
  readonly title: string;
  readonly size: string;
  readonly make?: string;
  /** The garment before the list, its pieces under the names they have now. */
  readonly before: Garment;
  readonly altered: Pick<Altered, 'garment' | 'outcomes' | 'warnings'>;
  readonly unit: Unit;
  readonly locale?: string;
}

export interface ChangedPiece {
  readonly before: Piece | undefined;
  readonly after: Piece;
}

export const changedPieces = ({ before, altered }: SummarySubject): readonly ChangedPiece[] =>
  altered.garment.pieces.flatMap((after) => {
    const old = before.pieces.find(({ id }) => id === after.id);
    return !old || pieceDiffers(old, after) ? [{ before: old, after }] : [];
  });

/** Ease shorter than this, mm, is none: no tape shows it. */
const worthSaying = 0.5;

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

type Say = (template: string, values?: Readonly<Record<string, string>>) => string;

/** Everything the page says, in the order it is worked through; boxes to tick before what is done. */
export const summaryItems = (subject: SummarySubject): readonly FlowItem[] => {
  const { altered, unit, locale = 'en' } = subject;
  const say: Say = (template, values = {}) => fill(template, values, unit, locale);
  const tick = (text: string): FlowItem => ({ kind: 'tick', text });
  const heading = (text: string): FlowItem => ({ kind: 'heading', text });
  const cautions = cautionsOf(subject);
  const walks = walksOf(subject);
  const steps = sayOutcomes(subject.before, altered.outcomes, unit);
  const hinged = new Set(cutPlaces(subject.before, altered).flatMap(({ step, hinge }) => (hinge ? [step] : [])));
  return [
    heading(words.steps),
    ...altered.outcomes.map(({ step, applied }, index): FlowItem => {
      const pieces = namesOf(
        subject,
        step,
        applied,
        applied.pieces.filter(({ puts }) => puts.length > 0),
      );
      const text = upperFirst(steps[index] ?? '');
      return {
        kind: 'text',
        lead: `${index + 1}`,
        text: pieces === '' ? text : say(words.on, { step: text, pieces }),
      };
    }),
    heading(words.table),
    tick(words.first),
    tick(words.rule),
    ...altered.outcomes.map(({ step, applied }, index) => {
      const number = String(index + 1);
      const cut = namesOf(subject, step, applied, applied.cuts);
      const touched = namesOf(subject, step, applied, applied.pieces);
      const how = cut === '' ? words.move : hinged.has(index + 1) ? words.cut : words.cutThrough;
      return tick(say(how, { number, pieces: cut === '' ? touched : cut }));
    }),
    ...[words.paper, words.true, words.mark].map(tick),
    ...(walks.length > 0 ? [heading(words.walk), ...walks.map((walk) => tick(saySeamWalk(subject, walk, say)))] : []),
    heading(words.finished),
    ...finishedItems(subject, say),
    heading(words.cautions),
    ...[...cautions, words.toile].map((text): FlowItem => ({ kind: 'text', text })),
  ];
};

/** The pieces of a step as she has them at the end; one that a later step took away as it was then. */
const namesOf = (
  { altered }: SummarySubject,
  step: AlterationStep,
  applied: Applied,
  of: readonly { readonly piece: string }[],
): string => {
  const ids = of.map(({ piece }) => piece);
  const known = [...altered.garment.pieces, ...applied.garment.pieces];
  const names = piecesTold(ids, step, altered.garment).map((id) => known.find((piece) => piece.id === id)?.name ?? id);
  // A piece of one half has a comma in its name.
  return [...new Set(names)].join(names.some((name) => name.includes(',')) ? '; ' : ', ');
};

/** Seams of pieces that changed whose lengths changed, each once; where none did, every seam of those pieces. */
const walksOf = (subject: SummarySubject): readonly SeamWalk[] => {
  const changed = new Set(changedPieces(subject).map(({ after }) => after.id));
  const was = new Map(walkAll(subject.before).map((walk) => [walk.seam.id, walk]));
  const touching = walkAll(subject.altered.garment).filter(
    ({ seam }) => changed.has(seam.a.piece) || changed.has(seam.b.piece),
  );
  const moved = touching.filter((walk) => {
    const before = was.get(walk.seam.id);
    if (!before || !walk.meets) return true;
    return (
      Math.abs(walk.lengthA - before.lengthA) > worthSaying || Math.abs(walk.lengthB - before.lengthB) > worthSaying
    );
  });
  return moved.length > 0 ? moved : touching;
};

const saySeamWalk = ({ altered, unit, locale = 'en' }: SummarySubject, walk: SeamWalk, say: Say): string => {
  const length = (mm: number) => formatLength(mm, unit, { purpose: 'amount', locale });
  const { seam, difference } = walk;
  const template = !walk.meets
    ? words.off
    : Math.abs(difference) < worthSaying
      ? words.even
      : difference < 0
        ? words.stretched
        : seam.how === 'gathered'
          ? words.gathered
          : words.eases;
  const verdict = say(template, { ease: length(Math.abs(walk.meets ? difference : walk.excess)) });
  return say(words.seam, {
    seam: saySeam(altered.garment, seam),
    a: length(walk.lengthA),
    b: length(walk.lengthB),
    verdict,
  });
};

/** What the head of the sleeve is longer than the armhole it is set into, mm; null without a sleeve. */
const headEase = (garment: Garment): number | null => {
  const into = walkAll(garment).filter(({ seam }) => {
    const [a, b] = [seam.a.piece, seam.b.piece].map((id) => garment.pieces.find((piece) => piece.id === id)?.role);
    const sleeves: readonly unknown[] = ['sleeve', 'under-sleeve'];
    return seam.how === 'eased' && sleeves.includes(a) && !sleeves.includes(b) && seam.a.edge.includes('cap');
  });
  return into.length === 0 ? null : into.reduce((sum, { difference }) => sum + difference, 0);
};

const finishedItems = ({ before, altered, unit, locale = 'en' }: SummarySubject, say: Say): readonly FlowItem[] => {
  const length = (mm: number) => formatLength(mm, unit, { purpose: 'amount', locale });
  const was = new Map(finishedGirths(before).map((girth) => [`${girth.level} ${girth.measure}`, girth.finished]));
  const row = (level: string, from: number | undefined, to: number): FlowItem => {
    const stays = from !== undefined && length(from) === length(to);
    const values = { level, before: from === undefined ? '—' : length(from), after: length(to) };
    return { kind: 'text', text: say(stays ? words.stays : words.girth, values) };
  };
  const girths = finishedGirths(altered.garment).map((girth) =>
    row(sayId(girth.level), was.get(`${girth.level} ${girth.measure}`), girth.finished),
  );
  const [easeBefore, easeAfter] = [headEase(before), headEase(altered.garment)];
  if (easeAfter === null) return girths;
  const values = { before: easeBefore === null ? '—' : length(easeBefore), after: length(easeAfter) };
  return [...girths, { kind: 'text', text: say(words.headEase, values) }];
};

const cautionsOf = ({ altered, unit, locale = 'en' }: SummarySubject): readonly string[] => {
  const warned = altered.warnings.map((problem) => {
    const { message, remedy } = sentence(problem, unit, locale);
    return `${message} ${remedy}`;
  });
  const told = altered.outcomes.flatMap(({ step }) => alterWords.alterations[step.alteration]?.caution ?? []);
  return [...new Set([...warned, ...told])];
};
