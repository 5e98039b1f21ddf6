/** Several connections: guild events come to shard (guild id >> 22) % count, direct messages to the first (documentation, Gateway, Sharding). */
import { fileURLToPath } from 'node:url';
import { pino } from 'pino';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { shardOf } from '../../../src/adapters/discord/address.ts';
import { isShard } from '../../../src/adapters/discord/is-shard.ts';
import { manageShards } from '../../../src/adapters/discord/shards.ts';
import { freshStore } from '../../support/program.ts';
import { Member } from './server/member.ts';
import { DiscordServer } from './server/server.ts';
import { channel, type Guild, guild, person } from './server/world.ts';
import { until } from './support/stage.ts';

const file = fileURLToPath(new URL('support/shard.ts', import.meta.url));
const clubs: Guild[] = [];
/** One server for each of the two shards. */
while (new Set(clubs.map(({ id }) => shardOf(`discord:${id}`, 2))).size < 2) {
  await new Promise((resolve) => setTimeout(resolve, 2));
  clubs.push(guild('Split Club'));
}
let server: DiscordServer;
let managed: Awaited<ReturnType<typeof manageShards>>;
beforeAll(async () => {
  server = await new DiscordServer({ guilds: clubs, shards: 2 }).start();
  managed = await manageShards({
    token: server.token,
    shards: 'auto',
    apiRoot: server.api,
    file,
    args: [server.api, freshStore()],
    execArgv: ['--import', 'tsx'],
    log: pino({ level: 'silent' }),
    delayMs: 0,
  });
}, 60_000);
afterAll(async () => {
  await server.stop();
});

it('as many shards as the platform recommends each answer their own servers, and stop when they are told', {
  timeout: 60_000,
}, async () => {
  expect(managed.count).toBe(2);
  expect(server.gateway.identifies.map(({ shard }) => shard.join('/')).sort()).toEqual(['0/2', '1/2']);
  const places = [clubs[0], clubs.at(-1)].map((club) => club?.channels[0]);
  const direct = server.open(channel(undefined, 'direct'));
  for (const place of [...places, direct]) {
    if (place === undefined) throw new Error('no channel');
    const member = new Member(server, person('member'), place.id);
    const one = member.runs('material', 'is 304 ok on an overhanging tropical sea cliff?');
    await until('an answer', () => one.state === 'answered', 20_000);
    expect(one.original?.content).toContain('not a certificate');
  }
  // Each server was greeted once, and commands were written by one shard.
  const greetings = server.messages.all.filter(({ content }) => content.includes('Hello, I am Chough'));
  expect(greetings).toHaveLength(clubs.length);
  expect(server.commandWrites.filter((scope) => scope === 'global')).toHaveLength(1);
  const started = Date.now();
  await managed.stop();
  expect(Date.now() - started).toBeLessThan(10_000);
  expect(server.breaches).toEqual([]);
});

it('a process knows whether the manager started it', () => {
  expect(isShard({})).toBe(false);
  expect(isShard({ SHARDING_MANAGER: 'true', SHARDS: '0' })).toBe(true);
  // The manager itself sets the first of the two for its children.
  expect(isShard({ SHARDING_MANAGER: 'true' })).toBe(false);
});
