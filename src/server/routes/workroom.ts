import { Hono } from 'hono';
import { z } from 'zod';
import { demoDocuments } from '../../../demo/index.ts';
import { answer, refuse } from '../answer.ts';
import { readBody } from '../body.ts';
import type { Room } from '../room.ts';

const startSchema = z.strictObject({ choice: z.enum(['demo', 'own']) });
const restoreSchema = z.strictObject({ takenAt: z.string().max(40).optional() });

/** The workroom as a whole: what it is, how it is started, and going back to a backup when it is damaged. */
export const workroomRoutes = (room: Room, version: string): Hono => {
  const routes = new Hono();

  routes.get('/', (context) => {
    const workroom = room.workroom();
    if (!workroom.ok) return refuse(context, workroom.problem);
    return context.json({ ...workroom.value.facts(), version });
  });

  routes.post('/start', async (context) => {
    const asked = await readBody(context.req, startSchema);
    if (!asked.ok) return refuse(context, asked.problem);
    const workroom = room.workroom();
    if (!workroom.ok) return refuse(context, workroom.problem);
    const { choice } = asked.value;
    const started = workroom.value.start(choice, choice === 'demo' ? demoDocuments() : []);
    return started.ok ? context.json({ ...started.value, version }) : refuse(context, started.problem);
  });

  routes.post('/restore', async (context) => {
    const asked = await readBody(context.req, restoreSchema);
    if (!asked.ok) return refuse(context, asked.problem);
    return answer(context, await room.goBack(asked.value.takenAt));
  });

  return routes;
};
