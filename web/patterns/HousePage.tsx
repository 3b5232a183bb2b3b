import { useMemo, useState } from 'react';
import type { HouseChoice, HousePattern } from '../../src/drafting/index.ts';
import { drawFlatSketch } from '../../src/draw/index.ts';
import type { Pattern, Size } from '../../src/pattern/index.ts';
import { webHouseWords, webWords } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { drawGarment, tableAspect } from '../parts/draw-garment.ts';
import { Link } from '../parts/Link.tsx';
import { Page } from '../parts/Page.tsx';
import { Select } from '../parts/Select.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { BodyChart } from './BodyChart.tsx';
import { ClothAndNotions } from './ClothAndNotions.tsx';
import { ClothNeeded } from './ClothNeeded.tsx';
import { drawOnePiece, drawSizesNested, sayPieceCut } from './drawings.ts';
import { FinishedTable } from './FinishedTable.tsx';
import { MakesFrom } from './MakesFrom.tsx';
import { OrderOfWork } from './OrderOfWork.tsx';

const words = webWords.patterns;

/** What of a pattern lies on the table. */
export type Shown = 'sketch' | 'all' | 'nest' | `piece:${string}`;

interface OnTable {
  readonly house: HousePattern | null;
  readonly pattern: Pattern;
  readonly size: Size;
  readonly shown: Shown;
  readonly pick: (id: string) => void;
}

/** Lays a pattern's sketch, its pieces, one of them or all sizes nested. */
const usePatternOnTable = ({ house, pattern, size, shown, pick }: OnTable): void => {
  const say = useSay();
  const narrow = useNarrow();
  const laid = useMemo((): Laid => {
    const subject = `${pattern.id} ${pattern.view?.id ?? ''} ${narrow}`;
    const pieceId = shown.startsWith('piece:') ? shown.slice('piece:'.length) : null;
    const piece = size.garment.pieces.find((one) => one.id === pieceId);
    if (house && shown === 'sketch') {
      const drawing = drawFlatSketch(house.sketch(size.garment, pattern.view?.id), pattern.name, {
        aspect: tableAspect,
      });
      return { drawing, subject: `${subject} sketch`, onSheet: true };
    }
    if (piece) return { drawing: drawOnePiece(piece, size.id, say.unit), subject: `${subject} ${piece.id}` };
    if (shown === 'nest') {
      const label = say.words(words.nestLabel, { name: pattern.name });
      return { drawing: drawSizesNested(pattern, size.id, label, say.unit, narrow), subject: `${subject} nest` };
    }
    const name = say.words(words.onTable, { name: pattern.name, size: size.id });
    return {
      drawing: drawGarment(size.garment, name, { unit: say.unit, locale, size: size.id, narrow }),
      subject: `${subject} all`,
      onPick: pick,
    };
  }, [house, pattern, size, shown, say, pick, narrow]);
  useLay(laid);
};

/** The size in the middle of a pattern's sizes: what is shown until another is chosen. */
const middleOf = (pattern: Pattern): Size => {
  const middle = pattern.sizes[Math.floor((pattern.sizes.length - 1) / 2)];
  if (!middle) throw new Error(`the pattern ${pattern.id} has no size`);
  return middle;
};

/** Size shown and what of it lies on the table, for a pattern's page. */
export const usePatternShown = (house: HousePattern | null, pattern: Pattern) => {
  const [sizeId, setSizeId] = useState<string | null>(null);
  const [shown, setShown] = useState<Shown>(house ? 'sketch' : 'all');
  const size = pattern.sizes.find((one) => one.id === sizeId) ?? middleOf(pattern);
  const pick = useMemo(() => (piece: string) => setShown(`piece:${piece}`), []);
  // A piece of another view may not be in this one.
  const there = !shown.startsWith('piece:') || size.garment.pieces.some((one) => `piece:${one.id}` === shown);
  usePatternOnTable({ house, pattern, size, shown: there ? shown : 'all', pick });
  return { size, setSizeId, shown: there ? shown : ('all' as const), setShown };
};

/** Which size, and what of it lies on the table. */
export const PiecesPassage = ({
  pattern,
  sketched,
  size,
  setSizeId,
  shown,
  setShown,
}: {
  readonly pattern: Pattern;
  readonly sketched: boolean;
  readonly size: Size;
  readonly setSizeId: (id: string) => void;
  readonly shown: Shown;
  readonly setShown: (shown: Shown) => void;
}) => {
  const say = useSay();
  return (
    <section className="passage" aria-labelledby="pieces">
      <h2 id="pieces">{words.pieces}</h2>
      <Select
        label={words.size}
        value={size.id}
        options={pattern.sizes.map((one) => ({ value: one.id, label: one.id }))}
        onChange={setSizeId}
      />
      <Choice<Shown>
        legend={words.show}
        name="shown"
        value={shown}
        options={[
          ...(sketched ? [{ value: 'sketch' as const, label: webHouseWords.sketch }] : []),
          { value: 'all', label: words.showAll },
          { value: 'nest', label: words.showNest },
          ...size.garment.pieces.map((piece) => ({
            value: `piece:${piece.id}` as const,
            label: piece.name,
            note: sayPieceCut(piece, say.unit),
          })),
        ]}
        onChange={setShown}
      />
    </section>
  );
};

/** Charts, finished measurements, and what to buy: the same for any pattern with pieces. */
export const Figures = ({ pattern, size }: { pattern: Pattern; size: Size }) => (
  <>
    <section className="passage" aria-labelledby="chart">
      <h2 id="chart">{words.chartHead}</h2>
      <BodyChart pattern={pattern} chosen={size.id} />
    </section>
    <section className="passage" aria-labelledby="finished">
      <h2 id="finished">{words.finished}</h2>
      <FinishedTable pattern={pattern} chosen={size.id} />
    </section>
    <section className="passage" aria-labelledby="cloth">
      <h2 id="cloth">{words.advice}</h2>
      <ClothAndNotions pattern={pattern} size={size} />
    </section>
    <section className="passage" aria-labelledby="needed">
      <h2 id="needed">{webHouseWords.cloth}</h2>
      <ClothNeeded pattern={pattern} size={size} />
    </section>
  </>
);

interface HousePageProps {
  readonly id: string;
  readonly house: HousePattern;
  readonly pattern: Pattern;
  readonly choice: HouseChoice;
  readonly choose: (choice: HouseChoice) => void;
}

/** A house pattern: its views and cups, how it looks, its charts, what it takes, and the order of work. */
export const HousePage = ({ id, house, pattern, choice, choose }: HousePageProps) => {
  const say = useSay();
  const inHand = usePatternShown(house, pattern);
  const view = choice.view ?? house.views[0]?.id ?? '';
  const cup = choice.cup ?? pattern.draftedCup;
  const start = `/makes/new?pattern=${encodeURIComponent(id)}&view=${encodeURIComponent(view)}`;
  return (
    <Page title={pattern.name}>
      <p>{pattern.about}</p>
      {house.views.length > 1 && (
        <Choice
          legend={webHouseWords.view}
          name="view"
          value={view}
          options={house.views.map((one) => ({ value: one.id, label: one.name, note: one.about }))}
          onChange={(next) => choose({ ...choice, view: next })}
        />
      )}
      {house.cups.length > 0 && (
        <Select
          label={webHouseWords.cup}
          hint={webHouseWords.cupHint}
          value={String(cup ?? '')}
          options={house.cups.map((one) => ({ value: String(one), label: say.length(one) }))}
          onChange={(next) => choose({ ...choice, cup: Number(next) })}
        />
      )}
      <div className="verbs">
        <Link to={start} className="verb verb-next">
          {words.makeOf}
        </Link>
      </div>
      {house.cautions.length > 0 && (
        <section className="passage caution" aria-labelledby="cautions">
          <h2 id="cautions">{webHouseWords.cautions}</h2>
          {house.cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
        </section>
      )}
      <PiecesPassage pattern={pattern} sketched {...inHand} />
      <Figures pattern={pattern} size={inHand.size} />
      <OrderOfWork house={house} view={view} />
      <MakesFrom pattern={id} />
    </Page>
  );
};
