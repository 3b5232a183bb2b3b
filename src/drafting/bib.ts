import { fairCurve, intersectPaths, line, type Path, type Point } from '../geometry/index.ts';
import type { InnerLine, Notch, Piece, PieceRole } from '../pattern/index.ts';
import { allowances, closeRuns, edge, edgeRun, landmark, lengthenLine, level, shell, straightRun } from './pieces.ts';

export interface BibFrame {
  readonly id: string;
  readonly name: string;
  readonly role: PieceRole;
  /** Half the lower edge, which is sewn to one leg's waist, mm. */
  readonly waist: number;
  readonly height: number;
  readonly topHalf: number;
  /** How high the side goes up from the waist before it curves to the top: the opening closes on it. */
  readonly side: number;
  /** Width of the strap sewn to the outer end of the top; none where left out. */
  readonly strap?: number;
  readonly lines?: readonly InnerLine[];
}

/** A bib is cut this much narrower at the top than a slim waist allows, mm: its side has to run out to the waist. */
const leastSlope = 45;

/** Half the width a bib has at its top. */
export const bibTop = ({ waist, topHalf }: Pick<BibFrame, 'waist' | 'topHalf'>): number =>
  Math.min(topHalf, waist - leastSlope);

/** From the top's corner, nearly upright, hollowed out to the side, which it meets a little falling so that its corner lies flat. */
const curveOf = (from: Point, to: Point): Path => [fairCurve(from, { x: 0.06, y: 1 }, to, { x: 1, y: 0.22 })];

/**
 * A bib, half of it, on the fold, from cloth and lining: straight along the waist, upright at the side where the opening
 * closes, hollowed to its top. Levels: `waist`, a little above the seam.
 *
 * Bib as taught in manuals of dressmaking.
 */
export const bibPiece = (frame: BibFrame): Piece => {
  const { waist, height, side, strap } = frame;
  const top = bibTop(frame);
  const at = (x: number, y: number): Point => ({ x, y });
  const curve = curveOf(at(top, -height), at(waist, -side));
  const strapFrom = top - (strap ?? 0);
  // Above the side, which has its mate on the underlap.
  const lengthenAt = -side - 12;
  const [across] = intersectPaths([line(at(0, lengthenAt), at(waist + 1, lengthenAt))], curve);
  const notches: readonly Notch[] = [
    { id: 'waist-middle', edge: 'waist', at: 0.5, strokes: 1 },
    ...(strap === undefined ? [] : [{ id: 'strap', edge: 'top', at: 1, strokes: 1 } as const]),
  ];
  return {
    id: frame.id,
    name: frame.name,
    role: frame.role,
    cut: [shell(1, false), { layer: 'lining', count: 1, mirrored: false }],
    runs: closeRuns([
      straightRun('top', at(0, -height), at(strapFrom, -height)),
      ...(strap === undefined ? [] : [straightRun('strap', at(strapFrom, -height), at(top, -height))]),
      edgeRun('curve', curve),
      edgeRun('side', [line(at(waist, -side), at(waist, 0))]),
      straightRun('waist', at(waist, 0), at(0, 0)),
      straightRun('centre', at(0, 0), at(0, -height)),
    ]),
    edges: [
      edge('top', 'seam', allowances.neck),
      ...(strap === undefined ? [] : [edge('strap', 'seam', allowances.neck)]),
      edge('curve', 'seam', allowances.neck),
      edge('side', 'seam', allowances.seam),
      edge('waist', 'seam', allowances.seam),
      edge('centre', 'fold', 0),
    ],
    darts: [],
    notches,
    grain: { from: at(0.5 * top, -0.85 * height), to: at(0.5 * top, -0.15 * height) },
    levels: [level('waist', at(0, -0.4 * side), at(waist, -0.4 * side))],
    landmarks: [
      landmark('centre-top', at(0, -height)),
      landmark('bib-corner', at(top, -height)),
      landmark('centre-waist', at(0, 0)),
      landmark('waist-side', at(waist, 0)),
    ],
    lines: [lengthenLine('bib', at(0, lengthenAt), across?.point ?? at(top, lengthenAt)), ...(frame.lines ?? [])],
  };
};
