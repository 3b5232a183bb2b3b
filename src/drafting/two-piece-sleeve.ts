import {
  applyToPath,
  type Cubic,
  intersectPaths,
  type Line,
  line,
  mirrorX,
  type Path,
  type Point,
  pathEnd,
  pathStart,
  reversePath,
  splitPathAtLength,
  translation,
} from '../geometry/index.ts';
import { bad, good, type Result } from '../units/index.ts';
import { fallingCurve, parameterAtHeight } from './side-seam.ts';
import { type Cap, type CapShape, fitCap } from './sleeve-cap.ts';
import { settle } from './solve.ts';

export interface TwoPieceRequest {
  /** Whole width at the upper arm, mm. */
  readonly width: number;
  /** What each half of the cap measures in all: its armhole + its ease, mm. */
  readonly frontLength: number;
  readonly backLength: number;
  readonly front: CapShape;
  readonly back: CapShape;
  /** From the cap top to the middle of the hem, mm. */
  readonly length: number;
  /** Least whole width at the elbow, and what the hem measures round, mm. */
  readonly elbow: number;
  readonly hem: number;
}

/** One part of the sleeve, front to the left. Paths run as the outline does: up over the cap, down the back seam. */
export interface SleevePart {
  /** From the front seam to the cap top, or down to the underarm; and from there to the back seam. */
  readonly capFront: Path;
  readonly capBack: Path;
  /** Both seams from the cap down to the hem. */
  readonly front: SeamDown;
  readonly back: SeamDown;
}

/** Cap to upper arm along the grain, to the elbow, to the hem. */
export type SeamDown = readonly [Line, Cubic, Cubic];

export interface TwoPieceSleeve {
  readonly cap: Cap;
  readonly top: SleevePart;
  readonly under: SleevePart;
  readonly armLevel: number;
  readonly elbowLevel: number;
  /** Height of the hem's middle below the underarm line. */
  readonly hemLevel: number;
}

/**
 * How far each seam lies from the fold of the sleeve towards the under sleeve, mm: the front seam well out of sight,
 * the back one nearly on the fold.
 */
const aside = { front: 22, back: 14 } as const;

/** Of one way down the arm, the elbow lies here: 310 of 542 in the survey’s women. */
const elbowShareOfArm = 0.57;

/** Where the upper arm is measured, below the underarm line, mm; down to there the seams run along the grain. */
const armBelow = 15;

/** How much the front fold is hollowed at the elbow, and how far the hem swings to the front, mm. */
const bend = { elbow: 9, hem: 8 } as const;

/**
 * Slopes to the grain at the hem: of the front seam, of the back one, which still narrows, and of the hem itself,
 * which lies between square to both: 6°, the bend of a hanging arm.
 */
const atHem = { front: 0.08, back: 0.14, across: 0.1 } as const;

/** Least from upper arm to elbow and from elbow to hem, mm. */
const leastForearm = 60;

const between = (a: number, b: number): number => (a * b > 0 ? (2 * a * b) / (a + b) : 0);

/** A path cut where it crosses an upright line; the crossing nearest its end on the fold is the only one. */
const cutAt = (path: Path, x: number): readonly [Path, Path] | null => {
  const [crossing] = intersectPaths(path, [line({ x, y: -2000 }, { x, y: 2000 })]);
  if (!crossing) return null;
  const [before, after] = splitPathAtLength(path, crossing.lengthA);
  return before && after ? [before, after] : null;
};

/** One fold of the sleeve, and so both seams beside it: heights and where the fold passes elbow and hem. */
interface Fold {
  readonly at: number;
  readonly elbow: number;
  readonly hem: number;
  readonly atHem: number;
}

/**
 * A sleeve in a top and an under part, bent at the elbow.
 *
 * 1. Cap fitted to both armholes as for a sleeve in one piece (`fitCap`), as wide as the arm and its ease. Folded so
 *    that its underarm lies under the cap top, the sleeve has a fold in front and one behind.
 * 2. Both seams lie a little to the inside of those folds. The parts of the cap beyond them, joined at the underarm,
 *    are the under sleeve's; so cap and girth come out as the whole sleeve's, to the last bit.
 * 3. The front fold is hollowed at the elbow and the back one runs down to a narrower hem, both bending forward. The
 *    seams of both parts follow the fold they lie beside.
 * 4. The hem is all but square to both seams. In front the under sleeve's seam is so a little longer, and the top sleeve's is
 *    stretched on to it over the elbow; behind, the top sleeve's is longer and eased.
 *
 * As two-piece sleeves are made from a set-in one in manuals of tailoring and of metric pattern cutting. Problems
 * `drafting.cap-cannot-fit`, `drafting.arm-too-short`.
 */
export const draftTwoPieceSleeve = (asked: TwoPieceRequest): Result<TwoPieceSleeve> => {
  const fitted = fitCap({
    width: asked.width,
    frontLength: asked.frontLength,
    backLength: asked.backLength,
    rise: 0,
    front: asked.front,
    back: asked.back,
  });
  if (!fitted.ok) return fitted;
  const cap = fitted.value;
  const hemLevel = asked.length - cap.height;
  const elbowLevel = elbowShareOfArm * asked.length - cap.height;
  if (elbowLevel < armBelow + leastForearm || hemLevel < elbowLevel + leastForearm) {
    return bad('drafting.arm-too-short', { arm: { mm: Math.round(asked.length) } });
  }
  const half = asked.width / 2;
  const hem = Math.min(asked.hem, asked.width - 12) / 2;
  // Half of the taper lies below the elbow and more: the elbow is as wide as it needs, or as the line down the arm is.
  const elbow = settle(asked.elbow / 2, half - 0.34 * (half - hem), half + 4);
  const frontAt = -cap.frontWidth / 2;
  const backAt = cap.backWidth / 2;
  const front: Fold = { at: frontAt, elbow: frontAt + bend.elbow, hem: frontAt - bend.hem, atHem: atHem.front };
  const back: Fold = { at: backAt, elbow: front.elbow + elbow, hem: front.hem + hem, atHem: atHem.back };
  const middle = (front.hem + back.hem) / 2;
  const down = (fold: Fold, by: number, from: Point): SeamDown => {
    const arm: Point = { x: from.x, y: armBelow };
    const bent: Point = { x: fold.elbow + by, y: elbowLevel };
    const foot: Point = { x: fold.hem + by, y: hemLevel + atHem.across * (fold.hem + by - middle) };
    const above = (bent.x - arm.x) / (bent.y - arm.y);
    const below = (foot.x - bent.x) / (foot.y - bent.y);
    const slope = between(above, below);
    return [line(from, arm), fallingCurve(arm, bent, 0, slope), fallingCurve(bent, foot, slope, -fold.atHem)];
  };
  const cutFront = cutAt(cap.front, frontAt - aside.front);
  const cutBack = cutAt(cap.back, backAt + aside.back);
  if (!cutFront || !cutBack) return bad('drafting.cap-cannot-fit', capValues(asked));
  const [underFront, topFront] = cutFront;
  const [topBack, underBack] = cutBack;
  // Folded under, each outer part of the cap is seen reversed in its fold; both underarms come to lie under the cap top.
  const [foldedFront, foldedBack] = [
    reversePath(applyToPath(mirrorX(frontAt), underFront)),
    reversePath(applyToPath(mirrorX(backAt), underBack)),
  ];
  const underarm = pathEnd(foldedFront);
  const closed = applyToPath(
    translation({ x: underarm.x - pathStart(foldedBack).x, y: underarm.y - pathStart(foldedBack).y }),
    foldedBack,
  );
  return good({
    cap,
    top: {
      capFront: topFront,
      capBack: topBack,
      front: down(front, -aside.front, pathStart(topFront)),
      back: down(back, aside.back, pathEnd(topBack)),
    },
    under: {
      capFront: foldedFront,
      capBack: closed,
      front: down(front, aside.front, pathStart(foldedFront)),
      back: down(back, -aside.back, pathEnd(closed)),
    },
    armLevel: armBelow,
    elbowLevel,
    hemLevel,
  });
};

const capValues = ({ frontLength, backLength, width }: TwoPieceRequest) => ({
  armhole: { mm: Math.round(frontLength + backLength) },
  sleeve: { mm: Math.round(width) },
});

/** Both ends of a level across one part of the sleeve, seam to seam. */
export const partAt = ({ front, back }: SleevePart, y: number): readonly [Point, Point] => {
  const at = (seam: SeamDown): Point => {
    const segment = seam.find(({ to }) => y <= to.y) ?? seam[2];
    const t = parameterAtHeight(segment, y);
    if (segment.kind === 'line') return { x: segment.from.x + t * (segment.to.x - segment.from.x), y };
    const u = 1 - t;
    const x =
      u ** 3 * segment.from.x +
      3 * u * u * t * segment.control1.x +
      3 * u * t * t * segment.control2.x +
      t ** 3 * segment.to.x;
    return { x, y };
  };
  return [at(front), at(back)];
};
