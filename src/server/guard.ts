import { timingSafeEqual } from 'node:crypto';
import { networkInterfaces } from 'node:os';
import type { MiddlewareHandler } from 'hono';
import { refuse } from './answer.ts';

const bracketed = (host: string): string => (host.includes(':') ? `[${host}]` : host);

/** An address as it stands in a URL and in the Host header. */
export const authority = (host: string, port: number): string => `${bracketed(host)}${port === 80 ? '' : `:${port}`}`;

const loopback = ['127.0.0.1', 'localhost', '::1'];

/**
 * The Host values this server answers to. A page from outside whose name was made to point at this
 * machine (DNS rebinding) sends its own name and is refused. When told to listen everywhere, the
 * machine's own numeric addresses are added, which no such page can carry.
 */
export const allowedHosts = (host: string, port: number): ReadonlySet<string> => {
  const everywhere = host === '0.0.0.0' || host === '::';
  const own = everywhere
    ? Object.values(networkInterfaces()).flatMap((addresses) => (addresses ?? []).map(({ address }) => address))
    : [host];
  return new Set([...loopback, ...own].map((name) => authority(name.toLowerCase(), port)));
};

const sameText = (a: string, b: string): boolean => {
  const [left, right] = [Buffer.from(a), Buffer.from(b)];
  return left.length === right.length && timingSafeEqual(left, right);
};

const safeMethods: readonly string[] = ['GET', 'HEAD'];

/**
 * Lets through what comes from our own page or from this person's own programs. Whatever may change
 * something has to carry our Origin, or the token that only she can read (owner.json); reading the
 * workroom across sites is refused where the browser says that it is that.
 */
export const guard =
  (hosts: ReadonlySet<string>, token: () => string): MiddlewareHandler =>
  async (context, next) => {
    const host = (context.req.header('host') ?? '').toLowerCase();
    if (!hosts.has(host)) return refuse(context, { code: 'server.wrong-host', values: { host: host.slice(0, 200) } });
    const origin = context.req.header('origin');
    const bearer = /^Bearer (.+)$/.exec(context.req.header('authorization') ?? '')?.[1];
    const ours = origin === `http://${host}`;
    const hers = bearer !== undefined && sameText(bearer, token());
    const changes = !safeMethods.includes(context.req.method);
    const acrossSites = ['cross-site', 'same-site'].includes(context.req.header('sec-fetch-site') ?? '');
    const refused = changes
      ? !(ours || (origin === undefined && hers))
      : context.req.path.startsWith('/api/') && ((origin !== undefined && !ours) || acrossSites);
    if (refused) return refuse(context, { code: 'server.wrong-origin' });
    return next();
  };
