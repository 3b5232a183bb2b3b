import {
  applyToPath,
  type Path,
  type Point,
  pathLength,
  pathStart,
  subtract,
  translation,
} from '../../geometry/index.ts';
import { edgeRuns } from '../../pattern/index.ts';
import { bad, good, type Result } from '../../units/index.ts';
import { easedField } from '../fields.ts';
import { type EdgeAt, endPoint, liesAcross, neighbourAt, other } from '../parts.ts';
import type { Drawn } from '../reshape.ts';
import { warped } from '../warp.ts';
import { drawnAlong, endOf, lineOf, slidEnd } from './lines.ts';
import type { Neckline } from './upper.ts';

/** Less than this, mm, between the neck point's height and the centre's is no neckline that can be sewn. */
const leastDepth = 8;

/** What runs on beyond the centre to the edge of the stand, level: it moves whole with the neckline's end. */
const beyondCentre = (neckline: Neckline): readonly string[] => {
  const { piece } = neckline;
  const edges: string[] = [];
  let here: EdgeAt | null = neckline.centre;
  while (here && liesAcross(piece, here.edge) && edges.length < piece.edges.length) {
    edges.push(here.edge);
    here = neighbourAt(piece, { edge: here.edge, end: other(here.end) });
  }
  return edges;
};

/** The neckline's centre moved down so many mm, its shoulder end kept; square (or as it was) at the centre. */
export const deepened = (neckline: Neckline, by: number): Result<Drawn> => {
  const { piece, edges, reversed, shoulder } = neckline;
  const line = lineOf(piece, edges, reversed);
  if (!line.ok) return line;
  const down: Point = { x: 0, y: by };
  const depth = pathStart(line.value).y - endPoint(piece, shoulder).y;
  if (depth + by < leastDepth) return bad('alter.neck-too-flat', { piece: piece.name });
  const now = warped(line.value, easedField(0, pathLength(line.value), { by: down }, { by: { x: 0, y: 0 } }));
  const beyond = Object.fromEntries(
    beyondCentre(neckline).map((edge) => [edge, edgeRuns(piece, edge).map((path) => moved(path, down))]),
  );
  return good({ ...drawnAlong(piece, edges, reversed, now), ...beyond });
};

const moved = (path: Path, by: Point): Path => applyToPath(translation(by), path);

/** The neckline's shoulder end moved so many mm out along the shoulder, its centre kept. */
export const widened = ({ piece, edges, reversed, shoulder }: Neckline, by: number): Result<Drawn> => {
  const line = lineOf(piece, edges, reversed);
  if (!line.ok) return line;
  const shoulderNow = slidEnd(piece, shoulder.edge, shoulder.end, -by);
  if (!shoulderNow.ok) return shoulderNow;
  const out = subtract(endOf(shoulderNow.value, shoulder.end), endPoint(piece, shoulder));
  const now = warped(line.value, easedField(0, pathLength(line.value), { by: { x: 0, y: 0 } }, { by: out }));
  return good({ ...drawnAlong(piece, edges, reversed, now), [shoulder.edge]: shoulderNow.value });
};

/** The middle of the neckline, and where its centre lies. */
export const centreOf = ({ piece, edges, reversed }: Neckline): Point =>
  endPoint(piece, { edge: edges[0] as string, end: reversed ? 'end' : 'start' });
