import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';
import { pathEnd, pathStart } from './paths.ts';
import type { Path, Point, Segment } from './types.ts';

/**
 * SVG path data (SVG 2, section 9.3), absolute `M L C` and, on a path that ends exactly where it began, `Z`.
 * Full precision unless a number of decimals is given.
 */
export const pathToSvg = (path: Path, decimals?: number): string => {
  const number = (value: number): string => {
    // Number() drops trailing zeros, and adding 0 turns −0 into 0.
    return String((decimals === undefined ? value : Number(value.toFixed(decimals))) + 0);
  };
  const at = (p: Point): string => `${number(p.x)} ${number(p.y)}`;
  const start = pathStart(path);
  const end = pathEnd(path);
  const closed = start.x === end.x && start.y === end.y;
  const parts = [`M ${at(start)}`];
  path.forEach((segment, i) => {
    if (segment.kind === 'cubic') parts.push(`C ${at(segment.control1)} ${at(segment.control2)} ${at(segment.to)}`);
    else if (!closed || i < path.length - 1) parts.push(`L ${at(segment.to)}`);
  });
  if (closed) parts.push('Z');
  return parts.join(' ');
};

/** Reads one run of absolute `M L C Z`; anything else is a problem that says where. `Z` adds the closing line if there is a gap. */
export const pathFromSvg = (text: string): Result<Path> => {
  const tokens = text.match(/[A-Za-z]|[-+]?(?:\d+\.?\d*|\.\d+)(?:[eE][-+]?\d+)?|[^\s,]/g) ?? [];
  let place = 0;
  const isNumber = (): boolean => /^[-+.\d]/.test(tokens[place] ?? '') && Number.isFinite(Number(tokens[place]));
  const readPoints = (count: number): Point[] | null => {
    const points: Point[] = [];
    for (let i = 0; i < count; i++) {
      if (!isNumber()) return null;
      const x = Number(tokens[place++]);
      if (!isNumber()) return null;
      points.push({ x, y: Number(tokens[place++]) });
    }
    return points;
  };
  const wrong = () => bad('geometry.svg-path', { found: tokens[place] ?? 'nothing', at: place + 1 });

  if (tokens[place++] !== 'M') {
    place--;
    return wrong();
  }
  const start = readPoints(1)?.[0];
  if (!start) return wrong();
  const path: Segment[] = [];
  let from = start;
  while (place < tokens.length) {
    const command = tokens[place++];
    if (command === 'Z') {
      if (place < tokens.length) return wrong();
      if (from.x !== start.x || from.y !== start.y) path.push({ kind: 'line', from, to: start });
      break;
    }
    if (command !== 'L' && command !== 'C') {
      place--;
      return wrong();
    }
    do {
      const points = readPoints(command === 'L' ? 1 : 3);
      if (!points) return wrong();
      const [p, q, r] = points as [Point, Point, Point];
      path.push(
        command === 'L' ? { kind: 'line', from, to: p } : { kind: 'cubic', from, control1: p, control2: q, to: r },
      );
      from = command === 'L' ? p : r;
    } while (isNumber());
  }
  return path.length > 0 ? good(path) : wrong();
};
