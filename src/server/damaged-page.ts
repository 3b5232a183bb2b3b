import type { Context, MiddlewareHandler } from 'hono';
import { html } from 'hono/html';
import type { Problem } from '../units/index.ts';
import { fill, sentence, serverWords } from '../words/index.ts';
import { statusOf } from './answer.ts';
import type { Room } from './room.ts';

const words = serverWords.damaged;

const shown = (context: Context, problem: Problem): Response | Promise<Response> => {
  const { message, remedy } = sentence(problem, 'cm');
  const backup = problem.values?.backup;
  const offer = backup
    ? html`<form method="post" action="/go-back"><button>${fill(words.goBack, { backup }, 'cm')}</button></form>`
    : '';
  return context.html(
    html`<!doctype html>
<html lang="en"><meta charset="utf-8"><title>${words.title}</title>
<main><h1>${words.title}</h1><p>${message}</p><p>${remedy}</p>${offer}</main></html>`,
    statusOf(problem),
  );
};

/**
 * Stands in for the page while the workroom is damaged: says so, and offers its last good backup. Made
 * here and not by the page, so that it needs nothing but a browser.
 */
export const damagedPage =
  (room: Room): MiddlewareHandler =>
  async (context, next) => {
    const workroom = room.workroom();
    if (workroom.ok || context.req.path.startsWith('/api/')) return next();
    if (context.req.method === 'POST' && context.req.path === '/go-back') {
      const restored = await room.goBack();
      if (!restored.ok) return shown(context, restored.problem);
      const movedTo = restored.value.movedTo;
      return context.html(html`<!doctype html>
<html lang="en"><meta charset="utf-8"><title>${words.mended}</title>
<main><h1>${words.mended}</h1>${movedTo ? html`<p>${fill(words.kept, { file: movedTo }, 'cm')}</p>` : ''}
<p><a href="/">${words.open}</a></p></main></html>`);
    }
    return /\.[^/]*$/.test(context.req.path) ? next() : shown(context, workroom.problem);
  };
