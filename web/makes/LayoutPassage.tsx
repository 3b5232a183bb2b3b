import { memo, useEffect, useMemo, useState } from 'react';
import { type Cloth, usualShrinkage } from '../../src/cloth/index.ts';
import { isClothCaution } from '../../src/fit/index.ts';
import { buyLength, type Layout, type LayoutProblem, layoutProblemFor, usualWidths } from '../../src/lay/index.ts';
import type { Fold } from '../../src/make/index.ts';
import type { Garment, Layer } from '../../src/pattern/index.ts';
import { bad, good, lengthToBuy } from '../../src/units/index.ts';
import { clothWords, layWords, problemWords, reasonSentence, webHouseWords, webWords } from '../../src/words/index.ts';
import { locale, useSay } from '../app/settings.tsx';
import { shares } from '../cloths/shares.ts';
import { Choice } from '../parts/Choice.tsx';
import { drawGarment } from '../parts/draw-garment.ts';
import { LengthField } from '../parts/LengthField.tsx';
import { Select } from '../parts/Select.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { useNarrow } from '../parts/useNarrow.ts';
import { ChooseCloth } from './ChooseCloth.tsx';
import { drawPlan } from './drawings.ts';
import { useMake } from './make-context.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';
import { useLayout } from './useLayout.ts';

const words = webWords.make.layout;

/** Lays the pieces alone on the table while there is no plan of them, so that what lay there before does not pass for one. */
const useLayPieces = (picture: string | null) => {
  const say = useSay();
  const { garment } = useMake().altered;
  const laid = useMemo((): Laid | null => {
    if (picture === null) return null;
    return { drawing: drawGarment(garment, picture, { unit: say.unit, locale }), subject: 'layout without a plan' };
  }, [picture, garment, say.unit]);
  useLay(laid);
};

/** What the plan needs of the cloth, in words. */
const Needs = ({ plan, cloth, garment }: { plan: Layout; cloth: Cloth; garment: Garment }) => {
  const say = useSay();
  const needed = buyLength(plan, cloth);
  // A person cuts to these: what is needed is never said as less, what there is never as more.
  const atLeast = (mm: number) => say.length(mm, { purpose: 'cloth', round: 'up' });
  const atMost = (mm: number) => say.length(mm, { purpose: 'cloth', round: 'down' });
  const usual = cloth.washed || cloth.shrinkAlong > 0 ? null : usualShrinkage(cloth);
  const toBuy = lengthToBuy(needed.exact, say.unit);
  const nameOf = (id: string) => garment.pieces.find((piece) => piece.id === id)?.name ?? id;
  return (
    <>
      {needed.fits && <p className="verdict">{layWords.fits[needed.fits]}</p>}
      <dl className="facts">
        <dt>{words.used}</dt>
        <dd>{atLeast(needed.length)}</dd>
        {needed.inHand !== null && (
          <>
            <dt>{cloth.washed || cloth.shrinkAlong === 0 ? words.inHand : words.inHandWashed}</dt>
            <dd>{atMost(needed.inHand)}</dd>
          </>
        )}
        {needed.spare !== null && (
          <>
            <dt>{needed.spare >= 0 ? words.left : words.missing}</dt>
            <dd>{needed.spare >= 0 ? atMost(needed.spare) : atLeast(-needed.spare)}</dd>
          </>
        )}
        <dt>{words.buy}</dt>
        <dd>
          <strong>{atLeast(toBuy)}</strong>{' '}
          <span className="note">
            {say.words(needed.shrinkage > 0 ? words.buyWithShrinkage : words.buyAbout, {
              squaring: { mm: needed.squaring },
              shrinkage: { mm: needed.shrinkage },
            })}
          </span>
          {!cloth.washed && cloth.shrinkAlong === 0 && (
            <p className="field-trouble">
              {words.noShrinkage} {usual ? say.words(clothWords.usualShrinkage[usual.of], shares(usual)) : ''}{' '}
              {clothWords.enterShrinkage}
            </p>
          )}
        </dd>
        <dt>{words.density}</dt>
        <dd>{say.words(words.densityOf, { percent: Math.round(plan.density) })}</dd>
      </dl>
      {plan.spare.map(({ id, copies }) => (
        <p className="note" key={id}>
          {say.words(layWords.spare, { piece: nameOf(id), copies })}
        </p>
      ))}
    </>
  );
};

const OnCloth = ({ cloth, layer }: { cloth: Cloth; layer: Layer }) => {
  const say = useSay();
  const { id, make, altered, fit, change } = useMake();
  const cautions = fit.ok && layer === 'shell' ? (fit.value.ways[0]?.reasons.filter(isClothCaution) ?? []) : [];
  const { garment } = altered;
  const current = useCurrentPassage() === 'layout';
  const { search, start, stop, refuse } = useLayout();
  const asked = useMemo(
    () => layoutProblemFor(garment, cloth, { fold: make.fold, gap: make.gap, layer }),
    [garment, cloth, make.fold, make.gap, layer],
  );
  // Problems are plain values: the same cloth and pieces are the same problem, whichever object holds them.
  const key = useMemo(() => JSON.stringify(asked), [asked]);

  useEffect(() => {
    if (!current) return;
    const read = JSON.parse(key) as typeof asked;
    // A moment's patience, so that not every stop of a slider begins a search.
    const timer = window.setTimeout(() => (read.ok ? start(read.value, false) : refuse(read.problem)), 250);
    return () => window.clearTimeout(timer);
  }, [current, key, start, refuse]);

  const narrow = useNarrow();
  const problem: LayoutProblem | null = asked.ok ? asked.value : null;
  const fresh = problem !== null && search.of !== null && JSON.stringify(search.of) === JSON.stringify(problem);
  const laid = useMemo((): Laid | null => {
    if (!current || !search.plan || !search.of || !fresh) return null;
    const drawing = drawPlan(search.of, search.plan, garment, cloth.colour, say.unit, narrow);
    return { drawing, subject: `layout ${layer} ${make.fold} ${cloth.width}` };
  }, [current, search.plan, search.of, fresh, garment, cloth.colour, cloth.width, make.fold, layer, say.unit, narrow]);
  useLay(laid);
  const impossible = search.state === 'refused' || search.state === 'broken';
  const waiting = impossible ? words.pictureNoPlan : words.pictureSeeking;
  useLayPieces(current && !laid ? waiting : null);

  const checkGap = (mm: number) =>
    mm >= 0 && mm <= 50 ? good(mm) : bad('web.amount-outside', { least: { mm: 0 }, most: { mm: 50 } });
  const broken = problemWords['web.worker-broken'];
  return (
    <>
      <Choice<Fold>
        legend={words.fold}
        name="fold"
        inline
        value={make.fold}
        options={[
          { value: 'lengthwise', label: words.folds.lengthwise },
          { value: 'single', label: words.folds.single },
        ]}
        onChange={(fold) => change((before) => ({ ...before, fold }), 'fold')}
      />
      <LengthField
        label={words.gap}
        hint={words.gapHint}
        purpose="amount"
        place={`${id}/gap`}
        mm={make.gap}
        check={checkGap}
        onCommit={(gap) => gap !== null && change((before) => ({ ...before, gap }), 'gap')}
      />
      {cautions.map((caution) => (
        <p className="field-trouble" key={caution.code}>
          {reasonSentence(caution, say.unit, locale)}
        </p>
      ))}
      <p className="hint">{cloth.oneWay || cloth.structure === 'knit' ? words.oneWay : words.bothWays}</p>
      {search.state === 'refused' && search.refusal && <Trouble words={say.problem(search.refusal)} />}
      {search.state === 'broken' && broken && <Trouble words={broken} />}
      {search.state === 'searching' && (
        <div className="searching">
          <p role="status">{search.plan ? words.bettering : words.searching}</p>
          <progress max={1} value={search.progress} aria-label={words.progress} />
          <button type="button" className="verb" onClick={stop}>
            {words.stop}
          </button>
        </div>
      )}
      {search.plan && fresh && <Needs plan={search.plan} cloth={cloth} garment={garment} />}
      {search.state === 'done' && problem && (
        <button type="button" className="verb" onClick={() => start(problem, true)}>
          {words.again}
        </button>
      )}
      {search.state === 'idle' && problem && (
        <button type="button" className="verb" onClick={() => start(problem, false)}>
          {words.begin}
        </button>
      )}
    </>
  );
};

const WithoutCloth = () => {
  const current = useCurrentPassage() === 'layout';
  useLayPieces(current ? words.pictureNoCloth : null);
  return (
    <>
      <p>{words.noCloth}</p>
      <ChooseCloth />
    </>
  );
};

/** A layer's own cloth, of which the make says nothing: plain, washed, to be bought. */
const plainCloth = (layer: Layer, width: number): Cloth => ({
  format: 'easewright-cloth/1',
  name: webHouseWords.layer[layer],
  structure: 'woven',
  fibres: '',
  weight: null,
  width,
  length: null,
  stretchAcross: 0,
  stretchAlong: 0,
  oneWay: false,
  shrinkAlong: 0,
  shrinkAcross: 0,
  washed: true,
  colour: '#ffffff',
  terms: 'unknown',
  from: '',
  note: '',
});

/** Lining or interfacing on cloth of a usual width. */
const OnLayer = ({ layer }: { layer: 'lining' | 'interfacing' }) => {
  const say = useSay();
  const widths = usualWidths[say.unit][layer];
  const [picked, setPicked] = useState<number | null>(null);
  const width = picked !== null && widths.includes(picked) ? picked : (widths[0] ?? 0);
  const cloth = useMemo(() => plainCloth(layer, width), [layer, width]);
  const name = webHouseWords.layer[layer].toLowerCase();
  return (
    <>
      <Select
        label={say.words(words.layerWidth, { layer: name })}
        hint={say.words(words.layerAbout, { layer: name })}
        value={String(width)}
        options={widths.map((one) => ({ value: String(one), label: say.length(one) }))}
        onChange={(next) => setPicked(Number(next))}
      />
      <OnCloth key={width} cloth={cloth} layer={layer} />
    </>
  );
};

/** The cutting layout on her cloth, layer by layer: a plan at once, a better one while she looks. */
export const LayoutPassage = memo(() => {
  const { cloth, make, altered } = useMake();
  const cut = (layer: Layer) =>
    altered.garment.pieces.some((piece) => piece.cut.some((order) => order.layer === layer && order.count > 0));
  const layers = (['shell', 'lining', 'interfacing'] as const).filter(cut);
  const [picked, setPicked] = useState<Layer>('shell');
  const layer = layers.includes(picked) ? picked : 'shell';
  return (
    <Passage id="layout" title={webWords.make.passages.layout}>
      {layers.length > 1 && (
        <Choice<Layer>
          legend={words.layer}
          name="layer"
          inline
          value={layer}
          options={layers.map((value) => ({ value, label: webHouseWords.layer[value] }))}
          onChange={setPicked}
        />
      )}
      {layer !== 'shell' ? (
        <OnLayer key={layer} layer={layer} />
      ) : cloth ? (
        <OnCloth key={make.cloth ?? ''} cloth={cloth} layer="shell" />
      ) : (
        <WithoutCloth />
      )}
    </Passage>
  );
});
