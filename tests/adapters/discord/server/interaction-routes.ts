/** Acknowledging an interaction, and its messages after that. */
import { z } from 'zod';
import { type Answer, type Call, problem } from './exchange.ts';
import { type Interaction, tokenMs } from './interaction.ts';
import { checkChoices, checkMessage, checkModal } from './limits.ts';
import type { Posted } from './messages.ts';
import type { DiscordServer } from './server.ts';

const callbackSchema = z.strictObject({ type: z.int(), data: z.unknown().optional() });
const flagsSchema = z.looseObject({ flags: z.int().optional() });

const ephemeral = (data: unknown): boolean => {
  const { success, data: read } = flagsSchema.safeParse(data ?? {});
  return success && ((read.flags ?? 0) & 64) !== 0;
};

function breach(server: DiscordServer, call: Call, problems: readonly string[]): Answer {
  const path = call.path.replace(/(webhooks|interactions)\/.*/, '$1/…');
  for (const one of problems) server.breaches.push(`${call.method} ${path}: ${one}`);
  return problem(400, 50035, `Invalid Form Body: ${problems.join('; ')}`);
}

function post(
  server: DiscordServer,
  call: Call,
  data: unknown,
  one: Interaction,
  via: Posted['via'],
): Posted | readonly string[] {
  const { value, problems } = checkMessage(data, call.files.length);
  if (value === null) return problems;
  if (!value.content && call.files.length === 0) return ['an empty message'];
  const posted = server.messages.post(value, call.files, {
    channel: one.channel,
    author: server.bot.id,
    byBot: true,
    private: via === 'original' ? one.private : ephemeral(data),
    via,
  });
  server.announce(posted);
  server.onAnswer(one, posted);
  if (server.options.forget) server.messages.all.length = 0;
  return posted;
}

const isPosted = (value: Posted | readonly string[]): value is Posted => 'id' in value;

function acknowledge(
  server: DiscordServer,
  call: Call,
  one: Interaction,
  type: number,
  data: unknown,
): Answer {
  const done: Answer = { status: 204 };
  switch (type) {
    case 4: {
      const posted = post(server, call, data, one, 'callback');
      if (!isPosted(posted)) return breach(server, call, posted);
      one.original = posted;
      one.private = posted.private;
      one.state = 'answered';
      return done;
    }
    case 5:
      one.private = ephemeral(data);
      one.state = 'thinking';
      return done;
    case 6:
    case 7: {
      if (one.source === null) return breach(server, call, [`type ${type} without a message`]);
      one.original = one.source;
      if (type === 6) {
        one.state = 'update-deferred';
        return done;
      }
      const { value, problems } = checkMessage(data, call.files.length);
      if (value === null) return breach(server, call, problems);
      server.messages.edit(one.source, value, call.files);
      one.state = 'updated';
      return done;
    }
    case 8: {
      if (one.type !== 4) return breach(server, call, ['choices without autocomplete']);
      const { value, problems } = checkChoices(data);
      if (value === null) return breach(server, call, problems);
      one.choices = value.choices;
      one.state = 'choices';
      return done;
    }
    case 9: {
      if (one.type === 5) return breach(server, call, ['a modal in answer to a modal']);
      const { value, problems } = checkModal(data);
      if (value === null) return breach(server, call, problems);
      one.modal = value;
      one.state = 'modal';
      return done;
    }
    default:
      return breach(server, call, [`callback type ${type}`]);
  }
}

export function answerCallback(server: DiscordServer, call: Call, id: string, token: string): Answer {
  const one = server.interactions.get(token);
  if (one === undefined || one.id !== id || one.state === 'expired')
    return problem(404, 10062, 'Unknown interaction');
  const parsed = callbackSchema.safeParse(call.body);
  if (!parsed.success) return breach(server, call, ['no callback']);
  if (one.type === 4 && parsed.data.type !== 8)
    return breach(server, call, ['autocomplete is answered with choices']);
  if (one.state !== 'new') return problem(400, 40060, 'Interaction has already been acknowledged.');
  const answer = acknowledge(server, call, one, parsed.data.type, parsed.data.data);
  if (answer.status === 204) {
    one.acknowledgements += 1;
    one.acknowledgedAfter = Date.now() - one.created;
    if (one.timer) clearTimeout(one.timer);
  }
  return answer;
}

export function answerWebhook(server: DiscordServer, call: Call, token: string, message: string): Answer {
  const one = server.interactions.get(token);
  if (one === undefined) return problem(404, 10015, 'Unknown Webhook');
  if (Date.now() - one.created > tokenMs) return problem(401, 50027, 'Invalid Webhook Token');
  if (one.state === 'new' || one.state === 'expired') return problem(404, 10015, 'Unknown Webhook');
  if (call.method === 'POST') {
    const posted = post(server, call, call.body, one, 'follow-up');
    if (!isPosted(posted)) return breach(server, call, posted);
    one.followUps.push(posted);
    return { status: 200, body: server.messageObject(posted) };
  }
  const target = message === '@original' ? one.original : (server.messages.byId(message) ?? null);
  if (call.method === 'DELETE') {
    if (target) target.deleted = true;
    one.state = 'answered';
    return { status: 204 };
  }
  if (one.state === 'thinking') {
    const posted = post(server, call, call.body, one, 'original');
    if (!isPosted(posted)) return breach(server, call, posted);
    one.original = posted;
    one.state = 'answered';
    return { status: 200, body: server.messageObject(posted) };
  }
  if (target === null || target.deleted) return problem(404, 10008, 'Unknown Message');
  const { value, problems } = checkMessage(call.body, call.files.length);
  if (value === null) return breach(server, call, problems);
  server.messages.edit(target, value, call.files);
  if (one.state === 'update-deferred') one.state = 'updated';
  return { status: 200, body: server.messageObject(target) };
}
