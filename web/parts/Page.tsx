import { type ReactNode, useEffect, useRef } from 'react';
import { fill, webWords } from '../../src/words/index.ts';

/** One page of words. Its heading takes the focus when the page is come to, so that a screen reader begins there. */
export const Page = ({ title, children, above }: { title: string; children: ReactNode; above?: ReactNode }) => {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    document.title = fill(webWords.shell.title, { page: title }, 'cm');
  }, [title]);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }, []);
  return (
    <article className="page">
      {above}
      <h1 ref={heading} tabIndex={-1}>
        {title}
      </h1>
      {children}
    </article>
  );
};

/** Shown while something is being fetched or worked out. */
export const Waiting = ({ what }: { what: string }) => (
  <p className="waiting" role="status">
    {what}
  </p>
);
