import { joinPaths, type Path, pathEnd, pathWithStart } from '../../geometry/index.ts';
import type { Piece, Run } from '../../pattern/index.ts';
import type { DartMouth } from '../parts.ts';

/**
 * A piece without one of its darts. Let go, its mouth becomes part of the edge it opened in; closed, so that nothing but
 * a hair is left of the mouth, what lies beyond it begins where what lies before it ends.
 */
export const withoutDart = (piece: Piece, dart: string, opens: DartMouth, mouth: 'let-go' | 'closed'): Piece => {
  const count = piece.runs.length;
  const [one, bridge, two] = [opens.before, opens.mouth, opens.after].map((i) => (piece.runs[i] as Run).path) as [
    Path,
    Path,
    Path,
  ];
  const path = mouth === 'let-go' ? joinPaths(one, bridge, two) : joinPaths(one, pathWithStart(two, pathEnd(one)));
  const rest = Array.from({ length: count - 3 }, (_, i) => piece.runs[(opens.mouth + 2 + i) % count] as Run);
  return {
    ...piece,
    runs: [{ kind: 'edge', edge: opens.edge, path }, ...rest],
    darts: piece.darts.filter(({ id }) => id !== dart),
  };
};
