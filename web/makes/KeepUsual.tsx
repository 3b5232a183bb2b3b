import { useEffect, useRef, useState } from 'react';
import type { Wearer } from '../../src/body/index.ts';
import type { AlterationStep } from '../../src/pattern/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useDesk } from '../app/desk-context.ts';
import { today } from '../app/documents.ts';
import { useSay } from '../app/settings.tsx';
import { useMake } from './make-context.ts';
import { keepUsual } from './usual.ts';

const words = webWords.make.alterations;

/** A step that may be kept for the wearer: the reason as it is being written, null while none is asked for. */
interface Keeping {
  readonly name: string;
  readonly reason: string | null;
  readonly setReason: (reason: string | null) => void;
  readonly kept: boolean;
  readonly keep: () => void;
  /** The reason she is offered first. */
  readonly first: string;
}

export const useKeeping = (step: AlterationStep): Keeping => {
  const say = useSay();
  const desk = useDesk();
  const { id, make, wearer, pattern } = useMake();
  const [reason, setReason] = useState<string | null>(null);
  const keep = () => {
    const { alteration, version, params } = step;
    const text = (reason ?? '').trim().slice(0, 500);
    const about = { reason: text, madeAs: make.name, make: id, kind: pattern.kind, date: today() };
    desk.edit<Wearer>(make.wearer, (before) => keepUsual(before, { alteration, version, params, ...about }), 'usual');
    setReason(null);
  };
  return {
    name: wearer.name,
    reason,
    setReason,
    kept: wearer.usual?.some((one) => one.alteration === step.alteration && one.make === id) ?? false,
    keep,
    first: say.words(words.keepReasonFirst, { make: make.name }),
  };
};

/** The verb that asks for it, among the step’s others. */
export const KeepVerb = ({ keeping, title }: { readonly keeping: Keeping; readonly title: string }) => {
  const say = useSay();
  const { name, reason, first, setReason } = keeping;
  const button = useRef<HTMLButtonElement>(null);
  const asked = useRef(false);
  useEffect(() => {
    if (asked.current && reason === null) button.current?.focus({ preventScroll: true });
    asked.current = reason !== null;
  }, [reason]);
  if (reason !== null) return null;
  return (
    <button
      ref={button}
      type="button"
      className="verb verb-quiet"
      aria-label={say.words(words.keepOf, { name, alteration: title })}
      onClick={() => setReason(first)}
    >
      {say.words(words.keepFor, { name })}
    </button>
  );
};

/** The reason as it is written; she asked for it, so her keyboard is taken there. */
const Reason = ({ keeping: { name, reason, setReason } }: { readonly keeping: Keeping }) => {
  const say = useSay();
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus({ preventScroll: true }), []);
  return (
    <label className="field">
      {say.words(words.keepReason, { name })}
      <input
        ref={field}
        type="text"
        value={reason ?? ''}
        maxLength={500}
        onChange={(event) => setReason(event.target.value)}
      />
    </label>
  );
};

/** The reason, which she may put in her own words, and that it was kept. */
export const KeepUsual = ({ keeping }: { readonly keeping: Keeping }) => {
  const say = useSay();
  const { name, reason, setReason, kept, keep } = keeping;
  return (
    <>
      {reason !== null && (
        <div className="keep">
          <Reason keeping={keeping} />
          <div className="verbs">
            <button type="button" className="verb" onClick={keep}>
              {words.keepDo}
            </button>
            <button type="button" className="verb verb-quiet" onClick={() => setReason(null)}>
              {words.keepNot}
            </button>
          </div>
        </div>
      )}
      <p className={kept && reason === null ? 'hint' : 'unseen'} role="status">
        {kept && reason === null ? say.words(words.kept, { name }) : ''}
      </p>
    </>
  );
};
