import { PermissionFlagsBits } from 'discord.js';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { openSqlite } from '../../../src/store/sqlite.ts';
import { snowflake } from './server/ids.ts';
import { type Channel, channel, type Guild, guild, guildObject } from './server/world.ts';
import { Stage, until } from './support/stage.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await Stage.set();
});
afterEach(() => stage.check());
afterAll(() => stage.strike());

function join(club: Guild): void {
  stage.server.know(club);
  stage.server.guilds.push(club);
  stage.server.gateway.dispatch('GUILD_CREATE', guildObject(club, stage.server.bot), club.id);
}

const leave = (club: Guild, more: object = {}): void =>
  stage.server.gateway.dispatch('GUILD_DELETE', { id: club.id, ...more }, club.id);

const greetings = (club: Guild): readonly string[] =>
  stage.server.messages.all
    .filter(({ channel: id }) => club.channels.some((one) => one.id === id))
    .map(({ content }) => content);

const greeted = (club: Guild): Promise<unknown> => until('a greeting', () => greetings(club).length > 0);

describe('taken into a server', () => {
  it('greets once, in the channel for that, in the language of the server', async () => {
    const club = guild('Club Peña Ventosa', { locale: 'es-ES' });
    join(club);
    await greeted(club);
    expect(greetings(club)[0]).toMatch(/nunca certifico|no certifico/i);
    leave(club);
    join(club);
    await stage.quiet();
    expect(greetings(club)).toHaveLength(1);
  });

  it('greets where it may write, if it may not in the channel for that', async () => {
    const id = snowflake();
    const rooms: Channel[] = [
      channel(id, 'rules', { deny: PermissionFlagsBits.SendMessages }),
      channel(id, 'hidden', { deny: PermissionFlagsBits.ViewChannel }),
      channel(id, 'talk'),
    ];
    const club = guild('Cold Scarp Club', { id, channels: rooms, system: rooms[0]?.id ?? null });
    join(club);
    await greeted(club);
    const talk = rooms[2]?.id;
    expect(stage.server.messages.all.filter(({ channel: at }) => at === talk)).toHaveLength(1);
    expect(greetings(club)).toHaveLength(1);
  });

  it('is silent where it may write nowhere', async () => {
    const club = guild('Quiet Club', { botPermissions: PermissionFlagsBits.ViewChannel });
    join(club);
    await stage.quiet();
    expect(greetings(club)).toEqual([]);
  });

  it('greets a server that took it in while it was off', async () => {
    const club = guild('Night Club');
    const store = await openSqlite(':memory:');
    const other = await Stage.set({ server: { guilds: [club] }, store });
    await until('a greeting', () => other.server.messages.all.length > 0);
    await other.bot.stop();
    await other.startBot();
    await other.quiet();
    expect(other.server.messages.all).toHaveLength(1);
    other.check();
    await other.strike();
  });
});

describe('removed from a server', () => {
  it('pauses it, until it is taken in again', async () => {
    const club = guild('Short Stay Club');
    join(club);
    await greeted(club);
    leave(club);
    await stage.quiet();
    expect(await stage.store.isPaused(`discord:${club.id}`)).toBe(true);
    join(club);
    await stage.quiet();
    expect(await stage.store.isPaused(`discord:${club.id}`)).toBe(false);
  });

  it('but not where the platform only has an outage', async () => {
    const club = guild('Outage Club');
    join(club);
    await greeted(club);
    leave(club, { unavailable: true });
    await stage.quiet();
    expect(await stage.store.isPaused(`discord:${club.id}`)).toBe(false);
  });
});

it('remembers neither members nor messages, however many write', async () => {
  const room = stage.room();
  for (let time = 0; time < 30; time += 1) stage.member(room).types('just talk');
  const asked = stage.member(room);
  for (let time = 0; time < 4; time += 1) await stage.answer(stage.member(room).runs('material'));
  asked.types('which glue?', { mention: true });
  await stage.delivered(asked);
  await stage.quiet();
  const { client } = stage.bot;
  const members = client.guilds.cache.map((one) => one.members.cache.size);
  // The bot itself and the last one who wrote.
  expect(Math.max(...members)).toBeLessThanOrEqual(2);
  expect(client.users.cache.size).toBe(1);
  const kept = client.channels.cache.map((one) => ('messages' in one ? one.messages.cache.size : 0));
  expect(Math.max(...kept)).toBe(0);
});
