import { useCallback, useMemo, useState } from 'react';
import { latestMeasures, type Wearer } from '../../src/body/index.ts';
import {
  type ChartKind,
  doubtsStanding,
  type Envelope,
  envelopeDoubts,
  type FinishedOf,
} from '../../src/pattern/index.ts';
import { envelopePageWords, webWords } from '../../src/words/index.ts';
import { useDesk, useDocument, useDocuments } from '../app/desk-context.ts';
import type { Entry } from '../documents/entry.ts';
import { PassageLinks, Passages } from '../makes/Passages.tsx';
import { Link } from '../parts/Link.tsx';
import { Page, Waiting } from '../parts/Page.tsx';
import { Removal } from '../parts/Removal.tsx';
import { Standing } from '../parts/Standing.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useSettled } from '../parts/useSettled.ts';
import { BodyPassage } from './BodyPassage.tsx';
import { ClothPassage } from './ClothPassage.tsx';
import { type EnvelopeInHand, EnvelopeProvider, type ShownWearer } from './envelope-context.ts';
import { FinishedPassage } from './FinishedPassage.tsx';
import { unitOf } from './figures.ts';
import { OwnedPassage } from './OwnedPassage.tsx';
import { PhotographsPassage } from './PhotographsPassage.tsx';
import { SheetPassage } from './SheetPassage.tsx';
import { useLayEnvelope } from './useLayEnvelope.ts';
import { ViewsPassage } from './ViewsPassage.tsx';
import { WhatPassage } from './WhatPassage.tsx';

const words = envelopePageWords;

const passages = (['what', 'views', 'body', 'finished', 'cloth', 'sheet', 'photographs', 'owned'] as const).map(
  (id) => ({ id, title: words.passages[id] }),
);

/** Wearers with measures, whose body can be shown on a chart. */
const useShownWearers = (): readonly ShownWearer[] => {
  const asked = useDocuments<Wearer>('wearer');
  return useMemo(
    () =>
      asked.state === 'here'
        ? asked.value.map(({ id, body }) => ({
            id,
            name: body.name,
            measures: latestMeasures(body),
            like: body.comparedWith,
          }))
        : [],
    [asked],
  );
};

const Lay = () => {
  useLayEnvelope();
  return null;
};

/** A pause this long, ms, and what was typed is doubted; sooner would doubt half a figure. */
const patience = 700;

const Opened = ({ entry }: { entry: Entry<Envelope> }) => {
  const desk = useDesk();
  const { id, body: envelope } = entry;
  const wearers = useShownWearers();
  const [chosen, showWearer] = useState<string | null>(null);
  const [photograph, showPhotograph] = useState<string | null>(null);
  const [row, setRow] = useState<EnvelopeInHand['row']>(null);
  const workIn = useCallback(
    (chart: ChartKind, at: number) =>
      setRow((before) => (before?.chart === chart && before.row === at ? before : { chart, row: at })),
    [],
  );
  const [measuring, setMeasuring] = useState<FinishedOf | null>(null);
  const settled = useSettled(envelope, patience);
  const found = useMemo(() => envelopeDoubts(settled), [settled]);
  // What she has just mended is not doubted any more, and what she has just begun is not doubted yet.
  const doubts = useMemo(() => doubtsStanding(found, settled, envelope), [found, settled, envelope]);
  const wearer =
    chosen === null
      ? (wearers.find((one) => one.like === envelope.for) ?? wearers[0] ?? null)
      : (wearers.find((one) => one.id === chosen) ?? null);
  const change = useCallback(
    (apply: (envelope: Envelope) => Envelope, name: string) => desk.edit<Envelope>(id, apply, name),
    [desk, id],
  );
  const inHand = useMemo(
    (): EnvelopeInHand => ({
      id,
      envelope,
      unit: unitOf(envelope),
      doubts,
      wearers,
      wearer,
      showWearer,
      photograph,
      showPhotograph,
      row,
      workIn,
      measuring,
      setMeasuring,
      change,
    }),
    [id, envelope, doubts, wearers, wearer, photograph, row, workIn, measuring, change],
  );
  return (
    <EnvelopeProvider value={inHand}>
      <Passages>
        <Lay />
        <PassageLinks label={words.passagesLabel} passages={passages} />
        <WhatPassage />
        <ViewsPassage />
        <BodyPassage />
        <FinishedPassage />
        <ClothPassage />
        <SheetPassage />
        <PhotographsPassage />
        <OwnedPassage />
      </Passages>
    </EnvelopeProvider>
  );
};

/** A bought pattern, brought in from what is printed on its envelope, in the order it is printed. */
const EnvelopePage = ({ id }: { id: string }) => {
  const asked = useDocument<Envelope>(id);
  if (asked.state === 'asking') return <Waiting what={webWords.shell.opening} />;
  if (asked.state === 'refused') return <Trouble words={asked.words} />;
  const { body } = asked.value;
  return (
    <Page title={body.name}>
      <Standing entry={asked.value} />
      <div className="verbs">
        <Link to={`/makes/new?pattern=${encodeURIComponent(id)}`} className="verb verb-next">
          {words.makeOf}
        </Link>
      </div>
      <Opened entry={asked.value} />
      <Removal id={id} name={body.name} verb={words.remove} back="/patterns" />
    </Page>
  );
};

export default EnvelopePage;
