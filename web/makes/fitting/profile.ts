import { type Path, type Point, smoothThrough } from '../../../src/geometry/index.ts';
import type { Figure } from '../../wearers/body-outline.ts';

const p = (x: number, y: number): Point => ({ x, y });

/** How far the body reaches before and behind its upright axis, at the levels a fitter looks at from the side, mm. */
export interface Depths {
  readonly bust: readonly [front: number, back: number];
  readonly waist: readonly [front: number, back: number];
  readonly hip: readonly [front: number, back: number];
}

/** A trunk's depth lies more before the axis at the bust and more behind it at the seat. */
export const depthsOf = (f: Figure): Depths => {
  const [chest, waist, hip] = [f.at('chestDepth'), f.at('waistDepth'), f.at('hipDepth')];
  return {
    bust: [chest * 0.56, -chest * 0.44],
    waist: [waist * 0.56, -waist * 0.44],
    hip: [hip * 0.46, -hip * 0.54],
  };
};

/** The arm at a share of its length, hanging at her side. */
export const armAt = (f: Figure, share: number): Point => {
  const from = f.shoulder.y + 10;
  return p(-8 + share * 34, from + f.at('armLength') * 0.985 * share);
};

/** The body from her right side, looking to the right. */
export const profileOutline = (f: Figure): readonly Path[] => {
  const d = depthsOf(f);
  const neck = f.at('neckBaseGirth') / Math.PI / 2;
  const head = f.at('headGirth') / Math.PI / 2;
  const thigh = f.at('thighGirth') / Math.PI / 2;
  const knee = f.at('kneeGirth') / Math.PI / 2;
  const calf = f.at('calfGirth') / Math.PI / 2;
  const ankle = f.at('ankleGirth') / Math.PI / 2;
  const calfLevel = f.knee + (f.ankle - f.knee) * 0.32;
  const skull = smoothThrough(
    [
      p(neck * 0.55, f.chin + 14),
      p(head * 0.95, f.chin - 8),
      p(head * 1.06, f.chin * 0.62),
      p(head * 0.9, f.chin * 0.22),
      p(0, f.crown),
      p(-head * 1.08, f.chin * 0.45),
      p(-neck * 0.95, f.chin * 0.95),
    ],
    { startTangent: p(1, -0.1), endTangent: p(0.1, 1) },
  );
  const front = smoothThrough([
    p(neck * 0.55, f.chin + 14),
    p(neck * 0.8, f.nape + 42),
    p(d.bust[0] * 0.72, (f.nape + f.bust) / 2 + 10),
    p(d.bust[0], f.bust),
    p(d.bust[0] * 0.5 + d.waist[0] * 0.5, f.bust + (f.waist - f.bust) * 0.48),
    p(d.waist[0], f.waist),
    p(d.hip[0] * 1.02, (f.waist + f.hip) / 2),
    p(d.hip[0] * 0.84, f.crotch),
    p(thigh * 0.72, f.crotch + 90),
    p(knee, f.knee),
    p(calf * 0.62, calfLevel),
    p(ankle, f.ankle),
  ]);
  const back = smoothThrough([
    p(-neck * 0.95, f.chin * 0.95),
    p(-neck * 0.95, f.nape),
    p(d.bust[1], f.nape + f.at('armholeDepth') * 0.72),
    p(d.waist[1], f.waist),
    p(d.hip[1], f.hip),
    p(-thigh, f.crotch + 56),
    p(-thigh * 0.82, f.crotch + 170),
    p(-knee * 0.9, f.knee),
    p(-calf * 1.15, calfLevel),
    p(-ankle, f.ankle),
  ]);
  const foot = smoothThrough(
    [
      p(ankle, f.ankle),
      p(ankle + 90, f.floor - 22),
      p(ankle + 112, f.floor - 8),
      p(0, f.floor - 4),
      p(-ankle - 14, f.floor - 14),
      p(-ankle, f.ankle),
    ],
    { startTangent: p(0.2, 1), endTangent: p(0, -1) },
  );
  const half = (measure: 'upperArmGirth' | 'elbowGirth' | 'wristGirth') => f.at(measure) / Math.PI / 2;
  const [top, upper, elbow, wrist] = [armAt(f, 0), armAt(f, 0.3), armAt(f, 0.56), armAt(f, 1)];
  const arm = smoothThrough([
    p(wrist.x + half('wristGirth'), wrist.y),
    p(elbow.x + half('elbowGirth'), elbow.y),
    p(upper.x + half('upperArmGirth'), upper.y),
    p(top.x + 34, top.y + 30),
    p(top.x, top.y - 8),
    p(top.x - 36, top.y + 34),
    p(upper.x - half('upperArmGirth'), upper.y),
    p(elbow.x - half('elbowGirth'), elbow.y),
    p(wrist.x - half('wristGirth'), wrist.y),
    p(wrist.x - 4, wrist.y + 90),
    p(wrist.x + 14, wrist.y + 168),
    p(wrist.x + 36, wrist.y + 80),
    p(wrist.x + half('wristGirth'), wrist.y),
  ]);
  return [skull, front, back, foot, arm];
};
