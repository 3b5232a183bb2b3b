import { useMemo } from 'react';
import type { UsualAlteration, Wearer } from '../../src/body/index.ts';
import { sayStepOn } from '../../src/draw/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useDesk } from '../app/desk-context.ts';
import { useSay } from '../app/settings.tsx';
import { alterationName } from './alteration-words.ts';
import { useMake } from './make-context.ts';
import { addStep, alterationOf } from './steps.ts';
import { forgetUsual, usualHere } from './usual.ts';

const words = webWords.make.alterations;

const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** What was kept for the wearer from other makes and can be done to this garment, with the reason. */
export const UsualAlterations = () => {
  const say = useSay();
  const desk = useDesk();
  const { id, make, wearer, pattern, size, change } = useMake();
  const offered = useMemo(
    () => usualHere(wearer, id, pattern.kind, size.garment, make.steps),
    [wearer, id, pattern.kind, size.garment, make.steps],
  );
  if (offered.length === 0) return null;
  const take = (some: readonly UsualAlteration[]) =>
    change(
      (before) =>
        some.reduce((now, one) => {
          const alteration = alterationOf({ ...one, on: true });
          return alteration ? addStep(now, alteration, one.params) : now;
        }, before),
      `usual ${some.map((one) => one.id).join(' ')}`,
    );
  return (
    <section className="usual" aria-labelledby="usual-head">
      <h3 id="usual-head">{say.words(words.usualFor, { name: wearer.name })}</h3>
      <ul>
        {offered.map((one) => {
          const name = alterationName(one.alteration);
          return (
            <li key={one.id}>
              <p>
                {say.words(words.usualLine, {
                  step: upperFirst(sayStepOn([size.garment], { ...one, on: true }, say.unit)),
                  reason: one.reason,
                  make: one.madeAs,
                  date: say.date(one.date),
                })}
              </p>
              <div className="verbs">
                <button type="button" className="verb verb-quiet" onClick={() => take([one])}>
                  {say.words(words.usualTake, { alteration: name })}
                </button>
                <button
                  type="button"
                  className="verb verb-quiet"
                  aria-label={say.words(words.usualForgetOf, { alteration: name, name: wearer.name })}
                  onClick={() => desk.edit<Wearer>(make.wearer, (before) => forgetUsual(before, one.id), 'usual')}
                >
                  {words.usualForget}
                </button>
              </div>
            </li>
          );
        })}
      </ul>
      {offered.length > 1 && (
        <button type="button" className="verb" onClick={() => take(offered)}>
          {say.words(words.usualTakeAll, { count: offered.length })}
        </button>
      )}
    </section>
  );
};
