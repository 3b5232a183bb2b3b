import { type KeyboardEvent, memo } from 'react';
import { type Mark, marksBounds, type PathMark, type TextMark } from '../../../src/draw/index.ts';
import { type Path, pathToSvg } from '../../../src/geometry/index.ts';

/** Words on the table are never drawn smaller than this many px. */
const leastType = 16;
/** Words that would have to grow more than this to be readable are left out until she zooms in; names (bold) always stay. */
const mostGrowth = 2.2;

const written = new WeakMap<PathMark, string>();

/** A mark's path data; marks are values, so each is written once. */
const pathData = (mark: PathMark): string => {
  const known = written.get(mark);
  if (known !== undefined) return known;
  const data = mark.paths.map((path: Path) => pathToSvg(path, 2)).join('');
  written.set(mark, data);
  return data;
};

const PathDrawn = memo(({ mark }: { mark: PathMark }) => {
  const data = pathData(mark);
  const kind = `ink ink-${mark.ink}${mark.filled ? ' filled' : ''}`;
  if (mark.ink !== 'paper') {
    // Only cloth brings a colour of its own.
    const own = mark.ink === 'cloth' && mark.filled && mark.colour ? { fill: mark.colour } : undefined;
    return <path className={kind} d={data} style={own} />;
  }
  return (
    <>
      <path className="paper-shadow" d={data} />
      <path className={kind} d={data} />
    </>
  );
});

/** Breadth and height of what a group draws in lines, mm: the room its words have. Marks are values, so it is reckoned once. */
const rooms = new WeakMap<readonly Mark[], number>();

const roomOf = (marks: readonly Mark[]): number => {
  const known = rooms.get(marks);
  if (known !== undefined) return known;
  const bounds = marksBounds(marks.filter((mark) => mark.kind === 'path'));
  const room = bounds ? Math.max(bounds.maxX - bounds.minX, bounds.maxY - bounds.minY) : Infinity;
  rooms.set(marks, room);
  return room;
};

const TextDrawn = memo(({ mark, scale, room }: { mark: TextMark; scale: number; room: number }) => {
  const seen = mark.size * scale;
  if (mark.weight !== 'bold' && seen * mostGrowth < leastType) return null;
  // A name that would have to grow far beyond the piece it names would only cover its neighbours.
  if (seen * mostGrowth < leastType && (leastType / scale) * 0.5 * mark.text.length > room * 1.2) return null;
  const size = Math.max(mark.size, leastType / scale);
  const turn = mark.angle ? `rotate(${(mark.angle * 180) / Math.PI} ${mark.at.x} ${mark.at.y})` : undefined;
  return (
    <text
      className={`word word-${mark.ink}`}
      x={mark.at.x}
      y={mark.at.y}
      fontSize={size}
      textAnchor={mark.anchor}
      fontWeight={mark.weight === 'bold' ? 700 : 400}
      transform={turn}
    >
      {mark.text}
    </text>
  );
});

interface MarksProps {
  readonly marks: readonly Mark[];
  readonly scale: number;
  /** The length words may take, mm; see roomOf. */
  readonly room?: number;
  readonly picked?: string | null | undefined;
  readonly onPick?: ((id: string) => void) | undefined;
}

const onEnter = (act: () => void) => (event: KeyboardEvent) => {
  if (event.key !== 'Enter' && event.key !== ' ') return;
  event.preventDefault();
  event.stopPropagation();
  act();
};

export const Marks = memo(({ marks, scale, room = Infinity, picked, onPick }: MarksProps) => (
  <>
    {marks.map((mark, index) => {
      // Marks have no identity of their own; their order is what they are told apart by.
      const key = mark.kind === 'group' ? `${mark.id} ${index}` : index;
      if (mark.kind === 'path') return <PathDrawn key={key} mark={mark} />;
      if (mark.kind === 'text') return <TextDrawn key={key} mark={mark} scale={scale} room={room} />;
      const inner = (
        <Marks marks={mark.marks} scale={scale} room={roomOf(mark.marks)} picked={picked} onPick={onPick} />
      );
      // Unless it can be picked, what a screen reader says of it stands beside the table as words.
      if (!onPick) return <g key={key}>{inner}</g>;
      return (
        // biome-ignore lint/a11y/useSemanticElements: a button element cannot stand inside a drawing.
        <g
          key={key}
          role="button"
          tabIndex={0}
          aria-label={mark.label}
          aria-pressed={picked === mark.id}
          className={picked === mark.id ? 'thing picked' : 'thing'}
          onClick={() => onPick(mark.id)}
          onKeyDown={onEnter(() => onPick(mark.id))}
        >
          {inner}
        </g>
      );
    })}
  </>
));
