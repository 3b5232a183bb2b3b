import { type MeasureId, type Measures, measureIds } from '../../src/body/index.ts';
import { type Path, type Point, smoothThrough } from '../../src/geometry/index.ts';

/** What the figure is drawn from, mm; y is down from the crown, x outward from the middle. */
export interface Figure {
  readonly at: (id: MeasureId) => number;
  readonly crown: number;
  readonly chin: number;
  readonly nape: number;
  readonly bust: number;
  readonly waist: number;
  readonly hip: number;
  readonly crotch: number;
  readonly knee: number;
  readonly ankle: number;
  readonly floor: number;
  readonly neck: Point;
  readonly shoulder: Point;
  readonly elbow: Point;
  readonly wrist: Point;
  readonly armhole: Point;
  /** Half the breadth seen from the front. */
  readonly half: { readonly bust: number; readonly waist: number; readonly hip: number; readonly thigh: number };
}

/**
 * How broad a girth is from the front, as a share of it: a trunk is a flattened oval, flattest at the hip. Breadths
 * measured bone to bone are not used here: they leave out what a tape goes round, so one level would not match another.
 */
const breadthShare = { bust: 0.315, waist: 0.32, hip: 0.345 } as const;

/** Half the breadth of a girth that is about `flat` times as deep as it is broad (Ramanujan's first approximation, turned round). */
export const halfBreadth = (girth: number, flat: number): number =>
  girth / (Math.PI * (3 * (1 + flat) - Math.sqrt((3 + flat) * (1 + 3 * flat))));

export const figureOf = (measures: Measures): Figure => {
  const at = (id: MeasureId): number => {
    const mm = measures[id];
    if (mm === undefined) throw new Error(`the figure lacks ${id}`);
    return mm;
  };
  const stature = at('stature');
  const nape = stature - at('napeHeight');
  const waist = stature - at('waistHeight');
  const drop = at('shoulderDrop');
  const neck = { x: halfBreadth(at('neckBaseGirth'), 0.9), y: nape - 8 };
  const out = Math.sqrt(Math.max(at('shoulderLength') ** 2 - drop ** 2, 400));
  const shoulder = { x: neck.x + out, y: neck.y + drop };
  const armLength = at('armLength');
  const half = {
    bust: (at('bustGirth') * breadthShare.bust) / 2,
    waist: (at('waistGirth') * breadthShare.waist) / 2,
    hip: (at('hipGirth') * breadthShare.hip) / 2,
  };
  // Thighs that stand together press each other deeper than broad: they are never broader than the hip.
  const thigh = Math.min(7 + at('thighGirth') / Math.PI, half.hip * 0.965);
  // Arms hang a little away from the body, so that the sides can be seen; further from a broad one.
  const beyond = Math.max(half.bust, half.waist) + at('upperArmGirth') / 6 - shoulder.x;
  const lean = 0.2 + Math.min(Math.max(beyond / 380, 0), 0.26);
  const along = (share: number): Point => ({
    x: shoulder.x + 12 + Math.sin(lean) * armLength * share,
    y: shoulder.y + Math.cos(lean) * armLength * share,
  });
  return {
    at,
    crown: 0,
    chin: nape - 32,
    nape,
    bust: neck.y + at('bustDepth') * 0.94,
    waist,
    hip: waist + at('waistToHip'),
    crotch: stature - at('insideLeg'),
    knee: stature - at('kneeHeight'),
    ankle: stature - 95,
    floor: stature,
    neck,
    shoulder,
    elbow: along(0.56),
    wrist: along(1),
    armhole: { x: half.bust - 8, y: nape + at('armholeDepth') },
    half: { ...half, thigh },
  };
};

const p = (x: number, y: number): Point => ({ x, y });

/** The right side of the figure as seen, from the crown down the outside and up the inside of the leg. */
export const halfOutline = (f: Figure): readonly Path[] => {
  const head = halfBreadth(f.at('headGirth'), 1.22);
  const legIn = 14;
  const kneeBroad = f.at('kneeGirth') / Math.PI;
  const calf = f.at('calfGirth') / Math.PI;
  const ankle = f.at('ankleGirth') / Math.PI;
  const knee = legIn + 12;
  const calfLevel = f.knee + (f.ankle - f.knee) * 0.32;
  const arm = f.at('upperArmGirth') / Math.PI / 2;
  const elbow = f.at('elbowGirth') / Math.PI / 2.2;
  const wrist = f.at('wristGirth') / Math.PI / 1.8;
  const cheek = p(head * 0.86, f.chin * 0.68);
  const jaw = p(head * 0.5, f.chin - 12);
  const skull = smoothThrough(
    [p(0, f.crown), p(head * 0.97, f.chin * 0.4), p(cheek.x, cheek.y), p(jaw.x, jaw.y), p(0, f.chin)],
    { startTangent: p(1, 0), endTangent: p(-1, 0) },
  );
  // The neck comes out from under the jaw, where the head is as broad as the neck.
  const neckBroad = Math.min(f.neck.x * 0.84, cheek.x);
  const neckTop = jaw.y + ((neckBroad - jaw.x) / (cheek.x - jaw.x)) * (cheek.y - jaw.y);
  const upper = p((f.shoulder.x + f.elbow.x) / 2, (f.shoulder.y + f.elbow.y) / 2);
  // Neck, shoulder and the outside of the arm are one line: nothing breaks it on a body.
  const armOut = smoothThrough(
    [
      p(neckBroad, neckTop),
      p(f.neck.x * 0.86, (neckTop + f.neck.y) / 2),
      p(f.neck.x + (f.shoulder.x - f.neck.x) * 0.3, f.neck.y + (f.shoulder.y - f.neck.y) * 0.12),
      p(f.shoulder.x - 4, f.shoulder.y - 2),
      p(f.shoulder.x + arm * 0.86, f.shoulder.y + arm * 0.95),
      p(upper.x + arm, upper.y - 8),
      p(f.elbow.x + elbow, f.elbow.y),
      p(f.wrist.x + wrist, f.wrist.y),
    ],
    { startTangent: p(0, 1) },
  );
  const hand = smoothThrough([
    p(f.wrist.x + wrist, f.wrist.y),
    p(f.wrist.x + wrist + 12, f.wrist.y + 62),
    p(f.wrist.x + wrist + 8, f.wrist.y + 140),
    p(f.wrist.x + 10, f.wrist.y + 172),
    p(f.wrist.x - wrist * 0.6, f.wrist.y + 120),
    p(f.wrist.x - wrist * 1.1, f.wrist.y + 60),
    p(f.wrist.x - wrist, f.wrist.y),
  ]);
  const armIn = smoothThrough([
    p(f.wrist.x - wrist, f.wrist.y),
    p(f.elbow.x - elbow, f.elbow.y),
    p(upper.x - arm * 0.75, upper.y + 30),
    p(f.armhole.x, f.armhole.y - 12),
  ]);
  const side = smoothThrough([
    p(f.armhole.x, f.armhole.y - 12),
    p(f.half.bust, f.bust),
    p(f.half.waist, f.waist),
    p(f.half.hip, f.hip),
    p(f.half.thigh, f.crotch + 30),
    p(knee + kneeBroad / 2 + kneeBroad / 2, f.knee),
    p(knee + calf / 2 + calf / 2, calfLevel),
    p(knee + 8 + ankle, f.ankle),
  ]);
  const [heelOut, heelIn] = [knee + 8 + ankle, knee + 8];
  const foot = smoothThrough(
    [
      p(heelOut, f.ankle),
      p(heelOut + 3, f.ankle + 45),
      p(heelOut + 14, f.floor - 18),
      p((heelOut + heelIn) / 2 + 6, f.floor - 6),
      p(heelIn - 2, f.floor - 18),
      p(heelIn, f.ankle + 45),
      p(heelIn, f.ankle),
    ],
    { startTangent: p(0, 1), endTangent: p(0, -1) },
  );
  const inside = smoothThrough([
    p(knee + 8, f.ankle),
    p(knee, calfLevel),
    p(knee, f.knee),
    p(legIn / 2, f.crotch + 12),
    p(0, f.crotch),
  ]);
  return [skull, armOut, hand, armIn, side, foot, inside];
};

/** Half the breadth of the trunk at a height, by its levels. */
export const trunkAt = (f: Figure, y: number): number => {
  const levels: readonly (readonly [number, number])[] = [
    [f.armhole.y, f.armhole.x + 2],
    [f.bust, f.half.bust],
    [f.waist, f.half.waist],
    [f.hip, f.half.hip],
    [f.crotch + 30, f.half.thigh],
  ];
  const next = levels.findIndex(([level]) => level >= y);
  const [below, above] = [levels[Math.max(next, 1)], levels[Math.max(next, 1) - 1]];
  if (!below || !above || next === -1) return levels.at(-1)?.[1] ?? 0;
  const share = Math.min(Math.max((y - above[0]) / (below[0] - above[0]), 0), 1);
  return above[1] + (below[1] - above[1]) * share;
};

/** How far out the hands reach from the middle. */
export const reach = (f: Figure): number => f.wrist.x + f.at('wristGirth') / Math.PI / 1.8 + 14;

/** Whether every measure the figure is drawn from is there. */
export const isWhole = (measures: Measures): boolean => measureIds.every((id) => measures[id] !== undefined);
