import { type Context, Hono } from 'hono';
import { z } from 'zod';
import { documentKinds, isDocumentKind, type StoredDocument, type Workroom } from '../../store/index.ts';
import { bad, type Result } from '../../units/index.ts';
import { fill, serverWords } from '../../words/index.ts';
import { answer, refuse } from '../answer.ts';
import { readBody } from '../body.ts';
import type { Room } from '../room.ts';

const revision = z.int().min(1);
const body = z.unknown().refine((given) => given !== undefined);
const createSchema = z.strictObject({ kind: z.enum(documentKinds), body });
const updateSchema = z.strictObject({ revision, body });
const deleteSchema = z.strictObject({ revision });
const restoreSchema = z.strictObject({ revision: revision.optional(), to: revision.optional() });

const wrongKind = () =>
  bad('server.wrong-request', {
    field: serverWords.fields.kind,
    wanted: fill(serverWords.wants.kind, { kinds: documentKinds.join(', ') }, 'cm'),
  });

const stale: readonly string[] = ['store.conflict', 'store.deleted'];

/** Answers a change. One made from an older state is answered with what stands there now, so that both can be shown. */
const answerChange = (context: Context, workroom: Workroom, id: string, result: Result<StoredDocument>): Response => {
  if (result.ok || !stale.includes(result.problem.code)) return answer(context, result);
  const current = workroom.read(id);
  return refuse(context, result.problem, current.ok ? { problem: result.problem, current: current.value } : {});
};

/** Documents with their revisions. The store's door checks every body. */
export const documentRoutes = (room: Room): Hono => {
  const routes = new Hono();

  const reading =
    (work: (context: Context, workroom: Workroom) => Response) =>
    (context: Context): Response => {
      const workroom = room.workroom();
      return workroom.ok ? work(context, workroom.value) : refuse(context, workroom.problem);
    };

  const changing =
    <T>(schema: z.ZodType<T>, work: (context: Context, workroom: Workroom, asked: T) => Response) =>
    async (context: Context): Promise<Response> => {
      const asked = await readBody(context.req, schema);
      if (!asked.ok) return refuse(context, asked.problem);
      return reading((_, workroom) => work(context, workroom, asked.value))(context);
    };

  const idOf = (context: Context): string => context.req.param('id') ?? '';

  /** `?kind=` for one kind, `?deleted=yes` to see what was deleted too. */
  routes.get(
    '/',
    reading((context, workroom) => {
      const kind = context.req.query('kind');
      if (kind !== undefined && !isDocumentKind(kind)) return refuse(context, wrongKind().problem);
      const deleted = context.req.query('deleted') === 'yes';
      const documents = workroom.list(kind === undefined ? { deleted } : { kind, deleted });
      return documents.ok ? context.json({ documents: documents.value }) : refuse(context, documents.problem);
    }),
  );

  routes.post(
    '/',
    changing(createSchema, (context, workroom, { kind, body: given }) =>
      answer(context, workroom.create(kind, given), 201),
    ),
  );

  routes.get(
    '/:id',
    reading((context, workroom) => answer(context, workroom.read(idOf(context)))),
  );

  routes.get(
    '/:id/history',
    reading((context, workroom) => {
      const history = workroom.history(idOf(context));
      return history.ok ? context.json({ revisions: history.value }) : refuse(context, history.problem);
    }),
  );

  routes.put(
    '/:id',
    changing(updateSchema, (context, workroom, { revision: from, body: given }) => {
      const id = idOf(context);
      return answerChange(context, workroom, id, workroom.update(id, from, given));
    }),
  );

  routes.delete(
    '/:id',
    changing(deleteSchema, (context, workroom, { revision: from }) => {
      const id = idOf(context);
      return answerChange(context, workroom, id, workroom.remove(id, from));
    }),
  );

  routes.post(
    '/:id/restore',
    changing(restoreSchema, (context, workroom, { revision: from, to }) => {
      const id = idOf(context);
      const choice = { ...(from === undefined ? {} : { revision: from }), ...(to === undefined ? {} : { to }) };
      return answerChange(context, workroom, id, workroom.restore(id, choice));
    }),
  );

  return routes;
};
