import { pathEnd } from '../geometry/index.ts';
import type { Garment, Girth, Notch, Piece, Seam } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { allowances, interfacing, shell } from './pieces.ts';
import { seamPocket } from './pocket-in-seam.ts';
import { longer, plain, side } from './seams.ts';
import { type SettledLegs, settleLegs } from './trouser-fit.ts';
import { legPiece, sideEdges } from './trouser-piece.ts';
import { legGirths, legSeams } from './trouser-seams.ts';
import type { TrousersPlan } from './trousers-plan.ts';
import { draftWaist, frontEase, type TrousersWaist } from './trousers-waist.ts';
import type { EaseByLevel } from './types.ts';
import { straightWaistband } from './waistband.ts';

/** Finished width of the waistband, and of the elastic in it, mm. */
export const band = { width: 40, elastic: 35 } as const;

/** The elastic is cut this share of the gathered band's length: it holds the waist when worn. */
export const elasticShare = 0.92;

/** From the waist to where the pocket's mouth begins, and the least to where it ends: a hand is 90 to 110 across, and goes in aslant, mm. */
const mouth = { from: 40, end: 200, belowHip: 15 } as const;

export const hemAllowance = 40;

/** From the waist to the end of the pocket's mouth, which is the zip's: below the hip, so that what lies below it passes. */
export const openingOf = ({ body }: TrousersPlan): number => Math.max(mouth.end, body.waistToHip + mouth.belowHip);

/** The elastic's marks: between them the back band's inner edge is as long as the band is when gathered. */
const elasticMarks = ({ backBand, gathered }: TrousersWaist): readonly Notch[] => [
  { id: 'elastic-left', edge: 'inner-left', at: 1 - gathered / backBand, strokes: 1 },
  { id: 'elastic-right', edge: 'inner-right', at: gathered / backBand, strokes: 1 },
];

/** The middle of what each leg's waist is sewn to: the waist has the same. */
const legMiddles: readonly Notch[] = ['right', 'left'].map((id) => ({
  id: `${id}-middle`,
  edge: id,
  at: 0.5,
  strokes: 1,
}));

const frontBand = ({ frontBand: length }: TrousersWaist): Piece => {
  const piece = straightWaistband({
    name: 'Front waistband',
    width: band.width,
    sections: [
      { id: 'right', length },
      { id: 'left', length },
    ],
    underlap: 0,
    allowances: { seam: allowances.seam, long: allowances.seam },
  });
  return {
    ...piece,
    id: 'front-waistband',
    cut: [shell(1, false), interfacing(1, false)],
    notches: [...piece.notches, ...legMiddles],
  };
};

/** The back band, cut as long as the back's waist; its level stops where it ends once gathered. */
const backBand = (waist: TrousersWaist): Piece => {
  const { backBand: length, gathered } = waist;
  const piece = straightWaistband({
    name: 'Back waistband',
    width: band.width,
    sections: [
      { id: 'left', length },
      { id: 'right', length },
    ],
    underlap: 0,
    allowances: { seam: allowances.seam, long: allowances.seam },
  });
  const y = 1.25 * band.width;
  return {
    ...piece,
    id: 'back-waistband',
    cut: [shell(1, false)],
    notches: [...piece.notches, ...legMiddles, ...elasticMarks(waist)],
    levels: [{ id: 'waist', from: { x: length - gathered, y }, to: { x: length + gathered, y }, stops: 'both' }],
  };
};

const bandSeams = (gathered: boolean): readonly Seam[] => {
  const [piece, which] = gathered ? ['back-waistband', 'back'] : ['front-waistband', 'front'];
  // Worn, the front's band lies from right to left as it does face up; the back's from left to right.
  const halves = (gathered ? ['left', 'right'] : ['right', 'left']) as readonly [string, string];
  const join = (id: string, bandEdge: string, reversed: boolean): Seam => {
    const [waist, band] = [side(which, 'waist'), side(piece, bandEdge, reversed)];
    const middle: Seam['notches'] = halves.includes(bandEdge) ? [['waist-middle', `${bandEdge}-middle`]] : [];
    return gathered ? plain(id, waist, band, middle) : longer('eased', id, waist, band, [0, 2 * frontEase], middle);
  };
  return [
    join(`band-${which}-${halves[0]}`, halves[0], false),
    join(`band-${which}-${halves[1]}`, halves[1], true),
    join(`band-${which}-inner-${halves[0]}`, `inner-${halves[0]}`, true),
    join(`band-${which}-inner-${halves[1]}`, `inner-${halves[1]}`, false),
  ];
};

const seams: readonly Seam[] = [
  ...legSeams(true),
  plain('pocket-front', side('pocket', 'side'), side('front', 'side-upper'), [
    ['mouth', 'mouth'],
    ['hip', 'hip'],
    ['mouth-end', 'opening-end'],
  ]),
  plain('pocket-back', side('pocket', 'side'), side('back', 'side-upper'), [
    ['mouth', 'mouth'],
    ['hip', 'hip'],
    ['mouth-end', 'opening-end'],
  ]),
  plain('pocket-bag', side('pocket', 'bag'), side('pocket', 'bag')),
  ...bandSeams(false),
  ...bandSeams(true),
  plain('band-right', side('front-waistband', 'start-outer'), side('back-waistband', 'end-outer', true)),
  plain('band-right-inner', side('front-waistband', 'start-inner'), side('back-waistband', 'end-inner', true)),
  plain('band-left', side('front-waistband', 'end-outer'), side('back-waistband', 'start-outer', true)),
  plain('band-left-inner', side('front-waistband', 'end-inner'), side('back-waistband', 'start-inner', true)),
];

const girths: readonly Girth[] = [
  {
    level: 'waist',
    measure: 'waistGirth',
    around: 'body',
    pieces: [
      { piece: 'front-waistband', factor: 1 },
      { piece: 'back-waistband', factor: 1 },
    ],
  },
  ...legGirths(true),
];

const assemble = (plan: TrousersPlan, settled: SettledLegs, waist: TrousersWaist): Garment => {
  const opening = openingOf(plan);
  const { legs, crotch } = settled;
  const leg = (which: 'front' | 'back', name: string): Piece =>
    legPiece({
      which,
      name,
      leg: legs[which],
      crotch: crotch[which],
      top: waist.tops[which],
      opening,
      hemAllowance,
      upperNotches: [{ id: 'mouth', at: mouth.from }],
    });
  const front = leg('front', 'Front leg');
  const top = waist.tops.front;
  const rise = front.lines.find(({ id }) => id === 'rise');
  const pocket = seamPocket({
    name: 'Pocket bag',
    waist: top.waist,
    side: sideEdges(top, legs.front, opening)[0],
    mouthFrom: mouth.from,
    rise: rise ? pathEnd(rise.path).y : legs.front.hipLevel / 2,
    sideAbove: top.sideAbove,
  });
  return {
    pieces: [front, leg('back', 'Back leg'), pocket, frontBand(waist), backBand(waist)],
    seams,
    girths,
  };
};

/** A garment drafted for one body, with the ease it states. */
export const draftTrousers = (
  plan: TrousersPlan,
): Result<{ readonly garment: Garment; readonly ease: EaseByLevel }> => {
  const settled = settleLegs(plan);
  if (!settled.ok) return settled;
  const waist = draftWaist(plan, settled.value);
  if (!waist.ok) return waist;
  return good({
    garment: assemble(plan, settled.value, waist.value),
    ease: {
      waist: waist.value.ease,
      hip: plan.ease.hip,
      thigh: settled.value.thigh - plan.body.thighGirth,
      knee: plan.ease.knee,
    },
  });
};
