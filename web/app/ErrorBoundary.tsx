import { Component, type ReactNode } from 'react';
import { problemWords, webWords } from '../../src/words/index.ts';
import { Trouble } from '../parts/Trouble.tsx';

interface Props {
  readonly children: ReactNode;
  /** When this changes the fault is left behind: another page, another document. */
  readonly place: string;
}

interface State {
  readonly fault: Error | null;
  readonly place: string;
}

const isMissingPart = (fault: Error) =>
  /dynamically imported module|Importing a module|Loading chunk/i.test(fault.message);

/** Stands where a part of the page failed, and says so; the rest goes on. */
export class ErrorBoundary extends Component<Props, State> {
  override state: State = { fault: null, place: this.props.place };

  static getDerivedStateFromError(fault: unknown): Partial<State> {
    return { fault: fault instanceof Error ? fault : new Error(String(fault)) };
  }

  static getDerivedStateFromProps(props: Props, state: State): Partial<State> | null {
    return props.place === state.place ? null : { fault: null, place: props.place };
  }

  override render() {
    const { fault } = this.state;
    if (!fault) return this.props.children;
    const words = problemWords[isMissingPart(fault) ? 'web.page-not-loaded' : 'web.fault'];
    return (
      <div className="page">
        {words && (
          <Trouble words={words}>
            <button type="button" className="verb" onClick={() => window.location.reload()}>
              {webWords.shell.reload}
            </button>
          </Trouble>
        )}
        <pre className="fault">{fault.message}</pre>
      </div>
    );
  }
}
