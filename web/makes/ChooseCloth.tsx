import type { Cloth } from '../../src/cloth/index.ts';
import { webWords } from '../../src/words/index.ts';
import { useDocuments } from '../app/desk-context.ts';
import { Link } from '../parts/Link.tsx';
import { Select } from '../parts/Select.tsx';
import { useMake } from './make-context.ts';

const words = webWords.make.layout;

/** Gives the make a cloth, where it has none yet. */
export const ChooseCloth = () => {
  const asked = useDocuments<Cloth>('cloth');
  const { change } = useMake();
  if (asked.state !== 'here') return null;
  if (asked.value.length === 0) {
    return (
      <Link to="/cloth" className="verb verb-next">
        {webWords.cloths.keep}
      </Link>
    );
  }
  return (
    <Select
      label={words.chooseCloth}
      value=""
      options={[
        { value: '', label: webWords.newMake.clothLater },
        ...asked.value.map(({ id, body }) => ({ value: id, label: body.name })),
      ]}
      onChange={(cloth) => cloth !== '' && change((before) => ({ ...before, cloth }), 'cloth')}
    />
  );
};
