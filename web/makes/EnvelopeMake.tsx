import { type ReactNode, useCallback, useMemo, useState } from 'react';
import { latestMeasures, type Wearer } from '../../src/body/index.ts';
import type { Cloth } from '../../src/cloth/index.ts';
import { envelopeFigures, type Fit, fitPattern } from '../../src/fit/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { Envelope } from '../../src/pattern/index.ts';
import { envelopePageWords, webWords } from '../../src/words/index.ts';
import { useDesk } from '../app/desk-context.ts';
import { pathTo } from '../app/router.ts';
import type { Entry } from '../documents/entry.ts';
import { Convert } from '../envelopes/Convert.tsx';
import { drawClothNeeded, type ReckonedCloth } from '../envelopes/cloth-picture.ts';
import { Link } from '../parts/Link.tsx';
import { Select } from '../parts/Select.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { type CardsInHand, CardsPassage, cardsOf } from './CardsPassage.tsx';
import { FitPassage } from './FitPassage.tsx';
import type { FitInHand } from './fit-in-hand.ts';
import { Passage, PassageLinks, Passages, useCurrentPassage } from './Passages.tsx';
import { withCards } from './steps.ts';
import { useArrival } from './useArrival.ts';

const words = envelopePageWords.make;

const passages = (['fit', 'alterations', 'seams', 'layout', 'print'] as const).map((id) => ({
  id,
  title: webWords.make.passages[id],
}));

interface EnvelopeMakeProps {
  readonly entry: Entry<Make>;
  readonly wearer: Wearer;
  readonly envelope: Envelope;
  readonly cloth: Cloth | null;
}

/** Ease of the size in hand after the cards that are carried out: the finished measurements they change, level by level. */
const easeAfterCards = (fit: Fit, of: Pick<CardsInHand, 'make' | 'envelope' | 'view' | 'size'>) => {
  const cells = fit.sizes.find((one) => one.size === of.size)?.cells ?? [];
  const changes = cardsOf(of).flatMap(({ step, card }) => (step.on && card.ok ? card.value.finished : []));
  return cells.map((cell) => {
    const by = changes.filter((change) => change.of === cell.level).reduce((sum, change) => sum + change.by, 0);
    return by === 0 ? cell : { ...cell, finished: cell.finished + by, ease: cell.ease + by };
  });
};

/** A passage that wants the pieces says so, and lays nothing new on the table. */
const WantsPieces = ({ id, children }: { id: keyof typeof words.wantsPieces; children?: ReactNode }) => (
  <Passage id={id} title={webWords.make.passages[id]}>
    <p>{words.wantsPieces[id]}</p>
    {children}
  </Passage>
);

interface LayClothProps {
  readonly envelope: Envelope;
  readonly size: string;
  readonly view: string | null;
  readonly reckoned: ReckonedCloth | null;
}

const LayCloth = ({ envelope, size, view, reckoned }: LayClothProps) => {
  const current = useCurrentPassage() === 'layout';
  const narrow = useNarrow();
  const laid = useMemo((): Laid | null => {
    const drawing = current ? drawClothNeeded(envelope, size, { narrow, row: -1, view, reckoned }) : null;
    return drawing && { drawing, subject: `cloth needed ${envelope.name} ${view} ${size} ${narrow}` };
  }, [current, envelope, size, narrow, view, reckoned]);
  useLay(laid);
  return null;
};

/** Which of the envelope's views is made. */
const ViewChoice = ({ of, envelope, view }: { of: CardsInHand; envelope: Envelope; view: string | null }) => (
  <div className="stack">
    <p>
      {words.known} <Link to={pathTo('envelope', of.make.pattern)}>{words.toEnvelope}</Link>
    </p>
    {envelope.views.length > 0 && (
      <Select
        label={words.view}
        value={view ?? ''}
        options={envelope.views.map((one) => ({
          value: one.id,
          label: [one.name, one.about].filter(Boolean).join(': '),
        }))}
        onChange={(chosen) => of.change((before) => ({ ...before, view: chosen }), 'view')}
      />
    )}
  </div>
);

/** A make whose pattern is known by its envelope alone: fit and cards from its figures, and what has to wait for the pieces. */
export const EnvelopeMake = ({ entry, wearer, envelope, cloth }: EnvelopeMakeProps) => {
  const desk = useDesk();
  const { id, body: make } = entry;
  useArrival();
  const [reckoned, setReckoned] = useState<ReckonedCloth | null>(null);
  const view = envelope.views.find((one) => one.id === make.view)?.id ?? envelope.views[0]?.id ?? null;
  const measures = useMemo(() => latestMeasures(wearer), [wearer]);
  const figures = useMemo(() => envelopeFigures(envelope, view), [envelope, view]);
  const fit = useMemo(
    () => fitPattern({ measures, pattern: figures, figures, ...(cloth ? { cloth } : {}) }),
    [measures, figures, cloth],
  );
  const recommended = fit.ok ? fit.value.ways[fit.value.recommended]?.startingSize : undefined;
  const middle = envelope.sizes[Math.floor(envelope.sizes.length / 2)] ?? '';
  const size = [make.size, recommended].find((one) => one && envelope.sizes.includes(one)) ?? middle;
  const change = useCallback(
    (apply: (make: Make) => Make, name: string) => desk.edit<Make>(id, apply, name),
    [desk, id],
  );
  const cards = useMemo(
    (): CardsInHand => ({ id, make, envelope, view, size, change }),
    [id, make, envelope, view, size, change],
  );
  const alteredEase = useMemo(
    () => (fit.ok && make.steps.length > 0 ? easeAfterCards(fit.value, { make, envelope, view, size }) : []),
    [fit, make, envelope, view, size],
  );
  const fitInHand = useMemo(
    (): FitInHand => ({
      make,
      wearer,
      pattern: { id: make.pattern, name: envelope.name },
      sizes: envelope.sizes,
      size,
      fit,
      alteredEase,
      change,
      take: withCards,
      before: <ViewChoice of={cards} envelope={envelope} view={view} />,
    }),
    [make, wearer, envelope, size, fit, alteredEase, change, cards, view],
  );
  return (
    <Passages>
      <PassageLinks label={webWords.make.passagesLabel} passages={passages} />
      <FitPassage of={fitInHand} />
      <CardsPassage of={cards} />
      <WantsPieces id="seams" />
      <WantsPieces id="layout">
        <LayCloth envelope={envelope} size={size} view={view} reckoned={reckoned} />
        <Convert envelope={envelope} place={id} view={view} size={size} cloth={cloth} onReckoned={setReckoned} />
      </WantsPieces>
      <WantsPieces id="print" />
    </Passages>
  );
};
