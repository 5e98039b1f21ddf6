/** The protocol server itself: it must notice what the platform would refuse, or the other tests show nothing. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { parseHtml } from './server/html.ts';
import { TelegramServer, testToken } from './server/server.ts';

let server: TelegramServer;
beforeEach(async () => {
  server = await new TelegramServer().start();
  server.world.add({ id: 5, type: 'private', first_name: 'Ana' });
});
afterEach(() => server.stop());

async function call(
  method: string,
  params: object,
  token = testToken,
): Promise<{ ok: boolean; description?: string; result?: unknown }> {
  const response = await fetch(`${server.root}/bot${token}/${method}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(params),
  });
  return (await response.json()) as { ok: boolean };
}

const button = (data: string) => ({ inline_keyboard: [[{ text: 'x', callback_data: data }]] });
const message = { chat_id: 5, text: 'hello' };

test.each([
  ['no such call', 'sendCarrierPigeon', {}],
  ['an unknown parameter', 'sendMessage', { ...message, colour: 'red' }],
  ['an empty text', 'sendMessage', { ...message, text: '  ' }],
  ['4097 units', 'sendMessage', { ...message, text: 'x'.repeat(4097) }],
  ['units, not letters', 'sendMessage', { ...message, text: '😀'.repeat(2049) }],
  ['a tag left open', 'sendMessage', { ...message, text: '<b>x', parse_mode: 'HTML' }],
  ['a bare sign', 'sendMessage', { ...message, text: 'M&M', parse_mode: 'HTML' }],
  ['65 bytes of data', 'sendMessage', { ...message, reply_markup: button('x'.repeat(65)) }],
  ['65 bytes in 33 letters', 'sendMessage', { ...message, reply_markup: button('é'.repeat(33)) }],
  ['no data', 'sendMessage', { ...message, reply_markup: button('') }],
  ['an alert of 201 signs', 'answerCallbackQuery', { callback_query_id: '1', text: 'x'.repeat(201) }],
  ['a command with a capital', 'setMyCommands', { commands: [{ command: 'Help', description: 'x' }] }],
  ['a command of 33 letters', 'setMyCommands', { commands: [{ command: 'x'.repeat(33), description: 'x' }] }],
  [
    '101 commands',
    'setMyCommands',
    { commands: Array.from({ length: 101 }, (_, at) => ({ command: `c${at}`, description: 'x' })) },
  ],
  ['a description of 513', 'setMyDescription', { description: 'x'.repeat(513) }],
  [
    '51 results',
    'answerInlineQuery',
    {
      inline_query_id: '1',
      results: Array.from({ length: 51 }, (_, at) => ({
        type: 'article',
        id: `${at}`,
        title: 'x',
        input_message_content: { message_text: 'x' },
      })),
    },
  ],
  ['a secret with a blank', 'setWebhook', { url: 'https://x.example', secret_token: 'a b' }],
])('a breach is kept and refused: %s', async (_, method, params) => {
  expect((await call(method, params)).ok).toBe(false);
  expect(server.breaches).toHaveLength(1);
});

test('what is just within the limits is taken', async () => {
  const taken = [
    await call('sendMessage', { ...message, text: 'x'.repeat(4096), reply_markup: button('é'.repeat(32)) }),
    await call('sendMessage', { ...message, text: `<b>${'&lt;'.repeat(4096)}</b>`, parse_mode: 'HTML' }),
  ];
  expect(taken.map(({ ok }) => ok)).toEqual([true, true]);
  expect(server.breaches).toEqual([]);
});

test('another token is refused; a chat, a topic and a message that are not there too, without a breach', async () => {
  expect(await call('getMe', {}, '1:other')).toMatchObject({ ok: false, error_code: 401 });
  for (const params of [{ chat_id: 6 }, { message_thread_id: 1 }, { reply_parameters: { message_id: 9 } }])
    expect(await call('sendMessage', { ...message, ...params })).toMatchObject({ error_code: 400 });
  expect(server.breaches).toEqual([]);
});

test('two polls: the older one gets 409; an offset forgets what lies before it', async () => {
  const older = call('getUpdates', { timeout: 5 });
  await server.until('it polls', () => server.updates.polled);
  const newer = call('getUpdates', { timeout: 5 });
  expect(await older).toMatchObject({ error_code: 409 });
  server.updates.push({ message: { text: 'one' } } as never);
  expect(await newer).toMatchObject({ result: [{ update_id: 5001 }] });
  expect(await call('getUpdates', { offset: 5001 })).toMatchObject({ result: [{ update_id: 5001 }] });
  expect(await call('getUpdates', { offset: 5002, timeout: 0 })).toMatchObject({ result: [] });
  expect(await call('getUpdates', { offset: 0, timeout: 0 })).toMatchObject({ result: [] });
});

test('HTML as the reference describes it', () => {
  expect(parseHtml('a <b>b &amp; <i>c</i></b> &lt;d&gt; &quot;&#65;&quot;')).toMatchObject({
    text: 'a b & c <d> "A"',
    entities: [
      { type: 'italic', offset: 6, length: 1 },
      { type: 'bold', offset: 2, length: 5 },
    ],
  });
  for (const bad of ['<p>x</p>', 'a < b', 'a > b', '&nbsp;', '</b>', '<b><i>x</b></i>'])
    expect(parseHtml(bad).ok).toBe(false);
});
