/** The connection that events come over. Opcodes and close codes: documentation, Opcodes and Status Codes, and Gateway. */
import { constants, createInflate, inflateSync } from 'node:zlib';
import { pino } from 'pino';
import { afterEach, describe, expect, it } from 'vitest';
import { WebSocket } from 'ws';
import { startDiscord } from '../../../src/adapters/discord/start.ts';
import { openSqlite } from '../../../src/store/sqlite.ts';
import { DiscordServer } from './server/server.ts';
import { guild } from './server/world.ts';
import { realPost, Stage, until } from './support/stage.ts';

const whole = 'is 304 ok on an overhanging tropical sea cliff?';
let stage: Stage | null = null;
afterEach(async () => {
  stage?.check();
  await stage?.strike();
  stage = null;
});

async function stillAnswers(on: Stage): Promise<void> {
  const answer = await on.answer(on.member().runs('material', whole));
  expect(answer.content).toContain('not a certificate');
}

describe('entering', () => {
  it('asks for guilds and messages, and for nothing that needs leave', async () => {
    stage = await Stage.set();
    // Guilds 1, guild messages 512, direct messages 4096.
    expect(stage.server.gateway.identifies).toEqual([{ intents: 4609, shard: [0, 1] }]);
    expect(stage.bot.counters.identifiesLeft).toBe(999);
  });

  it('warns when the gateway was entered very often today: after a thousand times the token is reset', async () => {
    stage = await Stage.set({ server: { identifiesLeft: 12 } });
    expect(stage.logs.join('')).toContain('entered very often');
  });

  it('with a wrong token fails at once and says why', async () => {
    const server = await new DiscordServer().start();
    const post = await realPost(await openSqlite(':memory:'));
    const log = pino({ level: 'silent' });
    const token = `wrong.${server.token}`;
    await expect(startDiscord(post, { token, apiRoot: server.api, log })).rejects.toThrow(
      'Discord does not take DISCORD_TOKEN',
    );
    await server.stop();
  });
});

describe('a line that breaks', () => {
  it('is taken up again where it was, and what came meanwhile is answered', async () => {
    stage = await Stage.set();
    const on = stage;
    await stillAnswers(on);
    on.server.gateway.breakLine();
    const meanwhile = on.member().runs('material', whole);
    await on.answer(meanwhile);
    expect(on.server.gateway.resumes).toBe(1);
    expect(on.server.gateway.identifies).toHaveLength(1);
    expect(on.bot.counters.resumes).toBe(1);
  });

  it.each([4000, 4001, 4002, 4009])('with close code %i is resumed', async (code) => {
    stage = await Stage.set();
    const on = stage;
    on.server.gateway.breakLine(code);
    await until('a resume', () => on.server.gateway.resumes === 1);
    await stillAnswers(on);
  });

  it.each([1000, 4003, 4007, 4008])('with close code %i is entered anew', async (code) => {
    stage = await Stage.set();
    const on = stage;
    on.server.gateway.breakLine(code);
    await until('an identify', () => on.server.gateway.identifies.length === 2);
    await until('ready', () => on.bot.client.isReady());
    await stillAnswers(on);
  });

  it('with a code that forbids to come back says so loudly and stays away', async () => {
    stage = await Stage.set();
    const on = stage;
    on.server.gateway.breakLine(4014);
    await until('a loud line', () => on.logs.some((text) => text.includes('refuses this bot')));
    await expect(on.bot.ended).rejects.toThrow('close code 4014');
    await on.quiet();
    expect(on.server.gateway.identifies).toHaveLength(1);
  });

  it('is left and resumed when the platform asks for it', async () => {
    stage = await Stage.set();
    const on = stage;
    on.server.gateway.tell(7);
    await until('a resume', () => on.server.gateway.resumes === 1);
    await stillAnswers(on);
  });

  it.each([true, false])('whose session is invalid (resumable: %s) is entered again', async (resumable) => {
    stage = await Stage.set();
    const on = stage;
    on.server.gateway.tell(9, resumable);
    await until('a way back', () =>
      resumable ? on.server.gateway.resumes === 1 : on.server.gateway.identifies.length === 2,
    );
    await stillAnswers(on);
  });

  it('and was forgotten by the platform is entered anew', async () => {
    stage = await Stage.set();
    const on = stage;
    const { sessions } = on.server.gateway;
    const [session] = sessions;
    sessions.length = 0;
    session?.line?.socket.terminate();
    await until('an identify', () => on.server.gateway.identifies.length === 2);
    await stillAnswers(on);
  });

  it('but looks alive, half-closed, is found out by heartbeats that nobody answers', async () => {
    const club = guild('Gannet Wall Club');
    stage = await Stage.set({ server: { guilds: [club], heartbeatMs: 300 } });
    const on = stage;
    await until('a heartbeat', () => on.bot.lastHeartbeat() > 0);
    on.server.gateway.deaf = true;
    await until('a new line', () => on.bot.counters.reconnects > 0 || on.server.gateway.resumes > 0);
    on.server.gateway.deaf = false;
    await until('a resume', () => on.server.gateway.resumes > 0);
    await stillAnswers(on);
  });

  it('sends events again after a resume: each is answered once', async () => {
    stage = await Stage.set();
    const on = stage;
    const member = on.member();
    const one = member.interactionEvent(2, member.commandData('material', whole));
    member.send(one);
    await on.settled(one[0]);
    member.send(one);
    on.server.gateway.breakLine();
    await until('a resume', () => on.server.gateway.resumes === 1);
    await on.quiet();
    expect(one[0].acknowledgements).toBe(1);
    expect(on.bot.counters.alreadyAcknowledged).toBe(0);
  });
});

describe('the protocol server itself', () => {
  const first = (server: DiscordServer, query: string, read: (data: Buffer) => string): Promise<unknown> =>
    new Promise((resolve, reject) => {
      const socket = new WebSocket(`${server.url}?v=10&encoding=json${query}`);
      socket.on('error', reject);
      socket.on('message', (data: Buffer) => {
        const text = read(data);
        if (text === '') return;
        resolve(JSON.parse(text));
        socket.close();
      });
    });

  it('speaks compressed where the client asks', async () => {
    const server = await new DiscordServer().start();
    const inflate = createInflate({ finishFlush: constants.Z_SYNC_FLUSH });
    let text = '';
    inflate.on('data', (chunk: Buffer) => {
      text += chunk.toString();
    });
    await new Promise<void>((resolve) => {
      const socket = new WebSocket(`${server.url}?v=10&encoding=json&compress=zlib-stream`);
      socket.on('message', (data: Buffer) =>
        inflate.write(data, () => {
          if (!text.endsWith('}')) return;
          socket.close();
          resolve();
        }),
      );
    });
    expect(JSON.parse(text)).toMatchObject({ op: 10 });
    expect(await first(server, '', String)).toMatchObject({ op: 10 });
    await server.stop();
  });

  it('compresses payloads where identify asks for it, and refuses privileged intents', async () => {
    const server = await new DiscordServer().start();
    const identify = (intents: number): Promise<Buffer | number> =>
      new Promise((resolve) => {
        const socket = new WebSocket(server.url);
        socket.on('close', (code) => resolve(code));
        socket.on('message', (data: Buffer, binary) => {
          if (binary) {
            resolve(data);
            socket.close();
          } else socket.send(JSON.stringify({ op: 2, d: { token: server.token, intents, compress: true } }));
        });
      });
    const packed = await identify(1);
    expect(JSON.parse(String(inflateSync(packed as Buffer)))).toMatchObject({ op: 0, t: 'READY' });
    expect(await identify(1 | (1 << 15))).toBe(4014);
    expect(server.breaches).toHaveLength(1);
    await server.stop();
  });
});
