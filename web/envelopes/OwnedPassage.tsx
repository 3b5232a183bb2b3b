import type { Make } from '../../src/make/index.ts';
import type { Envelope, Owned } from '../../src/pattern/index.ts';
import { envelopePageWords } from '../../src/words/index.ts';
import { useDocuments } from '../app/desk-context.ts';
import { pathTo } from '../app/router.ts';
import { Passage } from '../makes/Passages.tsx';
import { Choice } from '../parts/Choice.tsx';
import { Link } from '../parts/Link.tsx';
import { WordsField } from '../parts/TextField.tsx';
import { sizesKnown } from './edit.ts';
import { useEnvelope } from './envelope-context.ts';

const words = envelopePageWords.owned;

interface SizesProps {
  readonly legend: string;
  readonly sizes: readonly string[];
  readonly chosen: readonly string[];
  readonly onChange: (chosen: readonly string[]) => void;
}

/** Any of the sizes, in the order of the envelope. */
const Sizes = ({ legend, sizes, chosen, onChange }: SizesProps) => (
  <fieldset>
    <legend>{legend}</legend>
    <div className="check-row">
      {sizes.map((size) => (
        <label className="check" key={size}>
          <input
            type="checkbox"
            checked={chosen.includes(size)}
            onChange={(event) =>
              onChange(sizes.filter((one) => (one === size ? event.target.checked : chosen.includes(one))))
            }
          />
          {size}
        </label>
      ))}
    </div>
  </fieldset>
);

/** Only an address of the web is made a link; anything else stays words. */
const isAddress = (link: string): boolean => /^https?:\/\/[^\s]+$/.test(link);

const MadeFrom = ({ id }: { id: string }) => {
  const makes = useDocuments<Make>('make');
  if (makes.state !== 'here') return null;
  const own = makes.value.filter((make) => make.body.pattern === id);
  if (own.length === 0) return <p>{words.noMakes}</p>;
  return (
    <ul className="plain-list">
      {own.map((make) => (
        <li key={make.id}>
          <Link to={pathTo('make', make.id)}>{make.body.name}</Link>
        </li>
      ))}
    </ul>
  );
};

/** What else she has of the pattern: where it lies, what was cut or traced, what she thinks of it, what was made from it. */
export const OwnedPassage = () => {
  const { id, envelope, change } = useEnvelope();
  const { owned } = envelope;
  const set = (part: Partial<Owned>, name: string) =>
    change((before: Envelope) => ({ ...before, owned: { ...before.owned, ...part } }), name);
  const line = (label: string, part: 'where' | 'copyAt' | 'price', hint?: string) => (
    <WordsField
      label={label}
      hint={hint}
      value={owned[part]}
      onChange={(text) => set({ [part]: text.slice(0, 500) }, part)}
    />
  );
  return (
    <Passage id="owned" title={envelopePageWords.titles.owned}>
      <Choice
        legend={words.form}
        name="form"
        inline
        value={owned.form}
        options={(['paper', 'pdf'] as const).map((value) => ({ value, label: words.forms[value] }))}
        onChange={(form) => set({ form }, 'form')}
      />
      {line(words.where, 'where', words.whereHint)}
      {sizesKnown(envelope) ? (
        <>
          <Sizes legend={words.cut} sizes={envelope.sizes} chosen={owned.cut} onChange={(cut) => set({ cut }, 'cut')} />
          <Sizes
            legend={words.traced}
            sizes={envelope.sizes}
            chosen={owned.traced}
            onChange={(traced) => set({ traced }, 'traced')}
          />
        </>
      ) : (
        <p className="hint">{words.sizesFirst}</p>
      )}
      {line(words.copyAt, 'copyAt')}
      {line(words.price, 'price')}
      <WordsField
        label={words.link}
        hint={words.linkHint}
        value={owned.link}
        onChange={(link) => set({ link: link.slice(0, 2000) }, 'link')}
      />
      {isAddress(owned.link) && (
        <p>
          <a href={owned.link} target="_blank" rel="noreferrer noopener">
            {owned.link}
          </a>
        </p>
      )}
      <WordsField
        label={words.drafting}
        hint={words.draftingHint}
        long
        value={owned.drafting}
        onChange={(drafting) => set({ drafting }, 'drafting')}
      />
      <WordsField
        label={words.instructions}
        long
        value={owned.instructions}
        onChange={(instructions) => set({ instructions }, 'instructions')}
      />
      <h3>{words.makes}</h3>
      <MadeFrom id={id} />
    </Passage>
  );
};
