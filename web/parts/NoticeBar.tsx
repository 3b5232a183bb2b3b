import { webWords } from '../../src/words/index.ts';
import { useDesk } from '../app/desk-context.ts';
import { leaveNotice, useNotice } from './notice.ts';

/** What was just taken away, and the verb that puts it back. */
export const NoticeBar = () => {
  const desk = useDesk();
  const notice = useNotice();
  const restore = async (id: string) => {
    const answer = await desk.restore(id);
    leaveNotice(answer.kind === 'answer' ? null : { text: webWords.removal.notRestored, restore: id });
  };
  return (
    <div role="status">
      {notice && (
        <div className="trouble verbs">
          <p>{notice.text}</p>
          {notice.restore !== null && (
            <button type="button" className="verb" onClick={() => void restore(notice.restore ?? '')}>
              {webWords.removal.putBack}
            </button>
          )}
          <button type="button" className="verb verb-quiet" onClick={() => leaveNotice(null)}>
            {webWords.removal.dismiss}
          </button>
        </div>
      )}
    </div>
  );
};
