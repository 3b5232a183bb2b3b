import { memo, useMemo, useState } from 'react';
import { saySeam, sayWalk } from '../../src/draw/index.ts';
import { type SeamWalk, walkAll } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { drawWalk } from './drawings.ts';
import { useMake } from './make-context.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';

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
  const walk = walks.find((one) => one.seam.id === chosen) ?? walks[0];
  const laid = useMemo((): Laid | null => {
    if (!current || !walk) return null;
    return { drawing: drawWalk(walk, garment, say.unit, narrow), subject: `seam ${walk.seam.id}`, onSheet: true };
  }, [current, walk, garment, say.unit, narrow]);
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
        value={walk?.seam.id ?? null}
        options={walks.map((one) => ({
          value: one.seam.id,
          label: saySeam(garment, one.seam),
          note: say.words(words.verdict, {
            verdict: upperFirst(sayWalk(one, say.unit, locale)),
            a: say.length(one.lengthA, { purpose: 'amount' }),
            b: say.length(one.lengthB, { purpose: 'amount' }),
          }),
        }))}
        onChange={setChosen}
      />
    </Passage>
  );
});
