import { memo, useMemo, useState } from 'react';
import type { PageMap } from '../../src/formats/index.ts';
import type { Paper } from '../../src/make/index.ts';
import type { Problem } from '../../src/units/index.ts';
import { problemWords, webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Trouble } from '../parts/Trouble.tsx';
import { type Laid, useLay } from '../parts/table/laid.ts';
import { TooTight } from './AlteredEase.tsx';
import { alterationName } from './alteration-words.ts';
import { useMake } from './make-context.ts';
import { Passage, useCurrentPassage } from './Passages.tsx';
import { fileName, useRequest, useSummary, type What, whats } from './print-asked.ts';
import { madeWords, saySheets } from './print-words.ts';
import { usePageMap } from './usePageMap.ts';
import { usePrint } from './usePrint.ts';

const words = webWords.make.print;

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
      {altered.refusal && (
        <p className="field-trouble">
          {say.words(words.refusedStep, {
            number: make.steps.findIndex(({ id }) => id === altered.refusal?.step) + 1,
            name: alterationName(altered.refusal.alteration),
          })}{' '}
          <a href="#alterations">{words.toAlterations}</a>
        </p>
      )}
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
          <a className="verb" href={print.address} download={fileName(make.name, make.paper, what)}>
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
