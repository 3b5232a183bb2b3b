import { distance, endTangent, nearestOnPath, type Path, startTangent, tolerance } from '../../geometry/index.ts';
import { edgeRuns, type Piece } from '../../pattern/index.ts';
import { fairOfLength, fairPath, outward } from '../fair-edge.ts';
import { pieceNow, trueEdges, type Work } from '../work.ts';
import type { Sleeve } from './anatomy.ts';

/** The one line of a sleeve's hem or wrist; null where it is made of several. */
const hemOf = (work: Work, { piece, hem }: Sleeve): { readonly edge: string; readonly path: Path } | null => {
  const [edge, another] = hem;
  if (edge === undefined || another !== undefined) return null;
  const [path, more] = edgeRuns(pieceNow(work, piece.id), edge);
  return path && !more ? { edge, path } : null;
};

/** What was marked where the hem was cut lies on its new line again, right below: a mark on a cut belongs to neither part. */
const markedAgain =
  ({ piece: before, wrist }: Sleeve, curve: Path) =>
  (piece: Piece): Piece => {
    const marked = new Set(
      before.landmarks.filter(({ at }) => distance(at, wrist) <= tolerance.kink).map(({ id }) => id),
    );
    const at = nearestOnPath(curve, wrist).point;
    return { ...piece, landmarks: piece.landmarks.map((mark) => (marked.has(mark.id) ? { ...mark, at } : mark)) };
  };

/** A hem opened in its middle, drawn as one fair curve from seam to seam that leaves both as it left them. */
export const fairHem = (work: Work, sleeve: Sleeve): Work => {
  const hem = hemOf(work, sleeve);
  if (!hem) return work;
  const curve = fairPath(hem.path);
  return trueEdges(work, sleeve.piece.id, { [hem.edge]: [curve] }, markedAgain(sleeve, curve));
};

/** A hem that turned about its middle drawn as one fair curve as long as it was, its ends drawn out square to the seams, which so stay as long as they are. */
export const keptHem = (work: Work, sleeve: Sleeve): Work => {
  const hem = hemOf(work, sleeve);
  if (!hem) return work;
  const piece = pieceNow(work, sleeve.piece.id);
  const right = outward(endTangent(edgeRuns(piece, sleeve.right).flat()));
  const left = outward(startTangent(edgeRuns(piece, sleeve.left).flat()));
  const curve = fairOfLength(hem.path, work.tape.edge(sleeve.piece, hem.edge), [right, left]);
  return trueEdges(work, sleeve.piece.id, { [hem.edge]: [curve] }, markedAgain(sleeve, curve));
};
