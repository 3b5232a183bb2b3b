import { memo, useEffect, useMemo, useRef, useState } from 'react';
import { cutPlaces, sayOutcomes } from '../../src/draw/index.ts';
import type { PageMap, PrintedPattern, SheetRequest, SummaryRequest } from '../../src/formats/index.ts';
import type { Paper } from '../../src/make/index.ts';
import type { Problem } from '../../src/units/index.ts';
import { problemWords, webWords } from '../../src/words/index.ts';
import { locale, type Say, useSay } from '../app/settings.tsx';
import type { Printing } from '../jobs/print.ts';
import { Choice } from '../parts/Choice.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { TooTight } from './AlteredEase.tsx';
import { useMake } from './make-context.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';
import { usePageMap } from './usePageMap.ts';

const words = webWords.make.print;

type PrintState =
  | { readonly state: 'idle' }
  | { readonly state: 'printing'; readonly progress: number }
  | { readonly state: 'printed'; readonly printed: PrintedPattern; readonly address: string }
  | { readonly state: 'refused'; readonly problem: Problem };

/** A file name from what a make is called: letters and figures of any script, hyphens between. */
export const fileName = (name: string, paper: Paper): string => {
  const plain = name
    .normalize('NFC')
    .replace(/[^\p{Letter}\p{Number}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
  return `${plain || 'pattern'}-${paper}.pdf`;
};

/** What of a make is printed. */
const whats = ['all', 'changed', 'sheets', 'overlay', 'summary'] as const;
type What = (typeof whats)[number];

type Summary = Omit<SummaryRequest, 'fonts'>;
type Asked = SheetRequest | Summary;

/** What would be printed of the make as it is now. */
const useRequest = (what: What): SheetRequest => {
  const { make, pattern, size, altered } = useMake();
  const say = useSay();
  const { name, paper } = make;
  return useMemo(() => {
    const said = sayOutcomes(size.garment, altered.outcomes, say.unit);
    const request: SheetRequest = {
      garment: altered.garment,
      ...(altered.outcomes.length > 0 && what !== 'sheets' ? { original: altered.before } : {}),
      title: pattern.name,
      size: size.id,
      make: name,
      alterations: altered.outcomes.map(({ applied }, place) => ({
        text: said[place] ?? '',
        pieces: applied.pieces.filter((report) => report.puts.length > 0).map((report) => report.piece),
      })),
      paper,
      unit: say.unit,
      locale,
    };
    if (what === 'changed') return { ...request, only: what };
    if (what === 'overlay') return { ...request, only: what, cuts: cutPlaces(altered.before, altered) };
    // An earlier print of this make was of the pattern as bought.
    if (what === 'sheets') return { ...request, printed: { garment: size.garment, alterations: [] } };
    return request;
  }, [altered, size, pattern.name, name, paper, say.unit, what]);
};

/** The page to work from; null while it is not asked for, or on paper it is not printed on. */
const useSummary = (what: What): Summary | null => {
  const { make, pattern, size, altered } = useMake();
  const say = useSay();
  const { name, paper } = make;
  return useMemo(() => {
    if (what !== 'summary' || (paper !== 'a4' && paper !== 'letter')) return null;
    const subject = { title: pattern.name, size: size.id, make: name, before: altered.before, altered };
    return { ...subject, unit: say.unit, locale, paper };
  }, [altered, size, pattern.name, name, paper, say.unit, what]);
};

/** Makes the PDF and keeps its address; the last one is let go of when another is made or the page is left. */
const usePrint = (request: Asked) => {
  const [print, setPrint] = useState<PrintState>({ state: 'idle' });
  const printing = useRef<Printing | null>(null);
  const address = useRef<string | null>(null);
  const wanted = useRef(request);

  const letGo = () => {
    if (address.current) URL.revokeObjectURL(address.current);
    address.current = null;
  };
  useEffect(
    () => () => {
      printing.current?.stop();
      if (address.current) URL.revokeObjectURL(address.current);
    },
    [],
  );

  const start = async () => {
    setPrint({ state: 'printing', progress: 0 });
    letGo();
    try {
      const { startPrint } = await import('../jobs/print.ts');
      const run = startPrint(request, (progress) =>
        setPrint((now) => (now.state === 'printing' ? { state: 'printing', progress } : now)),
      );
      printing.current = run;
      const result = await run.result;
      if (!result.ok) {
        setPrint(
          result.problem.code === 'formats.cancelled'
            ? { state: 'idle' }
            : { state: 'refused', problem: result.problem },
        );
        return;
      }
      if (wanted.current !== request) {
        setPrint({ state: 'idle' });
        return;
      }
      const bytes = result.value.bytes as Uint8Array<ArrayBuffer>;
      address.current = URL.createObjectURL(new Blob([bytes], { type: 'application/pdf' }));
      setPrint({ state: 'printed', printed: result.value, address: address.current });
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      setPrint({ state: 'refused', problem: { code: 'web.print-broken', values: { detail } } });
    } finally {
      printing.current = null;
    }
  };
  // A print of what has been changed since is not a print of this make: neither one that is done nor one under way.
  useEffect(() => {
    if (wanted.current === request) return;
    wanted.current = request;
    printing.current?.stop();
    setPrint((now) => (now.state === 'printed' ? { state: 'idle' } : now));
  }, [request]);
  return { print, start, stop: () => printing.current?.stop() };
};

/** How many sheets of what, in a sentence, before they are made. */
const saySheets = ({ tiles, pages, length }: PageMap, paper: Paper, say: Say): string => {
  const count = tiles.length;
  const cover = pages - count;
  const values = { paper: words.papers[paper], count, pages, cover };
  if (length !== null)
    return say.words(words.sheetsRoll, { ...values, length: say.length(length, { purpose: 'cloth', round: 'up' }) });
  if (cover === 0) return say.words(count === 1 ? words.sheetHere : words.sheetsHere, values);
  if (count === 1) return say.words(words.sheetApart, values);
  return say.words(cover === 1 ? words.sheetsApart : words.sheetsAfterMore, values);
};

const madeWords = ({ pages, tiles }: PrintedPattern): string =>
  tiles.length === 0 ? words.madeSummary : pages === 1 ? words.madeOne : words.made;

/** Which sheets of an earlier print are exchanged, stay and are taken out. */
const Exchanged = ({ map }: { readonly map: PageMap }) => {
  const say = useSay();
  const lines: readonly (readonly [string, readonly string[]])[] = [
    [words.exchange, map.tiles],
    [words.keep, map.kept],
    [words.takeOut, map.gone],
    [words.apart, map.apart],
  ];
  return (
    <ul>
      {lines.map(
        ([template, names]) =>
          names.length > 0 && <li key={template}>{say.words(template, { names: names.join(', ') })}</li>,
      )}
    </ul>
  );
};

/** Print: which paper, what of it, and the full-scale sheets as one PDF. */
export const PrintPassage = memo(() => {
  const say = useSay();
  const { make, altered, change } = useMake();
  const current = useCurrentPassage() === 'print';
  const [chosen, setChosen] = useState<What>('all');
  const what = altered.outcomes.length > 0 ? chosen : 'all';
  const request = useRequest(what);
  const summary = useSummary(what);
  const { print, start, stop } = usePrint(summary ?? request);
  const withMap = current && what !== 'summary';
  const { map, of, problem: unmapped } = usePageMap(withMap ? request : null);
  const problem =
    what !== 'summary' ? unmapped : summary ? null : ({ code: 'formats.summary-paper', values: {} } satisfies Problem);
  const laid = useMemo((): Laid | null => {
    if (!withMap || !map || !of) return null;
    const label = say.words(words.picture, { name: make.name, size: of.size, paper: words.papers[of.paper] });
    return { drawing: { ...map.drawing, label }, subject: `print ${of.size} ${of.paper} ${map.tiles.join(' ')}` };
  }, [withMap, map, of, make.name, say]);
  useLay(laid);
  // Away from this passage no map is worked out: what is known may then be of pieces that have changed since.
  const mapped = map && of === request ? map : null;
  const mapping = withMap && of !== request && problem === null;
  const lastMap = mapping ? map : mapped;
  const silent = problemWords['web.print-broken'];
  return (
    <Passage id="print" title={webWords.make.passages.print}>
      <p>{words.about}</p>
      {altered.refusal && <p className="field-trouble">{words.refusedStep}</p>}
      <TooTight />
      <Choice<Paper>
        legend={words.paper}
        name="paper"
        value={make.paper}
        options={(['a4', 'letter', 'a0', 'roll36'] as const).map((value) => ({
          value,
          label: words.papers[value],
          note: words.paperNotes[value],
        }))}
        onChange={(paper) => change((before) => ({ ...before, paper }), 'paper')}
      />
      {altered.outcomes.length > 0 && (
        <Choice<What>
          legend={words.what}
          name="what"
          value={what}
          options={whats.map((value) => ({ value, label: words.whats[value], note: words.whatNotes[value] }))}
          onChange={setChosen}
        />
      )}
      <p className={mapping ? 'waiting' : undefined} role="status">
        {what === 'summary'
          ? words.summaryPages
          : mapping
            ? words.mapping
            : mapped && saySheets(mapped, make.paper, say)}
      </p>
      {what === 'sheets' && mapped && <Exchanged map={mapped} />}
      {what !== 'summary' && lastMap && lastMap.tiles.length > 1 && (
        <details>
          <summary>{words.pieceList}</summary>
          <ol>
            {lastMap.pieces.map(({ number, name, sheets }) => (
              <li key={number}>{say.words(words.pieceLies, { name, sheets: sheets.join(', ') })}</li>
            ))}
          </ol>
        </details>
      )}
      {problem && print.state !== 'refused' && <Trouble words={say.problem(problem)} />}
      <div className="verbs">
        <button
          type="button"
          className="verb verb-next"
          disabled={print.state === 'printing' || altered.refusal !== null || (what === 'summary' && !summary)}
          onClick={() => void start()}
        >
          {words.make}
        </button>
        {print.state === 'printed' && (
          <a className="verb" href={print.address} download={fileName(make.name, make.paper)}>
            {words.download}
          </a>
        )}
        {print.state === 'printing' && (
          <button type="button" className="verb" onClick={stop}>
            {words.stop}
          </button>
        )}
      </div>
      {print.state === 'printing' && <progress max={1} value={print.progress} aria-label={words.progress} />}
      <div role="status">
        {print.state === 'printing' && <p className="waiting">{words.making}</p>}
        {print.state === 'printed' && (
          <>
            <p>
              {say.words(madeWords(print.printed), {
                pages: print.printed.pages,
                tiles: print.printed.tiles.length,
              })}
            </p>
            <p className="hint">{words.check}</p>
          </>
        )}
      </div>
      {print.state === 'printed' &&
        print.printed.warnings.map((warning) => {
          const said = say.problem(warning);
          return (
            <p className="field-trouble" key={said.message}>
              {said.message} {said.remedy}
            </p>
          );
        })}
      {print.state === 'refused' && <Trouble words={say.problem(print.problem) ?? silent} />}
      <p className="note">{words.private}</p>
    </Passage>
  );
});
