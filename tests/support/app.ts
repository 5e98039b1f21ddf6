import { type App, makeApp } from '../../src/app.ts';
import type { Message } from '../../src/contracts/message.ts';
import type { Reply } from '../../src/contracts/reply.ts';
import { openSqlite } from '../../src/store/sqlite.ts';
import { rulesFolder } from './desk.ts';

/** The whole program but for its adapter, with a store of its own in memory. */
export async function freshApp(): Promise<App> {
  return makeApp(rulesFolder, await openSqlite(':memory:'), { oneShot: false });
}

export async function talk(app: App, message: Partial<Message>): Promise<Reply> {
  const reply = await app.respond({ id: '1', chat: 'chat', user: 'user', ...message });
  if ('silent' in reply) throw new Error('silence');
  return reply;
}
