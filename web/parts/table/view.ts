import type { Bounds, Point } from '../../../src/geometry/index.ts';

/** What part of the table is seen: `scale` screen px a mm, and the mm that lie at the top left of the screen. */
export interface View {
  readonly scale: number;
  readonly left: number;
  readonly top: number;
}

/** Screen px of the part of the table that drawings may use. */
export interface Screen {
  readonly width: number;
  readonly height: number;
}

/** A hair of a hem fills the screen at one end; a roll of cloth is a thumb's length at the other. */
const leastScale = 0.02;
const mostScale = 60;

const within = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most);

export const toScreen = (view: View, at: Point): Point => ({
  x: (at.x - view.left) * view.scale,
  y: (at.y - view.top) * view.scale,
});

export const toTable = (view: View, at: Point): Point => ({
  x: at.x / view.scale + view.left,
  y: at.y / view.scale + view.top,
});

/** Screen px left free on each side. */
export interface Insets {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Nothing is shown larger than life until she brings it closer: 96 px of a screen count as an inch. */
const lifeSize = 96 / 25.4;

/** The view that shows all of `bounds` in the middle of what the insets leave of the screen. */
export const fitView = (bounds: Bounds, screen: Screen, insets: Insets): View => {
  const wide = Math.max(bounds.maxX - bounds.minX, 1);
  const high = Math.max(bounds.maxY - bounds.minY, 1);
  const room = {
    width: Math.max(screen.width - insets.left - insets.right, 40),
    height: Math.max(screen.height - insets.top - insets.bottom, 40),
  };
  const scale = within(Math.min(room.width / wide, room.height / high), leastScale, lifeSize);
  return {
    scale,
    left: (bounds.minX + bounds.maxX) / 2 - (insets.left + room.width / 2) / scale,
    top: (bounds.minY + bounds.maxY) / 2 - (insets.top + room.height / 2) / scale,
  };
};

/** By how much of itself a drawing may grow, shrink or wander before it is another size of drawing. */
const mostChange = 0.1;

/** Whether a drawing has become so much larger, smaller or displaced that a view fitted to `before` no longer suits `now`. */
export const outgrown = (before: Bounds, now: Bounds): boolean => {
  const wide = Math.max(before.maxX - before.minX, 1);
  const high = Math.max(before.maxY - before.minY, 1);
  const across = Math.max(Math.abs(now.minX - before.minX), Math.abs(now.maxX - before.maxX));
  const down = Math.max(Math.abs(now.minY - before.minY), Math.abs(now.maxY - before.maxY));
  return across > wide * mostChange || down > high * mostChange;
};

/** Whether some of a drawing lies off the screen, or under the rule at its left and top. */
export const leaves = (view: View, bounds: Bounds, screen: Screen, rule: number): boolean => {
  const from = toScreen(view, { x: bounds.minX, y: bounds.minY });
  const to = toScreen(view, { x: bounds.maxX, y: bounds.maxY });
  return from.x < rule || from.y < rule || to.x > screen.width || to.y > screen.height;
};

/** Zooms by `factor`, keeping what lies under the screen point `at` where it is. */
export const zoomAt = (view: View, factor: number, at: Point): View => {
  const scale = within(view.scale * factor, leastScale, mostScale);
  const fixed = toTable(view, at);
  return { scale, left: fixed.x - at.x / scale, top: fixed.y - at.y / scale };
};

/** Moves the table under the hand by screen px. */
export const panBy = (view: View, dx: number, dy: number): View => ({
  scale: view.scale,
  left: view.left - dx / view.scale,
  top: view.top - dy / view.scale,
});

/** Two fingers that went from `before` to `after`: the two points of the table stay under them. */
export const pinch = (view: View, before: readonly [Point, Point], after: readonly [Point, Point]): View => {
  const middle = (pair: readonly [Point, Point]): Point => ({
    x: (pair[0].x + pair[1].x) / 2,
    y: (pair[0].y + pair[1].y) / 2,
  });
  const apart = (pair: readonly [Point, Point]) => Math.hypot(pair[1].x - pair[0].x, pair[1].y - pair[0].y);
  const from = middle(before);
  const to = middle(after);
  const factor = apart(before) > 0 ? apart(after) / apart(before) : 1;
  return zoomAt(panBy(view, to.x - from.x, to.y - from.y), factor, to);
};

/** The view after the screen changed size: what was in the middle stays there. */
export const resized = (view: View, before: Screen, after: Screen): View =>
  panBy(view, (after.width - before.width) / 2, (after.height - before.height) / 2);
