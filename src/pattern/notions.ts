import type { Measures } from '../body/types.ts';
import { edgeLength, pieceOf } from './piece.ts';
import type { Garment, NotionEdge, NotionKind, NotionRule } from './types.ts';

/** A notion to buy: how many, each how long and how wide, mm. */
export interface Notion {
  readonly what: NotionKind;
  readonly count: number;
  readonly length?: number;
  readonly size?: number;
}

/** How far along an edge a notch lies, as a fraction; a notch that is not there stands for the edge's end. */
const fractionAt = (garment: Garment, { piece, edge }: NotionEdge, notch: string | undefined, end: 0 | 1): number =>
  notch === undefined
    ? end
    : (pieceOf(garment, piece).notches.find((mark) => mark.id === notch && mark.edge === edge)?.at ?? end);

const lengthAlong = (garment: Garment, along: NotionEdge): number => {
  const length = edgeLength(pieceOf(garment, along.piece), along.edge);
  return (
    along.times * length * Math.abs(fractionAt(garment, along, along.to, 1) - fractionAt(garment, along, along.from, 0))
  );
};

/** Elastic and zips are asked for in whole centimetres unless the rule says otherwise, mm. */
const usualStep = 10;

/**
 * What a garment takes, by its rules: lengths read off the very pieces that are cut, so that they follow size and
 * alterations. `body` is whom it is cut for; a rule about a measure not known gives no length.
 */
export const notionsOf = (garment: Garment, rules: readonly NotionRule[], body: Measures = {}): readonly Notion[] =>
  rules.map((rule) => {
    const { what, along = [], around, share = 1, plus = 0, step = usualStep, every, size } = rule;
    const measured = around === undefined ? 0 : (body[around] ?? Number.NaN);
    const run = along.reduce((sum, edge) => sum + lengthAlong(garment, edge), measured);
    const known = (along.length > 0 || around !== undefined || plus > 0) && Number.isFinite(run);
    const length = known ? Math.ceil((run * share + plus) / step - 1e-9) * step : undefined;
    const sized = size === undefined ? {} : { size };
    if (every !== undefined && Number.isFinite(run))
      return { what, count: Math.ceil((run * share) / every - 1e-9) + 1 + (rule.count ?? 0), ...sized };
    return { what, count: rule.count ?? 1, ...(length === undefined ? {} : { length }), ...sized };
  });
