import { useState } from 'react';
import { alterationCatalogue } from '../../src/alter/index.ts';
import { sayId } from '../../src/draw/index.ts';
import type { AlterationStep, SeamWalk } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { Select } from '../parts/Select.tsx';
import { crossingOf } from './crossing.ts';
import { garmentNext } from './grip.ts';
import { useMake } from './make-context.ts';
import { addStep } from './steps.ts';

const words = webWords.make.seams;

/** Where a seam has nothing to take in yet, what is allowed to begin with, mm. */
const begunWith = 5;

/** What takes in the whole difference, in whole millimetres. */
const allowing = ({ difference }: SeamWalk): number => Math.max(Math.ceil(Math.abs(difference)), begunWith);

/** Moves b's notch to where a's lies, or where they meet both a little on. */
const notchMove = (walk: SeamWalk, index: number, inNext: (id: string) => string): AlterationStep['params'] => {
  const { b } = walk.seam;
  const meeting = walk.notches[index];
  const notch = `${inNext(b.piece)}/${inNext(b.piece) === b.piece ? (meeting?.b ?? '') : (meeting?.b ?? '').replace(/-left$/, '')}`;
  if (!meeting || meeting.meets) return { notch, amount: begunWith, with: 'with-mate' };
  return { notch, amount: b.reversed ? -meeting.apart : meeting.apart, with: 'alone' };
};

/** What can be done about a seam: each adds a step to the alteration list. */
export const SeamMends = ({ walk }: { readonly walk: SeamWalk }) => {
  const { altered, size, make, change } = useMake();
  const next = garmentNext(size.garment, altered);
  const missed = walk.notches.findIndex(({ meets }) => !meets);
  const [picked, setPicked] = useState<number | null>(null);
  const [said, setSaid] = useState('');
  const index = picked ?? Math.max(missed, 0);
  // Where right and left differ the list still works on one half, alike on both sides.
  const own = walk.seam.id;
  const seam = next.seams.some(({ id }) => id === own) ? own : own.replace(/-left$/, '');
  const pieceInNext = (id: string) => (next.pieces.some((one) => one.id === id) ? id : id.replace(/-left$/, ''));
  const there = next.seams.some(({ id }) => id === seam);
  const add = (id: string, params: AlterationStep['params']) => {
    const alteration = alterationCatalogue.find((one) => one.id === id);
    if (!alteration) return;
    change((before) => addStep(before, alteration, params), `mend ${seam} ${make.steps.length + 1}`);
    setSaid(words.mended);
  };
  const trueSeam = alterationCatalogue.find(({ id }) => id === 'true-seam');
  const seams = trueSeam?.options?.(next, 'seam', {}) ?? [];
  const ends = seams.includes(seam) ? (trueSeam?.options?.(next, 'end', { seam }) ?? []) : [];
  const bends = (end: 'start' | 'end') => walk.ends.some((one) => one.end === end && crossingOf(one.turn) === 'turns');
  /** A seam that meets and runs on smoothly at an end would not be changed there. */
  const toTrue = (end: 'start' | 'end') => ends.includes(end) && (!walk.meets || bends(end));
  const sew = (how: string) => add('sew-seam', { seam, how, amount: allowing(walk) });
  const trueAt = (end: 'start' | 'end') => add('true-seam', { seam, end, which: 'both', amount: 0 });
  const verb = (label: string, run: () => void, disabled = false) => (
    <button type="button" className="verb verb-quiet" disabled={disabled} onClick={run}>
      {label}
    </button>
  );
  if (!there) {
    return (
      <div>
        <h3>{words.mend}</h3>
        <p>{words.mendElsewhere}</p>
      </div>
    );
  }
  return (
    <div>
      <h3>{words.mend}</h3>
      <p className="hint">
        {words.mendHint} {altered.apart && words.mendAlike}{' '}
        {walk.meets && !toTrue('start') && !toTrue('end') && words.nothingToTrue}
      </p>
      <div className="verbs">
        {verb(words.trueStart, () => trueAt('start'), !toTrue('start'))}
        {verb(words.trueEnd, () => trueAt('end'), !toTrue('end'))}
        {verb(words.ease, () => sew('eased'))}
        {verb(words.gather, () => sew('gathered'))}
        {verb(words.stretch, () => sew('stretched'))}
      </div>
      {walk.notches.length > 0 && (
        <>
          {walk.notches.length > 1 && (
            <Select
              label={words.notch}
              value={String(index)}
              options={walk.notches.map((one, i) => ({ value: String(i), label: sayId(one.b) }))}
              onChange={(value) => setPicked(Number(value))}
            />
          )}
          <div className="verbs">
            {verb(words.moveNotch, () => add('move-notch', notchMove(walk, index, pieceInNext)))}
          </div>
        </>
      )}
      <p role="status">{said}</p>
    </div>
  );
};
