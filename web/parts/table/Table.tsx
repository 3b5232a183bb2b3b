import { type CSSProperties, type KeyboardEvent, useCallback, useId, useRef, useState } from 'react';
import type { Mark } from '../../../src/draw/index.ts';
import type { Point } from '../../../src/geometry/index.ts';
import type { Unit } from '../../../src/units/index.ts';
import { webWords } from '../../../src/words/index.ts';
import { GripHandle } from './GripHandle.tsx';
import { type Laid, sheetBounds, useLaid } from './laid.ts';
import { Marks } from './Marks.tsx';
import { Rule } from './Rule.tsx';
import { Tape, type TapeEnds } from './Tape.tsx';
import { moveByKey, useHands, zoomStep } from './useHands.ts';
import { useScreen } from './useScreen.ts';
import { useView } from './useView.ts';
import { type Screen, toTable, type View, zoomAt } from './view.ts';

const words = webWords.table;

/** How long a tape is when it is taken up, px. */
const firstTape = 96;

const Sheet = ({ laid }: { laid: Laid }) => {
  const { minX, maxX, minY, maxY } = sheetBounds(laid);
  const box = { x: minX, y: minY, width: maxX - minX, height: maxY - minY };
  return (
    <>
      <rect className="paper-shadow" {...box} />
      <rect className="ink-paper filled" {...box} />
    </>
  );
};

const groupLabels = (marks: readonly Mark[]): readonly string[] =>
  marks.flatMap((mark) => (mark.kind === 'group' ? [mark.label.replace(/\.+$/, ''), ...groupLabels(mark.marks)] : []));

interface SurfaceProps {
  readonly laid: Laid;
  readonly view: View;
  readonly screen: Screen;
}

const Surface = ({ laid, view, screen }: SurfaceProps) => (
  <svg className="surface" width={screen.width} height={screen.height} role="presentation">
    <g
      transform={`matrix(${view.scale} 0 0 ${view.scale} ${-view.left * view.scale} ${-view.top * view.scale})`}
      // One px of the screen in the drawing's mm: shadows and halos keep their size while the table is zoomed.
      style={{ '--px': 1 / view.scale } as CSSProperties}
    >
      {laid.onSheet && <Sheet laid={laid} />}
      {laid.photograph && <image className="photograph" x={0} y={0} {...laid.photograph} />}
      <g className={laid.onSheet ? 'on-sheet' : undefined}>
        <Marks marks={laid.drawing.marks} scale={view.scale} picked={laid.picked} onPick={laid.onPick} />
      </g>
    </g>
  </svg>
);

/** The table: one drawing surface for the whole program, mounted once. Pages lay drawings on it with `useLay`. */
export const Table = ({ unit }: { unit: Unit }) => {
  const laid = useLaid();
  const element = useRef<HTMLDivElement>(null);
  const screen = useScreen(element);
  const { view, move, showAll } = useView(laid, screen);
  const [tape, setTape] = useState<TapeEnds | null>(null);
  const help = useId();
  const drawTape = (from: Point, to: Point) => view && setTape({ from: toTable(view, from), to: toTable(view, to) });
  useHands(element, move, tape ? drawTape : null);

  const middle = { x: (screen?.width ?? 0) / 2, y: (screen?.height ?? 0) / 2 };
  const zoom = (factor: number) => move((now) => zoomAt(now, factor, middle));
  const key = (event: KeyboardEvent) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (moveByKey(event.key, move, showAll, middle)) event.preventDefault();
  };
  const takeTape = useCallback(() => {
    if (!view || !screen) return;
    // Short and in the middle, for those who move its ends by keys; a hand draws it anew from where it presses.
    const [x, y] = [screen.width / 2, screen.height / 2];
    setTape((now) =>
      now ? null : { from: toTable(view, { x: x - firstTape / 2, y }), to: toTable(view, { x: x + firstTape / 2, y }) },
    );
  }, [view, screen]);

  const shown = laid && view && screen && screen.width > 0 && screen.height > 0;
  const labels = laid ? groupLabels(laid.drawing.marks) : [];
  return (
    <section className="table" aria-label={words.region}>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset is for a form's fields. */}
      <div
        ref={element}
        id="table-top"
        className={tape ? 'table-top measuring' : 'table-top'}
        role="group"
        aria-label={laid?.drawing.label ?? words.bare}
        aria-describedby={help}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: it is moved and zoomed by keys.
        tabIndex={0}
        onKeyDown={key}
      >
        {shown && <Surface laid={laid} view={view} screen={screen} />}
        {shown && (
          <svg className="surface rule-surface" width={screen.width} height={screen.height} aria-hidden="true">
            <Rule view={view} screen={screen} unit={unit} />
          </svg>
        )}
        {shown && laid.grip && <GripHandle grip={laid.grip} view={view} />}
        {shown && tape && <Tape ends={tape} view={view} unit={unit} onMove={setTape} />}
      </div>
      <p id={help} className="unseen">
        {words.keys}
      </p>
      {labels.length > 0 && !laid?.onPick && <p className="unseen">{labels.join('. ')}.</p>}
      <div className="table-foot">
        <p className="table-name" aria-hidden="true">
          {laid?.drawing.label ?? words.bare}
        </p>
        <div className="table-verbs">
          <button type="button" onClick={() => zoom(1 / zoomStep)}>
            {words.further}
          </button>
          <button type="button" onClick={() => zoom(zoomStep)}>
            {words.closer}
          </button>
          <button type="button" onClick={showAll}>
            {words.seeAll}
          </button>
          <button type="button" onClick={takeTape} aria-pressed={tape !== null}>
            {words.measure}
          </button>
        </div>
      </div>
    </section>
  );
};
