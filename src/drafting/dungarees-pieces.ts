import { line, nearestOnPath, type Point, pathEnd } from '../geometry/index.ts';
import type { Garment, InnerLine, Piece, Seam } from '../pattern/index.ts';
import { good, type Result } from '../units/index.ts';
import { bibPiece, bibTop } from './bib.ts';
import type { DungareesPlan } from './dungarees-plan.ts';
import { type DungareesWaist, draftDungareesWaist } from './dungarees-waist.ts';
import { halfPatch, halfPatchPlace, type PatchFrame, patchPiece, wholePatchPlace } from './patch-pocket.ts';
import { allowances, closeRuns, edge, shell, straightRun } from './pieces.ts';
import { plain, roundBody, side } from './seams.ts';
import { buttonholeOnBib, buttonholesOnLeg, sideFacing, sideUnderlap } from './side-opening.ts';
import { settle } from './solve.ts';
import { type SettledLegs, settleLegs } from './trouser-fit.ts';
import { cutLegsAt } from './trouser-leg.ts';
import { legPiece, sideEdges } from './trouser-piece.ts';
import { legGirths, legSeams } from './trouser-seams.ts';
import type { EaseByLevel } from './types.ts';

/** Finished width of a strap, and how high the bibs' sides go up from the waist, mm. */
export const dungareesWidths = { strap: 36, bibSide: 45, hem: 30 } as const;

/** How long the opening of a side is below the waist: past the hip, at least this, mm. */
const opens = { least: 185, belowHip: 10 } as const;

/** Legs may be lengthened between waist and pockets, at this share of the way to the hip. */
const riseAt = 0.2;

const openingOf = ({ body }: DungareesPlan): number => Math.max(opens.least, body.waistToHip + opens.belowHip);

/** The pocket of the bib, below its top. */
const bibPatch = (topHalf: number, height: number): PatchFrame => {
  const width = settle(1.2 * topHalf, 90, 200);
  const from = -height + 50;
  return {
    at: { x: 0, y: from },
    width,
    height: Math.max(Math.min(0.82 * width, height - 120), 60),
    slant: 0,
    point: 14,
  };
};

/** A hand's pocket on the front's hip, its mouth aslant, clear of the opening. */
const hipPatch = (plan: DungareesPlan): PatchFrame => {
  const width = settle(0.54 * plan.legs.hip.front, 110, 210);
  return {
    at: { x: 0.19 * plan.legs.hip.front, y: 0.28 * plan.waistToHip },
    width,
    height: 138 + 0.34 * width,
    slant: 0.34 * width,
    point: 14,
  };
};

/** A patch on the seat, its middle between the seams. */
const seatPatch = (plan: DungareesPlan, lowered: number): PatchFrame => {
  const width = settle(0.5 * plan.legs.hip.back, 110, 210);
  return {
    at: { x: 0.54 * plan.legs.hip.back - width / 2, y: 0.4 * plan.waistToHip + lowered },
    width,
    height: width + 5,
    slant: 0,
    point: 16,
  };
};

const strapPiece = ({ strap }: DungareesPlan): Piece => {
  const width = dungareesWidths.strap;
  const length = strap.worn + strap.spare;
  const at = (x: number, y: number): Point => ({ x, y });
  const across = (id: string, kind: InnerLine['kind'], y: number): InnerLine => ({
    id,
    kind,
    path: [line(at(0, y), at(2 * width, y))],
  });
  return {
    id: 'strap',
    name: 'Strap',
    role: 'strap',
    cut: [shell(2, true)],
    runs: closeRuns([
      straightRun('back-inner', at(0, 0), at(width, 0)),
      straightRun('back-outer', at(width, 0), at(2 * width, 0)),
      straightRun('right', at(2 * width, 0), at(2 * width, length)),
      straightRun('end-outer', at(2 * width, length), at(width, length)),
      straightRun('end-inner', at(width, length), at(0, length)),
      straightRun('left', at(0, length), at(0, 0)),
    ]),
    edges: ['back-inner', 'back-outer', 'right', 'end-outer', 'end-inner', 'left'].map((id) =>
      edge(id, 'seam', allowances.neck),
    ),
    darts: [],
    notches: [],
    grain: { from: at(width / 2, 40), to: at(width / 2, length - 40) },
    levels: [],
    landmarks: [],
    lines: [
      { id: 'fold', kind: 'fold', path: [line(at(width, 0), at(width, length))] },
      across('buckle', 'placement', strap.worn),
    ],
  };
};

const seamsOf = (plan: DungareesPlan): readonly Seam[] => {
  const lined = (piece: string, edges: readonly string[]): readonly Seam[] =>
    edges.map((id) => plain(`${piece}-${id}`, side(piece, id), side(piece, id)));
  return [
    ...legSeams(plan.view === 'full'),
    plain('bib-waist', side('bib', 'waist', true), side('front', 'waist'), [['waist-middle', 'waist-middle']]),
    plain('back-bib-waist', side('back-bib', 'waist', true), side('back', 'waist'), [['waist-middle', 'waist-middle']]),
    ...lined('bib', ['top', 'curve', 'side']),
    ...lined('back-bib', ['top', 'curve']),
    plain('facing', side('side-facing', 'side'), side('front', 'side-upper')),
    plain('underlap-leg', side('side-underlap', 'leg'), side('back', 'side-upper')),
    plain('underlap-bib', side('side-underlap', 'bib'), side('back-bib', 'side')),
    plain('underlap-inner-leg', side('side-underlap', 'inner-leg', true), side('back', 'side-upper')),
    plain('underlap-inner-bib', side('side-underlap', 'inner-bib', true), side('back-bib', 'side')),
    plain('underlap-top', side('side-underlap', 'top-outer'), side('side-underlap', 'top-inner', true)),
    plain('underlap-bottom', side('side-underlap', 'bottom-outer'), side('side-underlap', 'bottom-inner', true)),
    plain('strap-back', side('strap', 'back-outer'), side('back-bib', 'strap')),
    plain('strap-back-inner', side('strap', 'back-inner', true), side('back-bib', 'strap')),
    plain('strap-length', side('strap', 'left', true), side('strap', 'right')),
    plain('strap-end', side('strap', 'end-outer'), side('strap', 'end-inner', true)),
  ];
};

const assemble = (plan: DungareesPlan, settled: SettledLegs, waist: DungareesWaist): Garment => {
  const opening = openingOf(plan);
  const full = plan.view === 'full';
  const { crotch } = settled;
  const legs = full ? settled.legs : cutLegsAt(settled.legs, plan.cutAt);
  const { strap, bibSide, hem } = dungareesWidths;
  const [upper] = sideEdges(waist.tops.front, legs.front, opening);
  const onHip = hipPatch(plan);
  const onSeat = seatPatch(plan, legs.back.hipLevel - legs.front.hipLevel);
  const leg = (which: 'front' | 'back', name: string, lines: readonly InnerLine[]): Piece =>
    legPiece({
      which,
      name,
      leg: legs[which],
      crotch: crotch[which],
      top: waist.tops[which],
      opening,
      hemAllowance: hem,
      riseAt,
      lines,
    });
  const top = bibTop({ waist: waist.front, topHalf: plan.bib.topHalf });
  const onBib = bibPatch(top, plan.bib.height);
  const button: Point = { x: top - strap / 2, y: -plan.bib.height + 24 };
  const bib = bibPiece({
    id: 'bib',
    name: 'Bib',
    role: 'bib',
    waist: waist.front,
    ...plan.bib,
    side: bibSide,
    lines: [
      halfPatchPlace('pocket', onBib),
      { id: 'button', kind: 'placement', path: [line(button, { x: button.x + 6, y: button.y })] },
      buttonholeOnBib(waist.front, bibSide),
    ],
  });
  const front = leg('front', 'Front leg', [wholePatchPlace('pocket', onHip), ...buttonholesOnLeg(upper)]);
  const riseLine = front.lines.find(({ id }) => id === 'rise');
  const rise = riseLine ? nearestOnPath(upper, pathEnd(riseLine.path)).atLength : 0;
  return {
    pieces: [
      front,
      leg('back', 'Back leg', [wholePatchPlace('pocket', onSeat)]),
      bib,
      bibPiece({
        id: 'back-bib',
        name: 'Back bib',
        role: 'bib',
        waist: waist.back,
        ...plan.backBib,
        side: bibSide,
        strap,
      }),
      strapPiece(plan),
      sideFacing('Side facing', waist.tops.front.waist, upper, rise),
      sideUnderlap('Side underlap', bibSide, opening, rise),
      halfPatch('bib-pocket', 'Bib pocket', onBib),
      patchPiece('hip-pocket', 'Hip pocket', onHip),
      patchPiece('back-pocket', 'Back pocket', onSeat),
    ],
    seams: seamsOf(plan),
    girths: [roundBody('waist', 'waistGirth', ['bib', 'back-bib']), ...legGirths(full)],
  };
};

/** A garment drafted for one body, with the ease it states. */
export const draftDungarees = (
  plan: DungareesPlan,
): Result<{ readonly garment: Garment; readonly ease: EaseByLevel }> => {
  const settled = settleLegs(plan);
  if (!settled.ok) return settled;
  const waist = draftDungareesWaist(plan, settled.value);
  if (!waist.ok) return waist;
  return good({
    garment: assemble(plan, settled.value, waist.value),
    ease: {
      waist: waist.value.ease,
      hip: plan.ease.hip,
      thigh: settled.value.thigh - plan.body.thighGirth,
      ...(plan.view === 'full' ? { knee: plan.ease.knee } : {}),
    },
  });
};
