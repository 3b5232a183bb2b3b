import { useCallback, useEffect, useMemo } from 'react';
import { latestMeasures, type Wearer } from '../../src/body/index.ts';
import type { Cloth } from '../../src/cloth/index.ts';
import { fitPattern, patternFigures } from '../../src/fit/index.ts';
import type { Make } from '../../src/make/index.ts';
import type { Pattern } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useDesk, useDocument } from '../app/desk-context.ts';
import { useSettings } from '../app/settings.tsx';
import type { Entry } from '../documents/entry.ts';
import { useKnownEnvelope } from '../envelopes/known.ts';
import { Page, Waiting } from '../parts/Page.tsx';
import { Standing } from '../parts/Standing.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { useSettled } from '../parts/useSettled.ts';
import { useHousePattern, usePattern } from '../patterns/pattern-source.ts';
import { AlterationsPassage } from './AlterationsPassage.tsx';
import { easeAsAltered } from './altered-ease.ts';
import { choiceFor, withCupTaken } from './choice.ts';
import { EnvelopeMake } from './EnvelopeMake.tsx';
import { FitPassage } from './FitPassage.tsx';
import type { FitInHand } from './fit-in-hand.ts';
import { FittingPassage } from './fitting/FittingPassage.tsx';
import { useMakeGarment } from './garment.ts';
import { LayoutPassage } from './LayoutPassage.tsx';
import { MakeOf } from './MakeOf.tsx';
import { type MakeInHand, MakeProvider, onlyStepsDiffer } from './make-context.ts';
import { PassageLinks, Passages } from './Passages.tsx';
import { PrintPassage } from './PrintPassage.tsx';
import { SeamsPassage } from './SeamsPassage.tsx';
import { SewingPassage } from './SewingPassage.tsx';
import { withWay } from './steps.ts';
import { useArrival } from './useArrival.ts';

const words = webWords.make;

const passages = (['fit', 'alterations', 'fitting', 'seams', 'layout', 'print', 'sewing'] as const).map((id) => ({
  id,
  title: words.passages[id],
}));

/**
 * What the passages beside the alterations work from: while nothing but the list changes, as under a slider, they follow
 * once it rests, so that the pieces on the table keep up with her hand.
 */
const useRested = (now: MakeInHand): MakeInHand => {
  const settled = useSettled(now);
  return onlyStepsDiffer(settled, now) ? settled : now;
};

interface WorkedOnProps {
  readonly entry: Entry<Make>;
  readonly wearer: Wearer;
  readonly pattern: Pattern;
  readonly cloth: Cloth | null;
}

const WorkedOn = ({ entry, wearer, pattern, cloth }: WorkedOnProps) => {
  const desk = useDesk();
  const { id, body: make } = entry;
  useArrival();
  const measures = useMemo(() => latestMeasures(wearer), [wearer]);
  const figures = useMemo(() => patternFigures(pattern), [pattern]);
  const fit = useMemo(
    () => fitPattern({ measures, pattern, figures, ...(cloth ? { cloth } : {}) }),
    [measures, pattern, figures, cloth],
  );
  const recommended = fit.ok ? (fit.value.ways[fit.value.recommended]?.startingSize ?? null) : null;
  const { size, altered } = useMakeGarment(make, pattern, recommended);
  const change = useCallback(
    (apply: (make: Make) => Make, name: string) =>
      desk.edit<Make>(id, (before) => withCupTaken(apply(before), pattern), name),
    [desk, id, pattern],
  );
  const alteredEase = useMemo(
    () => (fit.ok ? easeAsAltered(fit.value, figures, size, altered.garment, cloth) : []),
    [fit, figures, size, altered.garment, cloth],
  );
  const inHand = useMemo(
    (): MakeInHand => ({ id, make, wearer, measures, pattern, cloth, fit, size, altered, alteredEase, change }),
    [id, make, wearer, measures, pattern, cloth, fit, size, altered, alteredEase, change],
  );
  const rested = useRested(inHand);
  const fitInHand = useMemo(
    (): FitInHand => ({
      make: rested.make,
      wearer: rested.wearer,
      pattern: rested.pattern,
      sizes: rested.pattern.sizes.map((one) => one.id),
      size: rested.size.id,
      fit: rested.fit,
      alteredEase: rested.alteredEase,
      change: rested.change,
      take: withWay,
    }),
    [rested],
  );
  return (
    <MakeProvider value={rested}>
      <Passages>
        <PassageLinks label={words.passagesLabel} passages={passages} />
        <FitPassage of={fitInHand} />
        <MakeProvider value={inHand}>
          <AlterationsPassage />
          <FittingPassage />
        </MakeProvider>
        <SeamsPassage />
        <LayoutPassage />
        <PrintPassage />
        <SewingPassage />
      </Passages>
    </MakeProvider>
  );
};

/** Fetches what the make is made of; what is missing is said, and can be chosen anew above. */
const Gathered = ({ entry }: { entry: Entry<Make> }) => {
  const { body: make } = entry;
  const wearer = useDocument<Wearer>(make.wearer);
  const house = useHousePattern(make.pattern);
  const pattern = usePattern(make.pattern, choiceFor(make, house, wearer.state === 'here' ? wearer.value.body : null));
  const cloth = useDocument<Cloth>(make.cloth ?? '');
  const envelope = useKnownEnvelope(make.pattern);
  if (envelope && wearer.state === 'here' && (make.cloth === null || cloth.state === 'here')) {
    return (
      <EnvelopeMake
        entry={entry}
        wearer={wearer.value.body}
        envelope={envelope}
        cloth={make.cloth !== null && cloth.state === 'here' ? cloth.value.body : null}
      />
    );
  }
  const refused = [wearer, ...(envelope ? [] : [pattern]), ...(make.cloth ? [cloth] : [])].find(
    (one) => one.state === 'refused',
  );
  if (refused?.state === 'refused') return <Trouble words={refused.words} />;
  if (wearer.state !== 'here' || pattern.state !== 'here' || (make.cloth !== null && cloth.state !== 'here')) {
    return <Waiting what={webWords.shell.opening} />;
  }
  return (
    <WorkedOn
      entry={entry}
      wearer={wearer.value.body}
      pattern={pattern.value}
      cloth={make.cloth !== null && cloth.state === 'here' ? cloth.value.body : null}
    />
  );
};

const MakePage = ({ id }: { id: string }) => {
  const asked = useDocument<Make>(id);
  const { settings, change } = useSettings();
  const here = asked.state === 'here';
  useEffect(() => {
    if (here && settings.onTheTable !== id) change((before) => ({ ...before, onTheTable: id }));
  }, [here, id, settings.onTheTable, change]);
  if (asked.state === 'asking') return <Waiting what={webWords.shell.opening} />;
  if (asked.state === 'refused') return <Trouble words={asked.words} />;
  return (
    <Page title={asked.value.body.name}>
      <Standing entry={asked.value} />
      <MakeOf entry={asked.value} />
      <Gathered entry={asked.value} />
    </Page>
  );
};

export default MakePage;
