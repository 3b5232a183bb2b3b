import { useId } from 'react';
import { sayId } from '../../src/draw/index.ts';
import { pieceOf, type SeamWalk } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { crossingOf } from './crossing.ts';
import { useMake } from './make-context.ts';
import { sliderStop } from './steps.ts';

const words = webWords.make.seams;

interface SeamRollProps {
  readonly walk: SeamWalk;
  /** How far it is rolled, mm; null while both edges lie beside each other. */
  readonly at: number | null;
  readonly onRoll: (at: number | null) => void;
}

/** A slider that rolls one edge along the other, and in words what is seen: notches, the rest, the crossing line. */
export const SeamRoll = ({ walk, at, onRoll }: SeamRollProps) => {
  const say = useSay();
  const { garment } = useMake().altered;
  const id = useId();
  const stop = sliderStop(say.unit);
  const far = Math.max(walk.lengthA, walk.lengthB);
  const said = say.words(words.rolledTo, { at: say.length(at ?? 0, { purpose: 'amount' }) });
  const longer = pieceOf(garment, walk.difference > 0 ? walk.seam.a.piece : walk.seam.b.piece);
  return (
    <div>
      <div className="share">
        <label htmlFor={id}>
          {words.roll}: {said}
        </label>
        <input
          id={id}
          type="range"
          min={0}
          max={Math.ceil(far / stop)}
          step={1}
          value={Math.round((at ?? 0) / stop)}
          aria-valuetext={said}
          onChange={(event) => onRoll(Math.min(Number(event.target.value) * stop, far))}
        />
      </div>
      <p className="hint">{words.rollHint}</p>
      {at !== null && (
        <div className="verbs">
          <button type="button" className="verb verb-quiet" onClick={() => onRoll(null)}>
            {words.beside}
          </button>
        </div>
      )}
      <ul>
        {walk.notches.map((one) => (
          <li key={`${one.a} ${one.b}`}>
            {say.words(one.meets ? words.notchMeets : words.notchMisses, {
              a: sayId(one.a).toLowerCase(),
              b: sayId(one.b).toLowerCase(),
              apart: say.length(Math.abs(one.apart), { purpose: 'fine' }),
            })}
          </li>
        ))}
        {!walk.meets && (
          <li>
            {say.words(words.differs, {
              piece: longer.name,
              by: say.length(Math.abs(walk.difference), { purpose: 'fine' }),
            })}
          </li>
        )}
        {walk.ends.map(({ end, turn }) => (
          <li key={end}>
            {say.words(words.crossings[crossingOf(turn)], {
              end: words.ends[end],
              degrees: Math.round((Math.abs(turn) * 180) / Math.PI),
            })}
          </li>
        ))}
      </ul>
    </div>
  );
};
