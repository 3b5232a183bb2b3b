import { useState } from 'react';
import { type ProblemWords, problemWords, webWords } from '../../src/words/index.ts';
import { useDesk } from '../app/desk-context.ts';
import { goTo } from '../app/router.ts';
import { useSay } from '../app/settings.tsx';
import { leaveNotice } from './notice.ts';
import { Trouble } from './Trouble.tsx';

interface RemovalProps {
  readonly id: string;
  readonly name: string;
  readonly verb: string;
  /** Where to go when it is gone. */
  readonly back: string;
}

/** Takes a document away. It can be put back: the notice left on the next page has the verb. */
export const Removal = ({ id, name, verb, back }: RemovalProps) => {
  const desk = useDesk();
  const say = useSay();
  const [trouble, setTrouble] = useState<ProblemWords | null>(null);
  const remove = async () => {
    const answer = await desk.remove(id);
    if (answer.kind !== 'answer') {
      setTrouble(answer.kind === 'refusal' ? answer.words : (problemWords['web.silent'] ?? null));
      return;
    }
    leaveNotice({ text: say.words(webWords.removal.removed, { name }), restore: id });
    goTo(back);
  };
  return (
    <section className="passage">
      {trouble && <Trouble words={trouble} />}
      <button type="button" className="verb verb-quiet" onClick={() => void remove()}>
        {verb}
      </button>
    </section>
  );
};
