import {
  add,
  type Cubic,
  cubic,
  type Line,
  line,
  type Path,
  type Point,
  scale,
  segmentTangentAt,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { type DartedWaist, draftDartedWaist, draftPlainWaist } from './darted-waist.ts';
import { fallingCurve } from './side-seam.ts';
import type { SkirtPlan } from './skirt-plan.ts';

/** A side seam: waist to hip, hip to hem. */
export type SkirtSide = readonly [Cubic, Line];

/** Front or back of the skirt: half of it, its centre along x = 0. */
export interface SkirtPanel {
  readonly waist: DartedWaist;
  readonly side: SkirtSide;
  /** From the side to the centre. */
  readonly hem: Path;
  /** Where the waist begins, on the centre. */
  readonly centre: Point;
}

export interface LiningPanel {
  /** Without darts: what the shell's darts take in is laid in tucks. */
  readonly waist: Path;
  readonly side: SkirtSide;
  readonly hem: Path;
  readonly centre: Point;
}

/** The slope a side seam has at the waist: of the mean slope so much, of the flare's the rest with the other sign. Between 1.5 and 2 it bends one way only. */
const atWaist = 1.6;

/**
 * A side seam whose hip lies `hip` from the centre: it rounds the hip into the flare without a bend back, and falls
 * straight to the hem. One curve for front, back and lining, so that all walk. The hem rises at the side
 * until it is square there and still level when the skirt hangs: as an arc does whose half-angle is the flare's.
 */
const sideAt = (plan: SkirtPlan, hip: number, hemLevel: number): SkirtSide => {
  const slope = Math.tan(plan.flare);
  const waist: Point = { x: hip - plan.sideIntake, y: -plan.sideRise };
  const hipPoint: Point = { x: hip, y: plan.hipLevel };
  const mean = plan.sideIntake / (plan.hipLevel + plan.sideRise);
  const rise = Math.tan(plan.flare / 2);
  // The hem's arc depends on its own width; front and back share the mean of both, so their sides are one curve.
  const quarter = (plan.front.hip + plan.back.hip) / 2;
  const below = (hemLevel - plan.hipLevel - rise * quarter) / (1 + rise * slope);
  return [
    fallingCurve(waist, hipPoint, atWaist * mean - (atWaist - 1) * slope, slope),
    line(hipPoint, { x: hip + slope * below, y: plan.hipLevel + below }),
  ];
};

/** The hem from the side to the centre: square to both, one even curve. */
const hemOf = (side: SkirtSide, hemLevel: number): Path => {
  const from = side[1].to;
  const down = segmentTangentAt(side[1], 1);
  const inward: Point = { x: -down.y, y: down.x };
  const crossing = add(from, scale(inward, (hemLevel - from.y) / inward.y));
  const share = 0.6;
  return [
    cubic(
      from,
      add(from, scale({ x: crossing.x - from.x, y: crossing.y - from.y }, share)),
      { x: (1 - share) * 0 + share * crossing.x, y: hemLevel },
      { x: 0, y: hemLevel },
    ),
  ];
};

export interface SkirtDraft {
  readonly plan: SkirtPlan;
  readonly front: SkirtPanel;
  readonly back: SkirtPanel;
  readonly liningFront: LiningPanel;
  readonly liningBack: LiningPanel;
}

/**
 * The panels of the skirt and of its lining.
 *
 * 1. Hip level and hem level square to the centre. The side seam goes from the waist, risen at the side, over the hip
 *    and straight down at the flare; front, back and lining have the same.
 * 2. The waist from the centre (dipped behind) to the side, its darts opened out of the finished curve.
 * 3. The hem, square to centre and side.
 * 4. The lining is the shell without darts and shorter; its waist is laid in tucks to the shell's length.
 *
 * Skirt block and A-line as taught in manuals of metric pattern cutting. Problem `drafting.waist-too-near-hip` where no
 * dart makes the waist.
 */
export const draftSkirt = (plan: SkirtPlan): Result<SkirtDraft> => {
  const liningLevel = plan.hemLevel - plan.liningShorter;
  const panel = (which: 'front' | 'back'): SkirtPanel | null => {
    const { hip, waist, darts } = plan[which];
    const side = sideAt(plan, hip, plan.hemLevel);
    const centre: Point = { x: 0, y: which === 'back' ? plan.backDip : 0 };
    const drafted = draftDartedWaist({ centre, side: side[0], finished: waist, darts });
    return drafted && { waist: drafted, side, hem: hemOf(side, plan.hemLevel), centre };
  };
  const lining = ({ centre }: SkirtPanel, which: 'front' | 'back'): LiningPanel => {
    const side = sideAt(plan, plan[which].hip, liningLevel);
    return { waist: draftPlainWaist({ centre, side: side[0] }), side, hem: hemOf(side, liningLevel), centre };
  };
  const [front, back] = [panel('front'), panel('back')];
  if (!front || !back) {
    return bad('drafting.waist-too-near-hip', {
      waist: { mm: Math.round(2 * (plan.front.waist + plan.back.waist)) },
      hip: { mm: Math.round(2 * (plan.front.hip + plan.back.hip)) },
    });
  }
  return good({ plan, front, back, liningFront: lining(front, 'front'), liningBack: lining(back, 'back') });
};
