/** The calls of REST v10 that a bot like this may make; any other one is a breach. */
import { checkCommands } from './command-limits.ts';
import { type Answer, type Call, problem } from './exchange.ts';
import { answerCallback, answerWebhook } from './interaction-routes.ts';
import { checkMessage } from './limits.ts';
import type { DiscordServer } from './server.ts';
import { userObject } from './world.ts';

const breach = (server: DiscordServer, call: Call, problems: readonly string[]): Answer => {
  for (const one of problems) server.breaches.push(`${call.method} ${call.path}: ${one}`);
  return problem(400, 50035, `Invalid Form Body: ${problems.join('; ')}`);
};

function gatewayBot(server: DiscordServer): Answer {
  return {
    status: 200,
    body: {
      url: server.url,
      shards: server.options.shards ?? 1,
      session_start_limit: {
        total: 1000,
        remaining: server.options.identifiesLeft ?? 999,
        reset_after: 3_600_000,
        max_concurrency: 16,
      },
    },
  };
}

function commands(server: DiscordServer, call: Call, scope: string): Answer {
  if (call.method === 'GET') {
    const full = call.query.get('with_localizations') === 'true';
    const known = server.commands.get(scope) ?? [];
    return {
      status: 200,
      // Without the query the localisations are left out: a comparison would always differ.
      body: known.map((one, index) => ({
        id: String(index + 1),
        application_id: server.application,
        version: '1',
        ...one,
        ...(full ? {} : { name_localizations: undefined, description_localizations: undefined }),
      })),
    };
  }
  if (call.method !== 'PUT') return breach(server, call, ['commands are written as one set']);
  const { value, problems } = checkCommands(call.body);
  if (value === null) return breach(server, call, problems);
  server.commands.set(scope, value);
  server.commandWrites.push(scope);
  return { status: 200, body: value };
}

function postMessage(server: DiscordServer, call: Call, id: string): Answer {
  const channel = server.channels.get(id);
  if (channel === undefined) return problem(404, 10003, 'Unknown Channel');
  if (channel.archived) return problem(400, 50083, 'Thread is archived');
  const { value, problems } = checkMessage(call.body, call.files.length);
  if (value === null) return breach(server, call, problems);
  if (!value.content && call.files.length === 0) return breach(server, call, ['an empty message']);
  if (value.nonce === undefined || value.enforce_nonce !== true)
    return breach(server, call, ['no enforced nonce: a retry would double the message']);
  if (((value.flags ?? 0) & 64) !== 0) return breach(server, call, ['flag 64 outside of an interaction']);
  const same = server.messages.all.find((one) => one.channel === id && one.nonce === String(value.nonce));
  if (same) return { status: 200, body: server.messageObject(same) };
  const target = value.message_reference;
  if (target && !server.messages.byId(target.message_id) && target.fail_if_not_exists !== false)
    return problem(400, 50035, 'Unknown message');
  const posted = server.messages.post(value, call.files, {
    channel: id,
    author: server.bot.id,
    byBot: true,
    private: false,
    via: 'channel',
  });
  server.announce(posted);
  return { status: 200, body: server.messageObject(posted) };
}

function editMessage(server: DiscordServer, call: Call, id: string): Answer {
  const posted = server.messages.byId(id);
  if (posted === undefined) return problem(404, 10008, 'Unknown Message');
  if (!posted.byBot) return problem(403, 50005, 'Cannot edit a message authored by another user');
  const { value, problems } = checkMessage(call.body, call.files.length);
  if (value === null) return breach(server, call, problems);
  server.messages.edit(posted, value, call.files);
  return { status: 200, body: server.messageObject(posted) };
}

export async function route(server: DiscordServer, call: Call): Promise<Answer> {
  const { method, path } = call;
  const parts = path.split('/').slice(1);
  const [kind = '', first = '', second = '', third = '', fourth = ''] = parts;
  if (kind === 'attachments') {
    const found = server.downloads.get(path);
    if (found === undefined) return { status: 404 };
    if (found.delayMs) await new Promise((resolve) => setTimeout(resolve, found.delayMs));
    return { status: 200, body: found.bytes, headers: { 'content-type': 'application/octet-stream' } };
  }
  if (kind === 'interactions' && third === 'callback') return answerCallback(server, call, first, second);
  if (kind === 'webhooks') return answerWebhook(server, call, second, fourth);
  if (call.authorization !== `Bot ${server.token}`) return problem(401, 0, '401: Unauthorized');
  if (path === '/gateway/bot') return gatewayBot(server);
  if (path === '/users/@me') return { status: 200, body: userObject(server.bot, true) };
  if (path === '/applications/@me' || path === '/oauth2/applications/@me')
    return { status: 200, body: { id: server.application, name: 'Chough', flags: 0 } };
  if (kind === 'applications' && second === 'commands') return commands(server, call, 'global');
  if (kind === 'applications' && second === 'guilds') return commands(server, call, third);
  if (kind === 'channels' && second === 'typing') {
    server.typed.push(first);
    return { status: 204 };
  }
  if (kind === 'channels' && second === 'messages' && method === 'POST')
    return postMessage(server, call, first);
  if (kind === 'channels' && second === 'messages' && method === 'PATCH')
    return editMessage(server, call, third);
  if (kind === 'channels' && second === '' && method === 'GET') {
    const known = server.channels.has(first);
    return known
      ? { status: 200, body: server.channelObject(first) }
      : problem(404, 10003, 'Unknown Channel');
  }
  return breach(server, call, ['a call nobody needs']);
}
