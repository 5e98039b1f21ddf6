/** Updates brought by the platform. */
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { pino } from 'pino';
import { expect, test } from 'vitest';
import type { Post } from '../../../src/adapters/post.ts';
import { startTelegram } from '../../../src/adapters/telegram/start.ts';
import { testToken } from './server/server.ts';
import { lull, raise, type Stage } from './stage.ts';

const secret = 'a-secret_of_enough_signs-0123';

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  await new Promise((resolve) => server.close(resolve));
  return port;
}

async function hooked(wrap?: (post: Post) => Post): Promise<Stage> {
  const port = await freePort();
  // The platform asks for https; a proxy before the program ends it.
  const webhook = { url: `http://127.0.0.1:${port}`, secret, port };
  return raise({ webhook, ...(wrap === undefined ? {} : { wrap }) });
}

test('messages come and are answered; the platform is told the secret and an address not to be guessed', async () => {
  const stage = await hooked();
  const { ana, server, answer } = stage;
  ana.say(ana.private, '/help');
  await answer(ana.private, 1);
  expect(server.callsOf('getUpdates')).toEqual([]);
  const [set] = server.callsOf('setWebhook');
  expect(set?.params).toMatchObject({ secret_token: secret });
  expect(new URL(String(set?.params.url)).pathname).toMatch(/^\/telegram\/[0-9a-f]{40}$/);
  expect(String(set?.params.url)).not.toContain(secret);
  await stage.end();
});

test('without the secret, with a wrong one, or elsewhere nobody is heard; what is no update is refused', async () => {
  const stage = await hooked();
  const { ana, server, own } = stage;
  const message = ana.send(ana.private, { text: '/help' });
  const body = JSON.stringify({ update_id: 1, message });
  const call = async (...args: Parameters<typeof server.webhook.call>): Promise<number> =>
    (await server.webhook.call(...args)).status;
  expect(await call(body, '')).toBe(401);
  expect(await call(body, 'wrong')).toBe(401);
  expect(await call(body, `${secret}x`)).toBe(401);
  expect(await call(body, secret, new URL('/', server.webhook.url).href)).toBe(404);
  expect(await call('no json', secret)).toBe(400);
  expect(await call('[]', secret)).toBe(400);
  expect(await call('{"update_id":"1"}', secret)).toBe(400);
  expect(await call('x'.repeat(2 ** 20 + 1), secret)).toBe(413);
  expect((await fetch(server.webhook.url)).status).toBe(404);
  await lull();
  expect(own(ana.private)).toEqual([]);
  expect(await call(body, secret)).toBe(200);
  await stage.answer(ana.private, 1);
  await stage.end();
});

test('200 comes when the update is stored, before anything is sent; a copy of it changes nothing', async () => {
  const stage = await hooked();
  const { ana, server, answer, own } = stage;
  server.faults.plan('sendMessage', {
    kind: 'error',
    code: 429,
    description: 'Too Many Requests: retry after 1',
    parameters: { retry_after: 1 },
  });
  const body = JSON.stringify({ update_id: 77, message: ana.send(ana.private, { text: '/help' }) });
  expect((await server.webhook.call(body)).status).toBe(200);
  expect(own(ana.private)).toEqual([]);
  expect(await stage.post.undelivered()).toHaveLength(1);
  expect((await server.webhook.call(body)).status).toBe(200);
  await answer(ana.private, 1);
  await lull();
  expect(own(ana.private)).toHaveLength(1);
  await stage.end();
});

test('updates that come out of order are all taken, once each', async () => {
  const stage = await hooked();
  const { ana, ben, server, answer, own } = stage;
  const later = JSON.stringify({ update_id: 91, message: ana.send(ana.private, { text: '/help' }) });
  const sooner = JSON.stringify({ update_id: 90, message: ben.send(ben.private, { text: '/help' }) });
  for (const body of [later, sooner, later]) expect((await server.webhook.call(body)).status).toBe(200);
  await answer(ana.private, 1);
  await answer(ben.private, 1);
  await lull();
  expect([own(ana.private).length, own(ben.private).length]).toEqual([1, 1]);
  await stage.end();
});

test('a handler that breaks is told to the member, and the platform does not call for ever', async () => {
  const stage = await hooked((post) => {
    post.take = () => Promise.reject(new Error('planned'));
    return post;
  });
  const { ana, server, answer } = stage;
  ana.say(ana.private, '/help');
  expect((await answer(ana.private, 1)).text).toContain('Something in me failed');
  await server.until('it was taken', () => server.updates.waiting.length === 0);
  await stage.end();
});

test.each(['', 'short', 'with blanks and so on …', 'x'.repeat(257)])(
  'no start with the secret "%s"',
  async (bad) => {
    const stage = await raise();
    const options = { token: testToken, apiRoot: stage.server.root, log: pino({ level: 'silent' }) };
    const webhook = { url: 'https://bot.example', secret: bad, port: 0 };
    await expect(startTelegram(stage.post, { ...options, webhook })).rejects.toThrow(
      /TELEGRAM_WEBHOOK_SECRET/,
    );
    expect(stage.server.callsOf('setWebhook')).toEqual([]);
    await stage.end();
  },
);

test('polling takes a webhook away that was set before', async () => {
  const stage = await raise({ before: (server) => server.webhook.set('http://127.0.0.1:1/old', 'old') });
  stage.ana.say(stage.ana.private, '/help');
  await stage.answer(stage.ana.private, 1);
  expect(stage.server.webhook.url).toBe('');
  await stage.end();
});
