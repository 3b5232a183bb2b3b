import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import type { Point } from '../../../src/geometry/index.ts';
import { drawnTo, keyedTo } from './grip-amount.ts';
import type { Grip } from './laid.ts';
import { toScreen, toTable, type View } from './view.ts';

interface Taken {
  readonly pointer: number;
  readonly at: Point;
  readonly amount: number;
  /** The way the point goes, as it was when it was taken hold of: a way that turned underway would shake the hand. */
  readonly grip: Grip;
  /** Where the point lay: the dimension is drawn from there. */
  readonly from: Point;
}

/** How far the arrow that shows which way a grip goes reaches from its middle, px. */
const reach = 34;

/** The point of the step in hand that can be dragged, or moved by arrow keys, and the length it has moved. */
export const GripHandle = ({ grip, view }: { grip: Grip; view: View }) => {
  const taken = useRef<Taken | null>(null);
  const [from, setFrom] = useState<Point | null>(null);
  const at = toScreen(view, grip.at);
  const pointer = (event: PointerEvent<HTMLElement>): Point | null => {
    const box = event.currentTarget.parentElement?.getBoundingClientRect();
    return box ? toTable(view, { x: event.clientX - box.left, y: event.clientY - box.top }) : null;
  };
  const take = (event: PointerEvent<HTMLElement>) => {
    const where = pointer(event);
    if (event.button !== 0 || !where) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    taken.current = { pointer: event.pointerId, at: where, amount: grip.amount, grip, from: grip.at };
    setFrom(grip.at);
  };
  const drag = (event: PointerEvent<HTMLElement>) => {
    const held = taken.current;
    const where = pointer(event);
    if (!held || held.pointer !== event.pointerId || !where) return;
    const amount = drawnTo(held.grip, held.amount, { x: where.x - held.at.x, y: where.y - held.at.y });
    if (amount !== grip.amount) grip.onMove(amount);
  };
  const release = () => {
    taken.current = null;
    setFrom(null);
  };
  const key = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const amount = keyedTo(grip, grip.amount, event.key, event.shiftKey);
    if (amount === null) return;
    event.preventDefault();
    event.stopPropagation();
    if (amount !== grip.amount) grip.onMove(amount);
  };
  const { x, y } = grip.perMillimetre;
  const length = Math.hypot(x, y) || 1;
  const way = { x: (x / length) * reach, y: (y / length) * reach };
  const origin = from ? toScreen(view, from) : null;
  return (
    <>
      <svg className="tape" aria-hidden="true">
        <line className="grip-way" x1={at.x - way.x} y1={at.y - way.y} x2={at.x + way.x} y2={at.y + way.y} />
        {origin && <line className="grip-moved" x1={origin.x} y1={origin.y} x2={at.x} y2={at.y} />}
      </svg>
      <div
        className="grip"
        role="slider"
        tabIndex={0}
        aria-label={grip.label}
        aria-valuemin={Math.round(grip.least)}
        aria-valuemax={Math.round(grip.most)}
        aria-valuenow={Math.round(grip.amount)}
        aria-valuetext={grip.said}
        style={{ left: at.x, top: at.y }}
        onPointerDown={take}
        onPointerMove={drag}
        onPointerUp={release}
        onPointerCancel={release}
        onKeyDown={key}
      />
      <p className="grip-said" aria-hidden="true" style={{ left: at.x, top: at.y }}>
        {grip.figure}
      </p>
    </>
  );
};
