import {
  applyToPoint,
  distance,
  line,
  outlineArea,
  type Point,
  rotation,
  samePoint,
  subtract,
  tolerance,
  turnBetween,
} from '../../geometry/index.ts';
import { dartOf, type Garment, type Piece, pointOnEdge, type Run } from '../../pattern/index.ts';
import { bad } from '../../units/index.ts';
import { pointBetween } from '../bust-front.ts';
import { held } from '../checks.ts';
import type { CutPiece, CutPlan } from '../cut.ts';
import { heldOthers } from '../held-edges.ts';
import { levelLines } from '../level-lines.ts';
import { partAt, swing } from '../move.ts';
import { mouthOf } from '../parts.ts';
import { type Alteration, sideParameter } from '../types.ts';
import { beginWork, cutAndMove, finishWork, pieceNow, type Work, withPiece } from '../work.ts';
import { dartNames, edgesFor, namedDart, needsDart, turningPoint } from './darts.ts';
import { withoutDart } from './without-dart.ts';

/** How far a moved dart ends from the point it aims at, mm (trade, Alterations: side dart 20–40, waist dart 10–25). */
const setBack = 25;

/** The edge that closes up where a dart of one piece was, so that its id may be given again. */
const freeId = (piece: Piece, edge: string): string => {
  const taken = new Set(piece.darts.map(({ id }) => id));
  let id = `${edge}-dart`;
  for (let n = 2; taken.has(id); n += 1) id = `${edge}-dart-${n}`;
  return id;
};

/** The straight bridge over an opening told as a dart's mouth, and the edge before and after it as runs of their own. */
const opened = (piece: Piece, edge: string, ends: readonly [Point, Point], dart: string): readonly Run[] | null => {
  for (const [i, run] of piece.runs.entries()) {
    if (run.kind !== 'edge' || run.edge !== edge) continue;
    const at = run.path.findIndex(
      ({ kind, from, to }) =>
        kind === 'line' &&
        ((samePoint(from, ends[0]) && samePoint(to, ends[1])) || (samePoint(from, ends[1]) && samePoint(to, ends[0]))),
    );
    if (at < 0) continue;
    const { from, to } = run.path[at] as Run['path'][number];
    const [before, after] = [run.path.slice(0, at), run.path.slice(at + 1)];
    const parts: readonly Run[] = [
      ...(before.length > 0 ? [{ ...run, path: before }] : []),
      { kind: 'mouth', dart, path: [line(from, to)] },
      ...(after.length > 0 ? [{ ...run, path: after }] : []),
    ];
    return [...piece.runs.slice(0, i), ...parts, ...piece.runs.slice(i + 1)];
  }
  return null;
};

/** Of the two parts between the old dart and the new cut the smaller swings, so that centre and grain stay; never one on the fold. */
const swungPart = (pieces: CutPiece): number => {
  const folds = new Set(pieces.piece.edges.filter(({ finish }) => finish === 'fold').map(({ id }) => id));
  const onFold = (i: number): boolean =>
    pieces.fragments.some(({ part, of }) => part === i && of.kind === 'edge' && folds.has(of.edge));
  const cloth = pieces.parts.flatMap((part, i) => (part.wedge === null && !onFold(i) ? [i] : []));
  const areas = cloth.map((i) => Math.abs(outlineArea(pieces.parts[i]?.outline ?? [])));
  return cloth[areas.indexOf(Math.min(...areas))] as number;
};

const planFor = (dart: string, about: Point, edge: string, at: number): CutPlan => {
  const node = { node: 'about' };
  return {
    nodes: { about },
    cuts: [
      { id: 'leg-0', from: node, to: { dart, leg: 0 } },
      { id: 'leg-1', from: node, to: { dart, leg: 1 } },
      { id: 'new', from: node, to: { edge, at } },
    ],
  };
};

/** Which of the legs borders the part that swings, and by how much it has to turn to lie on the other. */
const closing = (pieces: CutPiece, part: number, piece: Piece, dart: string, about: Point): number => {
  const { legs } = dartOf(piece, dart);
  const own = pieces.cuts.find(({ id, left, right }) => id.startsWith('leg-') && (left === part || right === part));
  const from = own?.id === 'leg-1' ? 1 : 0;
  return turnBetween(subtract(legs[from], about), subtract(legs[1 - from] as Point, about));
};

/** A dart from the side is pressed down, an upright one towards the centre, as the trade has it. */
const pressedOf = (piece: Piece, [from, to]: readonly [Point, Point]): 'before' | 'after' => {
  if (Math.abs(to.y - from.y) > Math.abs(to.x - from.x)) return from.y > to.y ? 'before' : 'after';
  const centre = piece.levels[0]?.from.x ?? piece.grain.from.x;
  return Math.abs(from.x - centre) < Math.abs(to.x - centre) ? 'before' : 'after';
};

interface Moved {
  readonly work: Work;
  readonly angle: number;
  readonly fresh: string;
}

const moved = (given: Work, piece: Piece, dart: string, edge: string, at: number, share: number) => {
  const about = turningPoint(piece, dart);
  const target = pointOnEdge(piece, edge, at);
  const { legs } = dartOf(piece, dart);
  const whole = Math.abs(turnBetween(subtract(legs[0], about), subtract(legs[1], about)));
  const fresh = freeId(piece, edge);
  let angle = 0;
  let partTurned = -1;
  const done = cutAndMove(given, piece.id, planFor(dart, about, edge, at), {
    move: (pieces) => {
      partTurned = swungPart(pieces);
      angle = share * closing(pieces, partTurned, piece, dart, about);
      return swing(pieces, partTurned, about, angle);
    },
    // Levels go with the part they begin on: along one a tape goes on over the closed dart.
    owners: (pieces) => ({
      darts: { [dart]: dartOf(piece, dart).point },
      levels: Object.fromEntries(
        piece.levels.map(({ id, from }) => {
          const part = partAt(pieces, from);
          return [id, { from: part, to: part, over: part }];
        }),
      ),
    }),
    truing: (former) => (former.edge === edge && !samePoint(former.before, former.after) ? 'none' : 'hinge'),
  });
  if (!done.ok) return done;
  // Legs that were not quite as long as each other leave a hair's mouth where nothing else of the dart is left.
  const left = (whole - Math.abs(angle)) * distance(about, legs[0]) > tolerance.leg;
  const bare = pieceNow(done.value, piece.id);
  const hair = left ? null : mouthOf(bare, dart);
  const joined = hair ? withoutDart(bare, dart, hair, 'closed') : bare;
  const turned = applyToPoint(rotation(angle, about), target);
  const runs = opened(joined, edge, [target, turned], fresh);
  if (!runs) return bad('alter.cut-not-clear', { piece: piece.name });
  const mouth = runs.find((run) => run.kind === 'mouth' && run.dart === fresh)?.path[0];
  const aims = piece.darts.find(({ id }) => id === dart)?.aims;
  const ends: readonly [Point, Point] = mouth ? [mouth.from, mouth.to] : [target, turned];
  const back = aims === undefined ? 0 : Math.min(setBack, distance(about, target) / 3);
  const withDart: Piece = {
    ...levelLines(piece, joined),
    runs,
    darts: [
      ...joined.darts.map((one) => (one.id === dart ? { ...one, point: stillBetween(joined, dart, about) } : one)),
      {
        id: fresh,
        point: back === 0 ? about : pointBetween(about, ends, back),
        ...(aims === undefined ? {} : { aims }),
        pressed: pressedOf(piece, ends),
      },
    ],
  };
  const untrued = done.value.worked.get(piece.id)?.untrued ?? joined;
  // What the wedge opened was cloth put in while it was an edge; as a dart it is the same area, folded away.
  const result: Moved = { work: withPiece(done.value, { piece: withDart, untrued, puts: [], cuts: [] }), angle, fresh };
  return { ok: true as const, value: result };
};

/** The point of what is left of the old dart, as far from what it aims at as it was, on the line between its legs. */
const stillBetween = (piece: Piece, dart: string, about: Point): Point => {
  const { legs, point } = dartOf(piece, dart);
  const back = distance(point, about);
  return back <= tolerance.same ? point : pointBetween(about, legs, back);
};

/**
 * A dart moved to another edge: swung about the point it aims at until it is closed, and open there by the same angle. A
 * `share` of it may be moved and the rest left.
 *
 *       ____                ____
 *      |    \\              |    \\
 *      | o<====  side       | o    |
 *      |     |      →       |/ \\   |
 *      |_____|              |   \\__|   hem
 *
 * Its angle is held, and every edge keeps its length with the darts closed. Source: the pivot of pattern-cutting manuals.
 */
export const moveDart: Alteration = {
  id: 'move-dart',
  version: 1,
  family: 'bust',
  params: {
    dart: { unit: 'named', of: 'dart' },
    to: { unit: 'named', of: 'edge' },
    at: { unit: 'share', min: 0.05, max: 0.95, usual: [0.4, 0.6] },
    share: { unit: 'share', min: 0.1, max: 1, usual: [1, 1] },
    side: sideParameter,
  },
  amount: null,
  inAll: 2,
  needs: needsDart,
  options: (garment, name, params) => {
    const names = dartNames(garment);
    if (name === 'dart') return names;
    const dart = names.find((one) => one === params?.['dart']) ?? names[0];
    return name === 'to' && dart !== undefined ? edgesFor(garment, dart) : [];
  },
  holds: ['dart-angle-kept', 'edges-closed', 'seam-walks'],
  follows: ['levels', 'notches'],
  apply: (garment: Garment, params) => {
    const { piece, dart } = namedDart(garment, String(params.dart));
    const to = String(params.to);
    const edge = to.slice(to.indexOf('/') + 1);
    if (to.slice(0, to.indexOf('/')) !== piece.id) return bad('alter.dart-on-other-piece', { piece: piece.name });
    const before = dartOf(piece, dart);
    const about = turningPoint(piece, dart);
    const opening = Math.abs(turnBetween(subtract(before.legs[0], about), subtract(before.legs[1], about)));
    const share = Number(params.share);
    const done = moved(beginWork(garment), piece, dart, edge, Number(params.at), share);
    if (!done.ok) return done;
    // With its darts closed every edge is as long as before: what is sewn to it need not follow.
    const { work } = done.value;
    const after = pieceNow(work, piece.id);
    const fresh = dartOf(after, done.value.fresh);
    const reach = distance(about, fresh.legs[0]);
    return finishWork(work, {
      held: [
        ...heldOthers(work, piece.id),
        held('dart-legs', fresh.legLengths[0] - fresh.legLengths[1], { piece: piece.id }),
        // An angle is held to what it comes to at the end of the leg.
        held(
          'dart-angle',
          (Math.abs(turnBetween(subtract(fresh.legs[0], about), subtract(fresh.legs[1], about))) - share * opening) *
            reach,
          { piece: piece.id },
        ),
      ],
      changes: [{ what: 'dart-opens', piece: piece.id, edge, by: fresh.intake, now: fresh.intake }],
      warnings:
        fresh.intake > widestIntake
          ? [bad('alter.split-dart', { piece: piece.name, intake: { mm: fresh.intake } }).problem]
          : [],
    });
  },
};

/** Above this intake, mm, a dart is better split in two (trade, Alterations). */
const widestIntake = 65;
