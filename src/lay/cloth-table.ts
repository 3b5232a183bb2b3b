import type { Cloth } from '../cloth/index.ts';
import type { ClothAdvice, Garment, Layer } from '../pattern/index.ts';
import { millimetresPer, type Problem, type Result, type Unit } from '../units/index.ts';
import { buyLength } from './buy.ts';
import { layoutProblemFor } from './garment.ts';
import type { Layout, LayoutProblem } from './types.ts';

type ClothKind = 'woven' | 'knit' | 'lining' | 'interfacing';

/** Widths a table of cloth needed is made for, mm, by what is laid. */
export type ClothWidths = Readonly<Record<ClothKind, readonly number[]>>;

const inches = (...widths: readonly number[]): readonly number[] => widths.map((width) => width * millimetresPer.in);

/** Usual widths cloth is sold in where it is sold by the metre and by the yard. Interfacing is narrow. */
export const usualWidths: Readonly<Record<Unit, ClothWidths>> = {
  cm: {
    woven: [900, 1150, 1400, 1500],
    knit: [1400, 1500, 1700],
    lining: [1150, 1400, 1500],
    interfacing: [900],
  },
  in: {
    woven: inches(36, 45, 54, 60),
    knit: inches(54, 60, 66),
    lining: inches(45, 54, 60),
    interfacing: inches(36),
  },
};

/** One question of a table of cloth needed: a layer of a garment on cloth of one width. */
export interface ClothQuestion {
  readonly layer: Layer;
  readonly width: number;
  /** All one way, as nap and one-way prints ask. */
  readonly oneWay: boolean;
  /** What is to be laid; or why it cannot be, where a piece is wider than the cloth. */
  readonly problem: LayoutProblem | null;
  readonly refusal?: Problem;
}

/** What one question came to, mm; `length` null where it cannot be cut from that width. */
export interface ClothAnswer {
  readonly layer: Layer;
  readonly width: number;
  readonly oneWay: boolean;
  readonly length: number | null;
  /** With enough to square the ends, rounded up; for cloth that has been washed, or does not shrink. */
  readonly toBuyMetric: number | null;
  readonly toBuyYards: number | null;
  /** Why there is no length: the problem's code, `lay.wider-than-cloth` where a piece is wider than the cloth. */
  readonly refused?: string;
}

/** Cloth of a width as the pattern advises it, washed: the table then stands for any, and shrinkage is added to it. */
const clothOf = (advice: ClothAdvice, width: number, oneWay: boolean): Cloth => ({
  format: 'easewright-cloth/1',
  name: '',
  structure: advice.structure,
  fibres: '',
  weight: null,
  width,
  length: null,
  stretchAcross: advice.stretch,
  stretchAlong: 0,
  oneWay,
  shrinkAlong: 0,
  shrinkAcross: 0,
  washed: true,
  colour: '#ffffff',
  terms: 'unknown',
  from: '',
  note: '',
});

/** Gap left for the blade in a table of cloth needed, mm. */
const gap = 2;

/**
 * The questions of a garment's table of cloth needed: every layer on every one of `widths`, wovens also with nap. Cloth is
 * folded lengthwise, as most of it is cut; pieces on the fold need it.
 */
export const clothQuestions = (
  garment: Garment,
  advice: ClothAdvice,
  widths: ClothWidths = usualWidths.cm,
): readonly ClothQuestion[] => {
  const layers = (['shell', 'lining', 'interfacing'] as const).filter((layer) =>
    garment.pieces.some((piece) => piece.cut.some((order) => order.layer === layer && order.count > 0)),
  );
  return layers.flatMap((layer) => {
    const ways = layer === 'shell' ? (advice.structure === 'knit' ? [true] : [false, true]) : [false];
    return widths[layer === 'shell' ? advice.structure : layer].flatMap((width) =>
      ways.map((oneWay): ClothQuestion => {
        const asked = layoutProblemFor(garment, clothOf(advice, width, oneWay), {
          fold: 'lengthwise',
          gap,
          oneWay,
          layer,
        });
        return asked.ok
          ? { layer, width, oneWay, problem: asked.value }
          : { layer, width, oneWay, problem: null, refusal: asked.problem };
      }),
    );
  });
};

/** A question's answer from the plan that was found for it. */
export const clothAnswer = (
  { layer, width, oneWay, refusal }: ClothQuestion,
  found: Result<Layout> | null,
  advice: ClothAdvice,
): ClothAnswer => {
  if (!found?.ok) {
    const refused = found?.problem.code ?? refusal?.code ?? 'lay.cancelled';
    return { layer, width, oneWay, length: null, toBuyMetric: null, toBuyYards: null, refused };
  }
  const { length, toBuyMetric, toBuyYards } = buyLength(found.value, clothOf(advice, width, oneWay));
  return { layer, width, oneWay, length, toBuyMetric, toBuyYards };
};
