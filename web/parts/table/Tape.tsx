import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import type { Point } from '../../../src/geometry/index.ts';
import { formatLength, type Unit } from '../../../src/units/index.ts';
import { fill, webWords } from '../../../src/words/index.ts';
import { toScreen, toTable, type View } from './view.ts';

export interface TapeEnds {
  readonly from: Point;
  readonly to: Point;
}

const words = webWords.table;

const steps: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/** An arrow moves an end this many px; with Shift a tenth of that, for exactness. */
const stride = 10;

interface TapeProps {
  readonly ends: TapeEnds;
  readonly view: View;
  readonly unit: Unit;
  readonly onMove: (ends: TapeEnds) => void;
}

/** A tape between two points of the table; its ends are dragged, or moved by arrow keys. */
export const Tape = ({ ends, view, unit, onMove }: TapeProps) => {
  const held = useRef<'from' | 'to' | null>(null);
  const from = toScreen(view, ends.from);
  const to = toScreen(view, ends.to);
  const length = formatLength(Math.hypot(ends.to.x - ends.from.x, ends.to.y - ends.from.y), unit);
  const put = (end: 'from' | 'to', at: Point) => onMove({ ...ends, [end]: at });

  const drag = (event: PointerEvent<HTMLElement>) => {
    if (!held.current) return;
    const box = event.currentTarget.parentElement?.getBoundingClientRect();
    if (box) put(held.current, toTable(view, { x: event.clientX - box.left, y: event.clientY - box.top }));
  };
  const key = (end: 'from' | 'to') => (event: KeyboardEvent) => {
    const step = steps[event.key];
    if (!step) return;
    event.preventDefault();
    event.stopPropagation();
    const far = (event.shiftKey ? stride / 10 : stride) / view.scale;
    put(end, { x: ends[end].x + step.x * far, y: ends[end].y + step.y * far });
  };
  const handle = (end: 'from' | 'to', at: Point, name: string) => (
    <button
      type="button"
      className="tape-end"
      aria-label={fill(name, { length }, unit)}
      style={{ left: at.x, top: at.y }}
      onKeyDown={key(end)}
      onPointerDown={(event) => {
        held.current = end;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={drag}
      onPointerUp={() => {
        held.current = null;
      }}
    />
  );
  return (
    <>
      <svg className="tape" aria-hidden="true">
        <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} className="tape-edge" />
        <line x1={from.x} y1={from.y} x2={to.x} y2={to.y} className="tape-band" />
      </svg>
      {handle('from', from, words.tapeStart)}
      {handle('to', to, words.tapeEnd)}
      <output className="tape-length" style={{ left: (from.x + to.x) / 2, top: (from.y + to.y) / 2 }}>
        {length}
      </output>
    </>
  );
};
