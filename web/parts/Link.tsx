import type { MouseEvent, ReactNode } from 'react';
import { goTo } from '../app/router.ts';

interface LinkProps {
  readonly to: string;
  readonly children: ReactNode;
  readonly className?: string;
  readonly current?: boolean;
}

/** A link within the program. A new tab, a new window or a download stay the browser's. */
export const Link = ({ to, children, className, current }: LinkProps) => {
  const follow = (event: MouseEvent) => {
    if (event.button !== 0 || event.metaKey || event.ctrlKey || event.shiftKey || event.altKey) return;
    event.preventDefault();
    goTo(to);
  };
  return (
    <a href={to} className={className} aria-current={current ? 'page' : undefined} onClick={follow}>
      {children}
    </a>
  );
};
