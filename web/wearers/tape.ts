import type { MeasureId } from '../../src/body/index.ts';
import { line, type Path, type Point } from '../../src/geometry/index.ts';
import { type Figure, halfBreadth, reach, trunkAt } from './body-outline.ts';

const p = (x: number, y: number): Point => ({ x, y });

/** The tape round something: the half that is seen. */
const round = (middle: Point, half: number, sag = 0.16): Path => {
  const kappa = 0.5523;
  const depth = half * sag;
  const [left, right] = [p(middle.x - half, middle.y), p(middle.x + half, middle.y)];
  return [
    {
      kind: 'cubic',
      from: left,
      control1: p(left.x, left.y + depth * kappa),
      control2: p(middle.x - half * kappa, middle.y + depth),
      to: p(middle.x, middle.y + depth),
    },
    {
      kind: 'cubic',
      from: p(middle.x, middle.y + depth),
      control1: p(middle.x + half * kappa, middle.y + depth),
      control2: p(right.x, right.y + depth * kappa),
      to: right,
    },
  ];
};

/** From which side the figure is seen. */
export type Side = 'front' | 'back';
/** A tape laid on the figure. */
export type Tape = { readonly side: Side; readonly path: Path };

/** Where the tape goes for a measure; undefined where words tell it better (depths are seen from the side). */
export const tapeOf = (f: Figure, id: MeasureId): Tape | undefined => {
  const level = (y: number, side: Side = 'front'): Tape => ({ side, path: round(p(0, y), trunkAt(f, y) + 4) });
  const straight = (side: Side, ...points: readonly Point[]): Tape => ({
    side,
    path: points.slice(1).map((to, index) => line(points[index] as Point, to)),
  });
  const height = (y: number): Tape => straight('back', p(-reach(f) - 30, y), p(-reach(f) - 30, f.floor));
  const legMiddle = 20 + f.at('thighGirth') / Math.PI / 2;
  const bustPoint = p(f.at('bustSpan') / 2, f.bust);
  const upper = p((f.shoulder.x + f.elbow.x) / 2 + 4, (f.shoulder.y + f.elbow.y) / 2);
  const upperBust = f.armhole.y - 20;
  const legRound = (y: number, girth: MeasureId, inset: number): Tape => ({
    side: 'front',
    path: round(p(inset + f.at(girth) / Math.PI / 2, y), f.at(girth) / Math.PI / 2 + 3),
  });
  switch (id) {
    case 'stature':
      return height(f.crown);
    case 'napeHeight':
      return height(f.nape);
    case 'waistHeight':
      return height(f.waist);
    case 'kneeHeight':
      return height(f.knee);
    case 'insideLeg':
      return straight('front', p(0, f.crotch), p(0, f.floor));
    case 'bustGirth':
      return level(f.bust);
    case 'upperBustGirth':
      return { side: 'front', path: round(p(0, upperBust), f.armhole.x + 4) };
    case 'underBustGirth':
      return level(f.bust + 75);
    case 'waistGirth':
      return level(f.waist);
    case 'abdomenGirth':
      return level(f.waist + f.at('waistToHip') * 0.5);
    case 'hipGirth':
      return level(f.hip);
    case 'waistToHip':
      return straight('front', p(trunkAt(f, f.waist) + 8, f.waist), p(trunkAt(f, f.hip) + 8, f.hip));
    case 'neckBaseGirth':
      return { side: 'front', path: round(p(0, f.neck.y), f.neck.x + 2, 0.75) };
    case 'shoulderLength':
      return straight('front', f.neck, f.shoulder);
    case 'shoulderDrop':
      return straight('front', p(f.shoulder.x, f.neck.y), f.shoulder);
    case 'acrossBack':
      return straight(
        'back',
        p(-f.at('acrossBack') / 2, f.nape + f.at('armholeDepth') / 2),
        p(f.at('acrossBack') / 2, f.nape + f.at('armholeDepth') / 2),
      );
    case 'acrossFront':
      return straight(
        'front',
        p(-f.at('acrossFront') / 2, f.nape + f.at('armholeDepth') / 2),
        p(f.at('acrossFront') / 2, f.nape + f.at('armholeDepth') / 2),
      );
    case 'armholeDepth':
      return straight('back', p(0, f.nape), p(0, f.nape + f.at('armholeDepth')));
    case 'backWaistLength':
      return straight('back', p(0, f.nape), p(0, f.waist));
    case 'frontWaistLength':
      return straight('front', f.neck, bustPoint, p(bustPoint.x, f.waist));
    case 'bustDepth':
      return straight('front', f.neck, bustPoint);
    case 'bustSpan':
      return straight('front', p(-bustPoint.x, f.bust), bustPoint);
    case 'upperArmGirth':
      return { side: 'front', path: round(upper, f.at('upperArmGirth') / Math.PI / 2 + 4, 0.3) };
    case 'elbowGirth':
      return { side: 'front', path: round(f.elbow, f.at('elbowGirth') / Math.PI / 2 + 2, 0.3) };
    case 'wristGirth':
      return { side: 'front', path: round(f.wrist, f.at('wristGirth') / Math.PI / 2 + 5, 0.3) };
    case 'handGirth':
      return { side: 'front', path: round(p(f.wrist.x + 10, f.wrist.y + 80), 44, 0.3) };
    case 'armLength':
      return straight('front', f.shoulder, p(f.elbow.x + f.at('elbowGirth') / Math.PI / 2, f.elbow.y), f.wrist);
    case 'bodyRise':
      return straight(
        'back',
        p(trunkAt(f, f.waist) + 8, f.waist),
        p(trunkAt(f, f.waist) + 8, f.waist + f.at('bodyRise')),
      );
    case 'crotchLength':
    case 'crotchLengthFront':
      return straight('front', p(0, f.waist), p(0, f.crotch));
    case 'crotchLengthBack':
      return straight('back', p(0, f.waist), p(0, f.crotch));
    case 'thighGirth':
      return { side: 'front', path: round(p((f.half.thigh + 7) / 2, f.crotch + 40), (f.half.thigh - 7) / 2 + 3) };
    case 'kneeGirth':
      return legRound(f.knee, 'kneeGirth', 26);
    case 'calfGirth':
      return legRound(f.knee + (f.ankle - f.knee) * 0.32, 'calfGirth', 26);
    case 'ankleGirth':
      return legRound(f.ankle, 'ankleGirth', 34);
    case 'heelGirth':
      return { side: 'front', path: round(p(legMiddle, f.floor - 55), 52, 0.4) };
    case 'headGirth':
      return { side: 'front', path: round(p(0, f.crown + 80), halfBreadth(f.at('headGirth'), 1.22) * 0.98 + 3) };
    case 'shoulderGirth':
      return {
        side: 'front',
        path: round(p(0, f.shoulder.y + 75), f.shoulder.x + f.at('upperArmGirth') / Math.PI / 1.7),
      };
    case 'chestBreadth':
      return straight('front', p(-f.half.bust, f.bust), p(f.half.bust, f.bust));
    case 'waistBreadth':
      return straight('front', p(-f.half.waist, f.waist), p(f.half.waist, f.waist));
    case 'hipBreadth':
      return straight('front', p(-f.half.hip, f.hip), p(f.half.hip, f.hip));
    case 'chestDepth':
    case 'waistDepth':
    case 'hipDepth':
      return undefined;
  }
};
