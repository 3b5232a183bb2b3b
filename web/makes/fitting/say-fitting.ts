import type { Sign, Suggestion } from '../../../src/alter/index.ts';
import { describeMeasure } from '../../../src/body/index.ts';
import { fittingWords } from '../../../src/words/index.ts';
import type { Say } from '../../app/settings.tsx';
import { alterationName } from '../alteration-words.ts';

const words = fittingWords;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export const zoneName = (zone: string): string => capital(words.zones[zone] ?? zone);

/** `Bust: taut lines, pointing at the fullest place, on both halves, 1.4 cm pinned`. */
export const saySign = (sign: Sign, say: Say): string => {
  const kind = words.kinds[sign.kind] ?? sign.kind;
  const lines = sign.direction === null ? undefined : words.directions[sign.direction];
  let said = say.words(lines ? words.signLines : words.sign, { zone: zoneName(sign.zone), kind, lines: lines ?? '' });
  if (sign.posture !== 'standing')
    said = say.words(words.signPosture, { said, posture: words.postures[sign.posture] ?? '' });
  if (sign.half !== 'both') said = say.words(words.signHalf, { said, half: words.halves[sign.half] ?? '' });
  if (sign.pinned !== null)
    said = say.words(words.signPinned, { said, pinned: say.length(sign.pinned, { purpose: 'amount' }) });
  return said;
};

const measured = (measure: NonNullable<Suggestion['measure']>, say: Say) => ({
  measure: describeMeasure(measure.measure).name,
  ease: say.length(measure.ease, { purpose: 'amount' }),
});

const saySigns = (of: Suggestion['supporting'], signs: readonly Sign[], say: Say): string =>
  of.flatMap(({ sign }) => (signs[sign] ? [saySign(signs[sign] as Sign, say)] : [])).join('; ');

/** Everything a suggestion has to say, in sentences. */
export const saySuggestion = (one: Suggestion, signs: readonly Sign[], say: Say) => {
  const cause = words.causes[one.cause];
  const { amount, measure } = one;
  const length = (mm: number) => say.length(Math.abs(mm), { purpose: 'amount' });
  const alteration = one.alteration ? alterationName(one.alteration) : '';
  const pinned = amount.from === 'guess' ? '' : length(amount.from.pinned);
  const from =
    amount.from === 'guess'
      ? words.fromGuess
      : { length: words.fromLength, each: words.fromEach, halved: words.fromHalved }[amount.from.how];
  const { impossible } = one;
  return {
    name: cause?.name ?? one.cause,
    because: say.words(words.because, { signs: saySigns(one.supporting, signs, say) }),
    against: one.opposing.length > 0 ? say.words(words.against, { signs: saySigns(one.opposing, signs, say) }) : null,
    measure:
      measure && measure.says !== 'neither'
        ? say.words(measure.says === 'for' ? words.measureFor : words.measureAgainst, measured(measure, say))
        : null,
    ruleOut: one.ruleOut.flatMap(({ cause: id, measure: says }) => {
      const look = words.causes[id]?.look;
      if (!look) return [];
      if (!says || says.says === 'neither') return [look];
      return [say.words(says.says === 'for' ? words.firstFor : words.firstAgainst, { look, ...measured(says, say) })];
    }),
    amount: one.alteration
      ? say.words(cause?.way ? words.amountWay : amount.each < 0 ? words.amountLess : words.amount, {
          alteration,
          way: cause?.way ?? '',
          each: length(amount.each),
          all: length(amount.inAll),
        })
      : null,
    from: one.alteration ? say.words(from, { pinned }) : null,
    half: one.side === 'both' ? null : say.words(words.onHalf, { half: one.side }),
    beyond: amount.asked === amount.each ? null : say.words(words.beyond, { asked: length(amount.asked) }),
    impossible: impossible
      ? [
          words.impossible[impossible.why],
          ...(impossible.why === 'garment' ? [say.problem(impossible.problem).message] : []),
          ...(cause?.instead ? [cause.instead] : []),
        ].join(' ')
      : null,
    take: say.words(words.takeOf, { alteration }),
  };
};
