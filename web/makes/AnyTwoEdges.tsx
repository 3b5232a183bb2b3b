import { useState } from 'react';
import { sayEdgeOf } from '../../src/draw/index.ts';
import { type Garment, type Seam, type SeamSide, type SeamWalk, walkSeam } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { Select } from '../parts/Select.tsx';
import { useMake } from './make-context.ts';

const words = webWords.make.seams;

/** Two edges she picks, told as a seam that is not sewn. */
export interface Pair {
  readonly first: string;
  readonly second: string;
  readonly otherWay: boolean;
}

const sideNamed = (garment: Garment, name: string, reversed: boolean): SeamSide | null => {
  for (const piece of garment.pieces) {
    for (const { id } of piece.edges) if (`${piece.id}/${id}` === name) return { piece: piece.id, edge: id, reversed };
  }
  return null;
};

/** The two walked, or null where the garment has no such edges any more. */
export const walkPair = (garment: Garment, { first, second, otherWay }: Pair): SeamWalk | null => {
  const [a, b] = [sideNamed(garment, first, false), sideNamed(garment, second, !otherWay)];
  if (!a || !b) return null;
  const seam: Seam = { id: `${first} ${second}`, a, b, easeMin: 0, easeMax: 0, how: 'plain', notches: [] };
  return walkSeam(garment, seam);
};

interface AnyTwoEdgesProps {
  readonly pair: Pair | null;
  readonly onWalk: (pair: Pair | null) => void;
}

/** Walks edges that are not sewn to each other too: picked out of all there are. */
export const AnyTwoEdges = ({ pair, onWalk }: AnyTwoEdgesProps) => {
  const { garment } = useMake().altered;
  const options = garment.pieces.flatMap((piece) =>
    piece.edges.map(({ id }) => ({ value: `${piece.id}/${id}`, label: sayEdgeOf(piece, id) })),
  );
  const [first, setFirst] = useState(options[0]?.value ?? '');
  const [second, setSecond] = useState(options[1]?.value ?? '');
  const [otherWay, setOtherWay] = useState(false);
  return (
    <details>
      <summary>{words.anyTwo}</summary>
      <Select label={words.first} value={first} options={options} onChange={setFirst} />
      <Select label={words.second} value={second} options={options} onChange={setSecond} />
      <label className="check">
        <input type="checkbox" checked={otherWay} onChange={(event) => setOtherWay(event.target.checked)} />
        {words.otherWay}
      </label>
      <div className="verbs">
        <button type="button" className="verb verb-quiet" onClick={() => onWalk({ first, second, otherWay })}>
          {words.walkThese}
        </button>
        {pair && (
          <button type="button" className="verb verb-quiet" onClick={() => onWalk(null)}>
            {words.backToSeams}
          </button>
        )}
      </div>
    </details>
  );
};
