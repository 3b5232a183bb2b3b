import {
  angleOf,
  applyToPath,
  applyToSegment,
  type Cubic,
  compose,
  directionAt,
  identity,
  length,
  mirrorX,
  type Path,
  type Point,
  pathLength,
  reversePath,
  rotation,
  scale,
  subtract,
  type Transform,
  translation,
} from '../geometry/index.ts';
import { type RaglanHalf, sleeveLower } from './raglan.ts';
import { riseOf, taperedSeam, taperFor } from './tapered-sleeve.ts';

/** Widths and lengths of the sleeve, mm; lengths from the shoulder point down. */
export interface RaglanSleeveFrame {
  /** Finished, at the upper-arm level. */
  readonly upperArm: number;
  readonly hem: number;
  readonly length: number;
}

/**
 * A raglan sleeve in one piece: the shoulder point at (0, 0), the line over the arm straight down from it along the grain, the front
 * half on the left. What of shoulder and neck goes with it stands above, opened by a shoulder dart.
 */
export interface RaglanSleeve {
  /** From the front underarm up to the neck, and from the neck down to the back underarm. */
  readonly front: Path;
  readonly back: Path;
  /** From the front raglan to the dart, and from the dart to the back raglan. */
  readonly neckFront: Path;
  readonly neckBack: Path;
  readonly dartPoint: Point;
  /** Angle of the shoulder dart, radians: how much steeper the sleeve hangs than the shoulders slope, front and back together. */
  readonly dart: number;
  readonly underarmFront: Cubic;
  readonly underarmBack: Cubic;
  /** Below the shoulder point. */
  readonly underarmLevel: number;
  readonly armLevel: number;
  readonly hemLevel: number;
}

/** Where the upper arm is measured, below the underarm line, mm. */
const armBelow = 20;

/** How far beyond the shoulder point the dart runs out, mm: over the round of the shoulder. */
const dartBeyond = 18;

/** Rounds in which widths, height and both lower curves settle; each leaves a fifth of what was off, or less. */
const rounds = 12;

/** A sleeve's lower curve bends at least by this, radians: with less it would be a straight. */
const leastTurn = 0.2;

/** Half of the sleeve as it lies in the plane of its half of the body. */
interface HungHalf {
  readonly lower: Cubic;
  readonly width: number;
  /** How steeply it hangs from the shoulder point, radians below the level. */
  readonly steep: number;
}

interface Hung {
  readonly front: HungHalf;
  readonly back: HungHalf;
  readonly level: number;
  /** What the sleeve narrows at each seam, and the slant of its underarm seams at the top. */
  readonly taper: number;
  readonly lean: number;
}

/**
 * How both halves hang. Front and back underarms lie as far below the shoulder point, so that the underarm
 * seams are one curve: that shares the width between them. Each lower curve arrives square to its underarm seam.
 */
const hang = (front: RaglanHalf, back: RaglanHalf, frame: RaglanSleeveFrame): Hung => {
  const halves = [front, back] as const;
  const lengths = halves.map(({ raglan }) => pathLength([raglan[1]]));
  let turns = halves.map(({ parting, arriving }) => parting - arriving);
  let level = frame.length / 3;
  let found: Hung | null = null;
  for (let round = 0; round < rounds; round++) {
    const lowers = halves.map((half, i) => sleeveLower(half, turns[i] ?? 0, lengths[i] ?? 0));
    const reaches = halves.map((half, i) => subtract((lowers[i] as Cubic).to, half.shoulder.to));
    const [f, b] = reaches.map(length) as [number, number];
    const below = Math.max(frame.length - level, 4 * armBelow);
    const taper = taperFor(frame.upperArm, frame.hem, armBelow, below);
    const width = frame.hem + 2 * taper;
    const frontWidth = width / 2 + (f * f - b * b) / (2 * width);
    const widths = [frontWidth, width - frontWidth];
    level = Math.sqrt(Math.max(f * f - frontWidth * frontWidth, 0));
    const lean = riseOf(taper, below);
    const steeps = reaches.map((to, i) => angleOf(to) - Math.asin(Math.min((widths[i] ?? 0) / length(to), 1)));
    const hung = (i: 0 | 1): HungHalf => ({
      lower: lowers[i] as Cubic,
      width: widths[i] ?? 0,
      steep: steeps[i] ?? 0,
    });
    found = { front: hung(0), back: hung(1), level, taper, lean };
    turns = halves.map(({ parting }, i) => Math.max(Math.PI / 2 - lean + (steeps[i] ?? 0) - parting, leastTurn));
  }
  return found as Hung;
};

const slopeOf = ({ shoulder }: RaglanHalf): number => angleOf(subtract(shoulder.to, shoulder.from));

/** The angle of the shoulder dart that both halves ask for, radians. */
export const shoulderDart = (front: RaglanHalf, back: RaglanHalf, frame: RaglanSleeveFrame): number => {
  const hung = hang(front, back, frame);
  return hung.front.steep - slopeOf(front) + hung.back.steep - slopeOf(back);
};

/** From half a body's plane into the sleeve's own: shoulder point at (0, 0), the line over the arm straight down. */
const placeOf = (half: RaglanHalf, steep: number, mirrored: boolean): Transform =>
  compose(translation(scale(half.shoulder.to, -1)), rotation(Math.PI / 2 - steep), mirrored ? mirrorX() : identity);

/**
 * The sleeve that goes with both halves of a raglan, by laying what the raglan takes from front and back to either side
 * of the line over the arm. Above where body and sleeve part, its edges are the body's own; below, they are as long. Null where
 * the arm is too thick for the armhole.
 *
 * Raglan in one piece with a shoulder dart, as taught in manuals of metric pattern cutting.
 */
export const draftRaglanSleeve = (
  front: RaglanHalf,
  back: RaglanHalf,
  frame: RaglanSleeveFrame,
): RaglanSleeve | null => {
  const hung = hang(front, back, frame);
  const { level, taper } = hung;
  const below = frame.length - level;
  if (level <= 0 || below < 4 * armBelow || hung.front.width <= 0 || hung.back.width <= 0) return null;
  const placeFront = placeOf(front, hung.front.steep, false);
  const placeBack = placeOf(back, hung.back.steep, true);
  const seam = (at: number, inward: 1 | -1): Cubic =>
    applyToSegment(translation({ x: 0, y: level }), taperedSeam(at, inward, taper, below)) as Cubic;
  const frontEnd: Point = { x: -hung.front.width, y: level };
  const backEnd: Point = { x: hung.back.width, y: level };
  const edge = (half: RaglanHalf, { lower }: HungHalf, place: Transform, end: Point): Path =>
    exactly(applyToPath(place, [half.raglan[0], lower]), end);
  const [overFront, overBack] = [hung.front.steep - slopeOf(front), hung.back.steep - slopeOf(back)];
  return {
    front: reversePath(edge(front, hung.front, placeFront, frontEnd)),
    back: edge(back, hung.back, placeBack, backEnd),
    neckFront: applyToPath(placeFront, front.sleeveNeck),
    neckBack: reversePath(applyToPath(placeBack, back.sleeveNeck)),
    // On the bisector of both shoulder lines, so that the legs are equal.
    dartPoint: scale(directionAt(Math.PI / 2 + (overBack - overFront) / 2), dartBeyond),
    dart: overFront + overBack,
    underarmFront: seam(-hung.front.width, 1),
    underarmBack: seam(hung.back.width, -1),
    underarmLevel: level,
    armLevel: level + armBelow,
    hemLevel: frame.length,
  };
};

/** The same path, ended at the very point, to the last bit. */
const exactly = (path: Path, end: Point): Path =>
  path.map((segment, i) => (i === path.length - 1 ? { ...segment, to: end } : segment));
