import { type Context, Hono } from 'hono';
import { answer, refuse } from '../answer.ts';
import { largestPhotograph, readBytes } from '../body.ts';
import { takeIn } from '../photograph.ts';
import type { Room } from '../room.ts';

/** Photographs: the picture itself goes in and comes out; every one that comes in is written anew (see takeIn). */
export const photographRoutes = (room: Room): Hono => {
  const routes = new Hono();
  const idOf = (context: Context): string => context.req.param('id') ?? '';

  routes.post('/', async (context) => {
    const bytes = await readBytes(context.req, largestPhotograph);
    if (!bytes.ok) return refuse(context, bytes.problem);
    const picture = await takeIn(bytes.value);
    if (!picture.ok) return refuse(context, picture.problem);
    const workroom = room.workroom();
    return workroom.ok
      ? answer(context, workroom.value.addPhotograph(picture.value), 201)
      : refuse(context, workroom.problem);
  });

  routes.get('/:id', (context) => {
    const workroom = room.workroom();
    if (!workroom.ok) return refuse(context, workroom.problem);
    const found = workroom.value.photograph(idOf(context));
    if (!found.ok) return refuse(context, found.problem);
    const { mime, bytes } = found.value;
    // A photograph never changes under its name; it is asked for again only to learn whether it was taken away.
    return context.body(Uint8Array.from(bytes), 200, {
      'Content-Type': mime,
      'Content-Length': String(bytes.byteLength),
      'Cache-Control': 'private, no-cache',
    });
  });

  routes.delete('/:id', (context) => {
    const workroom = room.workroom();
    return workroom.ok
      ? answer(context, workroom.value.removePhotograph(idOf(context)))
      : refuse(context, workroom.problem);
  });

  routes.post('/:id/restore', (context) => {
    const workroom = room.workroom();
    return workroom.ok
      ? answer(context, workroom.value.restorePhotograph(idOf(context)))
      : refuse(context, workroom.problem);
  });

  return routes;
};
