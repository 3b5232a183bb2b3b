import type { ReactNode } from 'react';
import type { ProblemWords } from '../../src/words/index.ts';

/** Something was not right: what, and what she can do. Read out when it appears. */
export const Trouble = ({ words, children }: { words: ProblemWords; children?: ReactNode }) => (
  <div className="trouble" role="alert">
    <p>
      <strong>{words.message}</strong> {words.remedy}
    </p>
    {children}
  </div>
);
