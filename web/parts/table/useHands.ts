import { type RefObject, useEffect, useRef } from 'react';
import type { Point } from '../../../src/geometry/index.ts';
import { panBy, pinch, type View, zoomAt } from './view.ts';

/** A press that moves less than this many px is a tap. */
const tap = 5;

type Move = (change: (view: View) => View) => void;

/** Draws a tape between two points of the screen. */
export type DrawTape = (from: Point, to: Point) => void;

/** One step of a zoom by key or verb. */
export const zoomStep = 1.25;
/** One step of a pan by key, px. */
const panStep = 60;

/** Moves the view by a key; says whether the key was one of the table's. */
export const moveByKey = (key: string, move: Move, showAll: () => void, middle: Point): boolean => {
  const pans: Readonly<Record<string, readonly [number, number]>> = {
    ArrowLeft: [panStep, 0],
    ArrowRight: [-panStep, 0],
    ArrowUp: [0, panStep],
    ArrowDown: [0, -panStep],
  };
  const pan = pans[key];
  if (pan) move((view) => panBy(view, pan[0], pan[1]));
  else if (key === '+' || key === '=') move((view) => zoomAt(view, zoomStep, middle));
  else if (key === '-' || key === '_') move((view) => zoomAt(view, 1 / zoomStep, middle));
  else if (key === '0') showAll();
  else return false;
  return true;
};

/** Dragging, pinching and wheeling over an element move the view, or a drag with the tape in hand draws it; a drag is not also taken for a tap on what lies under it. */
export const useHands = (element: RefObject<HTMLElement | null>, move: Move, drawTape: DrawTape | null): void => {
  const tape = useRef(drawTape);
  tape.current = drawTape;
  const fingers = useRef(new Map<number, Point>());
  useEffect(() => {
    const surface = element.current;
    if (!surface) return;
    const held = fingers.current;
    let travelled = 0;
    let pressed: Point = { x: 0, y: 0 };

    const at = (event: { clientX: number; clientY: number }): Point => {
      const box = surface.getBoundingClientRect();
      return { x: event.clientX - box.left, y: event.clientY - box.top };
    };
    const down = (event: PointerEvent) => {
      if (event.button !== 0 || (event.target as Element).closest('button, .tape-end, .grip')) return;
      if (held.size === 0) {
        travelled = 0;
        pressed = at(event);
      }
      held.set(event.pointerId, at(event));
    };
    const drag = (event: PointerEvent) => {
      const before = held.get(event.pointerId);
      if (!before) return;
      const now = at(event);
      travelled += Math.hypot(now.x - before.x, now.y - before.y);
      // Capture only once it is a drag: a captured press would never reach the thing under it as a click.
      if (travelled > tap && !surface.hasPointerCapture(event.pointerId)) surface.setPointerCapture(event.pointerId);
      held.set(event.pointerId, now);
      const other = [...held].find(([id]) => id !== event.pointerId)?.[1];
      if (other) move((view) => pinch(view, [before, other], [now, other]));
      else if (travelled > tap && tape.current) tape.current(pressed, now);
      else if (travelled > tap) move((view) => panBy(view, now.x - before.x, now.y - before.y));
    };
    const up = (event: PointerEvent) => held.delete(event.pointerId);
    const click = (event: MouseEvent) => {
      if (travelled <= tap) return;
      event.stopPropagation();
      event.preventDefault();
      travelled = 0;
    };
    const wheel = (event: WheelEvent) => {
      event.preventDefault();
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      const factor = Math.exp(-event.deltaY * lines * (event.ctrlKey ? 0.01 : 0.0015));
      const point = at(event);
      move((view) => zoomAt(view, factor, point));
    };
    surface.addEventListener('pointerdown', down);
    surface.addEventListener('pointermove', drag);
    surface.addEventListener('pointerup', up);
    surface.addEventListener('pointercancel', up);
    surface.addEventListener('click', click, { capture: true });
    surface.addEventListener('wheel', wheel, { passive: false });
    return () => {
      surface.removeEventListener('pointerdown', down);
      surface.removeEventListener('pointermove', drag);
      surface.removeEventListener('pointerup', up);
      surface.removeEventListener('pointercancel', up);
      surface.removeEventListener('click', click, { capture: true });
      surface.removeEventListener('wheel', wheel);
    };
  }, [element, move]);
};
