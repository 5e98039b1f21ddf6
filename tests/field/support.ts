/** One member's talk with a fresh program, each message with an id and a moment of its own. */
import type { App } from '../../src/app.ts';
import type { Message } from '../../src/contracts/message.ts';
import type { Reply } from '../../src/contracts/reply.ts';
import { talk } from '../support/app.ts';

export const now = '2026-11-25T10:00:00Z';
let messages = 0;

export const chatWith =
  (app: App, chat: string) =>
  (what: string | Partial<Message>, user = 'ana', admin = false): Promise<Reply> => {
    messages += 1;
    const message = typeof what === 'string' ? { text: what } : what;
    return talk(app, { id: `m${messages}`, chat, user, admin, at: now, ...message });
  };

/** The id of the first choice that begins so. */
export function choice(reply: Reply, begins: string): string {
  const found = reply.choices.find(({ id }) => id.startsWith(begins))?.id;
  if (found === undefined) throw new Error(`no button ${begins} but ${reply.choices.map(({ id }) => id)}`);
  return found;
}

export function keptId({ text }: Reply): string {
  const id = /\b(t[0-9a-z]{4,})\b/.exec(text)?.[1];
  if (id === undefined) throw new Error(`nothing was kept: ${text}`);
  return id;
}

export const wholePull = 'pulled 12x100 316 twin-leg, epoxy, granite, 36.5 kN, adhesive came out clean';
