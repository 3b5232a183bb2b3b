import { useMemo } from 'react';
import { type Envelope, readEnvelope } from '../../src/pattern/index.ts';
import { useDocument } from '../app/desk-context.ts';

/** The envelope by which the pattern of an id is known, read again through its own door; null where it is something else, or is not here yet. */
export const useKnownEnvelope = (id: string): Envelope | null => {
  const asked = useDocument<unknown>(id.startsWith('house:') ? '' : id);
  const body = asked.state === 'here' && asked.value.kind === 'envelope' ? asked.value.body : null;
  return useMemo(() => {
    const read = body === null ? null : readEnvelope(body);
    return read?.ok ? read.value : null;
  }, [body]);
};
