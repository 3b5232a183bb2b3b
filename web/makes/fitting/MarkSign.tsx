import { useState } from 'react';
import {
  type Direction,
  directionsAt,
  fittingZones,
  type Half,
  halves,
  kindsAt,
  type Posture,
  postures,
  type Sign,
  type SignKind,
  type ZoneId,
} from '../../../src/alter/index.ts';
import { fittingWords as words } from '../../../src/words/index.ts';
import { useSay } from '../../app/settings.tsx';
import { Choice } from '../../parts/Choice.tsx';
import { LengthField } from '../../parts/LengthField.tsx';
import { Select } from '../../parts/Select.tsx';
import { saySign, zoneName } from './say-fitting.ts';

interface MarkSignProps {
  readonly zones: readonly ZoneId[];
  readonly zone: ZoneId;
  readonly onZone: (zone: ZoneId) => void;
  /** Names the round, for what is typed. */
  readonly round: string;
  readonly onMark: (sign: Sign) => void;
}

const options = <Value extends string>(values: readonly Value[], names: Readonly<Record<string, string>>) =>
  values.map((value) => ({ value, label: names[value] ?? value }));

/** One thing seen: where, what, how the lines run, in which posture, on which half, and what was pinned. */
export const MarkSign = ({ zones, zone, onZone, round, onMark }: MarkSignProps) => {
  const say = useSay();
  const [wantedKind, setKind] = useState<SignKind>('taut');
  const [wantedDirection, setDirection] = useState<Direction | null>(null);
  const [posture, setPosture] = useState<Posture>('standing');
  const [half, setHalf] = useState<Half>('both');
  const [pinned, setPinned] = useState<number | null>(null);
  const [count, setCount] = useState(0);
  const [said, setSaid] = useState('');
  const kinds = kindsAt(zone);
  const kind = kinds.includes(wantedKind) ? wantedKind : (kinds[0] as SignKind);
  const ways = directionsAt(zone, kind);
  const direction = wantedDirection && ways.includes(wantedDirection) ? wantedDirection : null;
  const mark = () => {
    const sign: Sign = { zone, kind, direction, posture, half, pinned: pinned && pinned > 0 ? pinned : null };
    onMark(sign);
    setSaid(say.words(words.marked, { sign: saySign(sign, say) }));
    setPinned(null);
    setCount(count + 1);
  };
  const views = Object.entries(words.views) as readonly [keyof typeof words.views, string][];
  return (
    <div className="round-marks">
      <Select
        label={words.place}
        hint={words.placeHint}
        value={zone}
        options={views.flatMap(([view, name]) =>
          zones
            .filter((one) => (fittingZones[one].views as readonly string[]).includes(view))
            .map((one) => ({ value: one, label: `${zoneName(one)} (${name})` })),
        )}
        onChange={(value) => onZone(value as ZoneId)}
      />
      <Choice legend={words.what} name="kind" value={kind} options={options(kinds, words.kinds)} onChange={setKind} />
      {ways.length > 0 && (
        <Choice
          legend={words.lines}
          name="lines"
          value={direction ?? 'unsure'}
          options={[...options(ways, words.directions), { value: 'unsure' as const, label: words.linesUnsure }]}
          onChange={(value) => setDirection(value === 'unsure' ? null : value)}
        />
      )}
      <Select
        label={words.posture}
        value={posture}
        options={options(postures, words.postures)}
        onChange={(value) => setPosture(value as Posture)}
      />
      <Choice
        inline
        legend={words.half}
        name="half"
        value={half}
        options={options(halves, words.halves)}
        onChange={setHalf}
      />
      <LengthField
        key={count}
        label={words.pinned}
        place={`pinned ${round}`}
        mm={pinned}
        purpose="amount"
        hint={words.pinnedHint}
        onCommit={setPinned}
      />
      <button type="button" className="verb verb-next" onClick={mark}>
        {words.mark}
      </button>
      <p className="unseen" role="status">
        {said}
      </p>
    </div>
  );
};
