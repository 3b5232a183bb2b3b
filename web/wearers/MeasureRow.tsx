import { useEffect, useRef, useState } from 'react';
import {
  checkMeasure,
  type Doubt,
  describeMeasure,
  type MeasureId,
  type MeasureSet,
  type Reading,
} from '../../src/body/index.ts';
import { bodyWords, webWords } from '../../src/words/index.ts';
import { useSay } from '../app/settings.tsx';
import { LengthField } from '../parts/LengthField.tsx';
import { namesUnit, plainUnit } from '../parts/written.ts';
import { readApart, readingsApart, readingsOf, together, withReading } from './readings.ts';

const words = webWords.wearers;

interface MeasureRowProps {
  readonly wearer: string;
  readonly set: MeasureSet;
  readonly measure: MeasureId;
  readonly doubt: Doubt | undefined;
  readonly onChange: (change: (set: MeasureSet) => MeasureSet, name: string) => void;
  readonly onFocus: (measure: MeasureId) => void;
}

const purposeOf = (measure: MeasureId) => (measure === 'stature' ? 'stature' : 'measure');

/** One measure: how it is taken, what was read, a second reading, left and right, and what seems doubtful. */
export const MeasureRow = ({ wearer, set, measure, doubt, onChange, onFocus }: MeasureRowProps) => {
  const say = useSay();
  const described = describeMeasure(measure);
  const [wantsSecond, setWantsSecond] = useState(false);
  const [wantsApart, setWantsApart] = useState(false);
  const row = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (!wantsSecond) return;
    // The new box stands where the eye already is: nothing needs to scroll.
    row.current?.querySelectorAll<HTMLElement>('input[type="text"]')[1]?.focus({ preventScroll: true });
  }, [wantsSecond]);
  const apart = described.sides !== null && (wantsApart || readApart(set, measure));
  const sides: readonly Reading['side'][] = apart ? ['left', 'right'] : ['both'];
  const ofThis = say.words(words.ofMeasure, { measure: described.name });
  const anyRead = set.readings.some((reading) => reading.measure === measure);

  const nameOf = (side: Reading['side'], place: number) => {
    const name = side === 'both' ? described.name : say.words(words[side], { measure: described.name });
    return place === 0 ? name : say.words(words.secondLabel, { measure: name });
  };
  const field = (side: Reading['side'], place: number) => {
    const reading = readingsOf(set, measure, side)[place];
    return (
      <LengthField
        key={`${side} ${place}`}
        label={nameOf(side, place)}
        place={`${wearer}/${set.id}/${measure}/${side}/${place}`}
        mm={reading?.mm ?? null}
        written={reading?.written ?? null}
        purpose={purposeOf(measure)}
        hint={place === 0 && side !== 'right' ? described.how : undefined}
        check={(mm) => checkMeasure(measure, mm)}
        onFocus={() => onFocus(measure)}
        onCommit={(mm, written) =>
          onChange(
            (before) =>
              withReading(before, measure, side, place, mm === null || written === null ? null : { mm, written }),
            `${set.id} ${measure} ${side} ${place}`,
          )
        }
      >
        {reading && namesUnit(reading.written) && !reading.written.endsWith(` ${plainUnit(say.unit, 'measure')}`) && (
          <span className="note">{say.words(words.asWritten, { written: reading.written })}</span>
        )}
      </LengthField>
    );
  };
  const latest = readingsOf(set, measure, sides[0] ?? 'both');
  const [usualLow, usualHigh] = described.usual;
  const unusual = latest.map((reading) => reading.mm).find((mm) => mm < usualLow || mm > usualHigh);
  return (
    <div className="measure" ref={row}>
      {sides.map((side) => (
        <div key={side}>
          {field(side, 0)}
          {(wantsSecond || readingsOf(set, measure, side).length > 1) && field(side, 1)}
        </div>
      ))}
      {!apart && latest.length > 1 && (
        <p className="note">{say.words(words.used, { length: say.length(latest.at(-1)?.mm ?? 0) })}</p>
      )}
      <div aria-live="polite">
        {sides.map((side) => {
          const two = readingsApart(set, measure, side);
          return (
            two && (
              <p className="field-trouble" key={side}>
                {say.words(words.readingsApart, {
                  measure: nameOf(side, 0),
                  first: say.length(two.first),
                  second: say.length(two.second),
                  by: say.length(Math.abs(two.first - two.second), { purpose: 'amount' }),
                })}
              </p>
            )
          );
        })}
        {doubt ? (
          <p className="field-trouble">
            {say.words(bodyWords.doubtful, {
              measure: described.name,
              length: { mm: doubt.mm },
              low: { mm: doubt.low },
              high: { mm: doubt.high },
            })}{' '}
            {words.likelyAbout}
          </p>
        ) : (
          unusual !== undefined && (
            <p className="field-trouble">
              {say.words(bodyWords.unusual, {
                measure: described.name,
                length: { mm: unusual },
                low: { mm: usualLow },
                high: { mm: usualHigh },
              })}
            </p>
          )
        )}
      </div>
      {anyRead && (
        <div className="verbs measure-verbs">
          {latest.length === 1 && !wantsSecond && (
            <button type="button" className="verb verb-quiet" onClick={() => setWantsSecond(true)}>
              {words.second} <span className="unseen">{ofThis}</span>
            </button>
          )}
          {described.sides !== null && !apart && (
            <button type="button" className="verb verb-quiet" onClick={() => setWantsApart(true)}>
              {words.apart} <span className="unseen">{ofThis}</span>
            </button>
          )}
          {described.sides !== null && apart && (
            <button
              type="button"
              className="verb verb-quiet"
              onClick={() => {
                setWantsApart(false);
                const chosen = described.sides ?? 'larger';
                onChange((before) => together(before, measure, chosen), `${set.id} ${measure} together`);
              }}
            >
              {words.together} <span className="unseen">{ofThis}</span>
            </button>
          )}
        </div>
      )}
    </div>
  );
};
