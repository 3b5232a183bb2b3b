import { Hono } from 'hono';
import { refuse } from './answer.ts';
import { damagedPage } from './damaged-page.ts';
import { guard } from './guard.ts';
import { safeHeaders } from './headers.ts';
import { page } from './page.ts';
import type { Room } from './room.ts';
import { documentRoutes } from './routes/documents.ts';
import { photographRoutes } from './routes/photographs.ts';
import { workroomRoutes } from './routes/workroom.ts';

export interface AppParts {
  readonly room: Room;
  /** Host header values that are answered. */
  readonly hosts: ReadonlySet<string>;
  /** Where the built page lies. */
  readonly pageFolder: string;
  readonly version: string;
  /** Told of every fault of ours. */
  readonly report: (fault: unknown) => void;
}

/** The whole of what the server answers, over one workroom. */
export const createApp = ({ room, hosts, pageFolder, version, report }: AppParts): Hono => {
  const app = new Hono();
  app.use(safeHeaders);
  app.use(guard(hosts, room.token));
  app.route('/api/workroom', workroomRoutes(room, version));
  app.route('/api/documents', documentRoutes(room));
  app.route('/api/photographs', photographRoutes(room));
  app.all('/api/*', (context) => refuse(context, { code: 'server.no-such-place', values: { path: context.req.path } }));
  app.use(damagedPage(room));
  app.all('*', page(pageFolder));
  app.onError((fault, context) => {
    report(fault);
    return refuse(context, { code: 'server.fault' });
  });
  return app;
};
