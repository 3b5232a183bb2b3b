import { createContext, useContext } from 'react';

/** What the workroom says of itself. */
export interface Workroom {
  readonly name: string;
  readonly started: boolean;
  readonly demo: boolean;
  readonly version: string;
}

const WorkroomContext = createContext<Workroom | null>(null);
export const WorkroomProvider = WorkroomContext.Provider;

export const useWorkroomInfo = (): Workroom => {
  const workroom = useContext(WorkroomContext);
  if (!workroom) throw new Error('used outside a workroom');
  return workroom;
};
