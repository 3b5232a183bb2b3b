import { distance, nearestOnPath, type Path, samePoint, tolerance } from '../geometry/index.ts';
import { edgeRuns, hasEdge, type Notch, notchPlace, type Piece } from '../pattern/index.ts';
import { formatLength, type Unit } from '../units/index.ts';
import { notchMark } from './piece-marks.ts';
import { sayId } from './say.ts';

/** A notch that was marked elsewhere: its strokes then and now, and how far apart these lie, mm. */
export interface MovedNotch {
  readonly notch: Notch;
  readonly was: readonly Path[];
  readonly now: readonly Path[];
  readonly by: number;
}

const sameRuns = (a: readonly Path[], b: readonly Path[]): boolean => {
  const [one, other] = [a.flat(), b.flat()];
  return (
    one.length === other.length &&
    one.every((segment, i) => {
      const twin = other[i];
      return twin !== undefined && samePoint(segment.from, twin.from) && samePoint(segment.to, twin.to);
    })
  );
};

/** Notches that lie elsewhere on an edge that stayed where it was: on a changed edge they go along with it. */
export const movedNotches = (before: Piece, after: Piece): readonly MovedNotch[] =>
  after.notches.flatMap((notch) => {
    const old = before.notches.find(({ id }) => id === notch.id);
    if (!old || old.edge !== notch.edge || !hasEdge(before, notch.edge)) return [];
    // While an amount is dragged most edges lie where they lay: there is nothing to measure on those.
    if (notch.at === old.at && sameRuns(edgeRuns(before, old.edge), edgeRuns(after, notch.edge))) return [];
    const place = notchPlace(after, notch).point;
    const by = distance(place, notchPlace(before, old).point);
    if (by <= tolerance.notch) return [];
    const onOldEdge = edgeRuns(before, old.edge).some((run) => nearestOnPath(run, place).distance <= tolerance.holds);
    return onOldEdge ? [{ notch, by, was: notchMark(before, old).paths, now: notchMark(after, notch).paths }] : [];
  });

/** A moved notch's name and how far it moved, to be filled into a sentence. */
export const sayMoved = (notch: Notch, by: number, unit: Unit, locale: string) => ({
  notch: sayId(notch.id),
  amount: formatLength(by, unit, { purpose: 'amount', locale }),
});
