import type { Server } from 'node:http';
import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';

/** How many ports after the wanted one are tried. */
const tries = 100;

const attempt = (server: Server, port: number, host: string): Promise<string | undefined> =>
  new Promise((settle) => {
    const failed = (fault: NodeJS.ErrnoException) => {
      server.off('listening', listening);
      settle(fault.code ?? fault.message);
    };
    const listening = () => {
      server.off('error', failed);
      settle(undefined);
    };
    server.once('error', failed);
    server.once('listening', listening);
    server.listen({ port, host, exclusive: true });
  });

/** Listens at the wanted port or the next free one; gives the port it got. Port 0 takes any. */
export const listen = async (server: Server, wanted: number, host: string): Promise<Result<number>> => {
  const last = wanted === 0 ? 0 : Math.min(wanted + tries, 65_535);
  for (let port = wanted; port <= last; port++) {
    const failure = await attempt(server, port, host);
    if (failure === undefined) {
      const address = server.address();
      return good(typeof address === 'object' && address ? address.port : port);
    }
    if (failure !== 'EADDRINUSE') return bad('server.cannot-listen', { host, port: String(port), detail: failure });
  }
  return bad('server.no-free-port', { host, first: String(wanted), last: String(last) });
};
