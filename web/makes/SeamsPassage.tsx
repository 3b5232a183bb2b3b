import { memo, useMemo, useState } from 'react';
import { drawSeamRoll, saySeam, sayWalk } from '../../src/draw/index.ts';
import { pieceOf, pointAlongSide, type SeamWalk, walkAll } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { AnyTwoEdges, type Pair, walkPair } from './AnyTwoEdges.tsx';
import { drawWalk } from './drawings.ts';
import { useMake } from './make-context.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';
import { SeamMends } from './SeamMends.tsx';
import { SeamRoll } from './SeamRoll.tsx';
import { sliderStop } from './steps.ts';

const words = webWords.make.seams;

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Seams that do not meet come first: they are what must be mended. */
const inOrder = (walks: readonly SeamWalk[]): readonly SeamWalk[] =>
  walks.toSorted((a, b) => Number(a.meets) - Number(b.meets));

/** Seams: every pair of edges walked, whether they meet, and by how much not. */
export const SeamsPassage = memo(() => {
  const say = useSay();
  const { garment } = useMake().altered;
  const walks = useMemo(() => inOrder(walkAll(garment)), [garment]);
  const [chosen, setChosen] = useState<string | null>(null);
  const current = useCurrentPassage() === 'seams';
  const narrow = useNarrow();
  const [pair, setPair] = useState<Pair | null>(null);
  const [at, setAt] = useState<number | null>(null);
  const paired = useMemo(() => (pair ? walkPair(garment, pair) : null), [pair, garment]);
  const sewn = walks.find((one) => one.seam.id === chosen) ?? walks[0];
  const walk = paired ?? sewn;
  const laid = useMemo((): Laid | null => {
    if (!current || !walk) return null;
    if (at !== null) {
      const drawing = drawSeamRoll(walk, garment, { unit: say.unit, locale, at, narrow });
      const said = say.words(words.rolledTo, { at: say.length(at, { purpose: 'amount' }) });
      const touch = pointAlongSide(pieceOf(garment, walk.seam.a.piece), walk.seam.a, Math.min(at, walk.lengthA));
      const grip = {
        label: words.rollByPoint,
        at: touch.point,
        perMillimetre: touch.tangent,
        amount: at,
        least: 0,
        most: Math.max(walk.lengthA, walk.lengthB),
        stop: sliderStop(say.unit),
        said,
        figure: '',
        onMove: setAt,
      };
      return { drawing, subject: `roll ${walk.seam.id}`, onSheet: true, grip };
    }
    return { drawing: drawWalk(walk, garment, say.unit, narrow), subject: `seam ${walk.seam.id}`, onSheet: true };
  }, [current, walk, garment, say, narrow, at]);
  useLay(laid);
  const missed = walks.filter((one) => !one.meets).length;
  return (
    <Passage id="seams" title={webWords.make.passages.seams}>
      <p>
        {missed === 0
          ? say.words(words.allMeet, { count: walks.length })
          : say.words(words.someMiss, { missed, count: walks.length })}
      </p>
      <p className="hint">{words.walkedHow}</p>
      <Choice
        legend={words.walked}
        name="seam"
        value={paired ? null : (sewn?.seam.id ?? null)}
        options={walks.map((one) => ({
          value: one.seam.id,
          label: saySeam(garment, one.seam),
          note: say.words(words.verdict, {
            verdict: upperFirst(sayWalk(one, say.unit, locale)),
            a: say.length(one.lengthA, { purpose: 'amount' }),
            b: say.length(one.lengthB, { purpose: 'amount' }),
          }),
        }))}
        onChange={(id) => {
          setChosen(id);
          setPair(null);
          setAt(null);
        }}
      />
      <AnyTwoEdges
        pair={pair}
        onWalk={(picked) => {
          setPair(picked);
          setAt(picked ? 0 : null);
        }}
      />
      {paired && (
        <p role="status">
          {say.words(words.picked, {
            a: say.length(paired.lengthA, { purpose: 'amount' }),
            b: say.length(paired.lengthB, { purpose: 'amount' }),
          })}
        </p>
      )}
      {walk && <SeamRoll walk={walk} at={at} onRoll={setAt} />}
      {walk && !paired && <SeamMends walk={walk} key={walk.seam.id} />}
    </Passage>
  );
});
