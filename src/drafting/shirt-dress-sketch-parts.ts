import {
  angleOf,
  applyToPath,
  applyToPoint,
  compose,
  mirrorX,
  type Path,
  pathEnd,
  pathStart,
  reversePath,
  rotation,
  subtract,
  type Transform,
  translation,
} from '../geometry/index.ts';
import type { Garment } from '../pattern/index.ts';
import { runOf } from './shape-garment.ts';
import type { SketchLine } from './sketch.ts';

/** How near the edge topstitching runs, mm. */
export const topstitch = 5;

export const mirrored = (path: Path): Path => applyToPath(mirrorX(), path);

/** Half a shape closed down the centre line, opened to both halves. */
export const opened = (half: Path): Path => [...half, ...mirrored(reversePath(half))];

export const stitching = (path: Path): SketchLine => ({ kind: 'stitching', path });

/** Lays the yoke's front strip where it lies on the front: turned back over the shoulder. */
export const overShoulder = (garment: Garment): Transform => {
  const seam = runOf(garment, 'yoke', 'front');
  const onFront = runOf(garment, 'front', 'shoulder');
  const turned = compose(mirrorX(pathStart(seam).x), translation(subtract(pathStart(onFront), pathStart(seam))));
  const to = angleOf(subtract(pathEnd(onFront), pathStart(onFront)));
  const from = angleOf(subtract(applyToPoint(turned, pathEnd(seam)), pathStart(onFront)));
  return compose(turned, rotation(to - from, pathStart(onFront)));
};
