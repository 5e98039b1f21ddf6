/** Registering commands: documentation, Application Commands (Bulk Overwrite, Localization, Permissions). */
import { afterEach, describe, expect, it } from 'vitest';
import { Stage, until } from './support/stage.ts';

let stage: Stage | null = null;
afterEach(async () => {
  stage?.check();
  await stage?.strike();
  stage = null;
});

const locales = ['de', 'en-GB', 'en-US', 'es-419', 'es-ES', 'fr', 'it', 'pt-BR'];

describe('commands', () => {
  it('are registered once, in every language, and not again while they are the same', async () => {
    stage = await Stage.set();
    const { server } = stage;
    expect(server.commandWrites).toEqual(['global']);
    const commands = server.commands.get('global') ?? [];
    expect(commands.length).toBeGreaterThan(10);
    for (const command of commands) {
      expect(Object.keys(command.name_localizations ?? {}).sort(), command.name).toEqual(locales);
      if (command.type === 1)
        expect(Object.keys(command.description_localizations ?? {}).sort(), command.name).toEqual(locales);
    }
    const material = commands.find(({ name }) => name === 'material');
    expect(material).toMatchObject({
      name_localizations: { de: 'metall', fr: 'metal', 'es-419': 'material' },
      options: [{ name: 'question', autocomplete: true, name_localizations: { de: 'frage' } }],
    });
    await stage.bot.stop();
    await stage.startBot();
    expect(server.commandWrites).toEqual(['global']);
  });

  it('are written as one set when one of them differs', async () => {
    stage = await Stage.set();
    const { server } = stage;
    const [first, ...rest] = server.commands.get('global') ?? [];
    if (first?.type !== 1) throw new Error('no command');
    server.commands.set('global', [{ ...first, description: 'older' }, ...rest]);
    await stage.bot.stop();
    await stage.startBot();
    expect(server.commandWrites).toEqual(['global', 'global']);
    expect(server.commands.get('global')?.[0]).toMatchObject(first);
  });

  it('of settings are for those who manage the server, and all work in direct messages too', async () => {
    stage = await Stage.set();
    const commands = stage.server.commands.get('global') ?? [];
    const restricted = commands.filter((one) => one.default_member_permissions != null);
    expect(restricted.map(({ name }) => name)).toEqual(['club']);
    // MANAGE_GUILD is bit 5.
    expect(restricted[0]?.default_member_permissions).toBe('32');
    expect(commands.every(({ contexts }) => contexts.join() === '0,1')).toBe(true);
  });

  it('of one server are for developing: the global ones go, and come back without it', async () => {
    stage = await Stage.set();
    const { server, club } = stage;
    const names = server.commands.get('global')?.length;
    await stage.bot.stop();
    await stage.startBot({ guild: club.id });
    expect(server.commands.get(club.id)).toHaveLength(names ?? 0);
    expect(server.commands.get('global')).toEqual([]);
    await stage.bot.stop();
    await stage.startBot();
    expect(server.commands.get('global')).toHaveLength(names ?? 0);
    await until('empty copies', () => server.commands.get(club.id)?.length === 0);
  });

  it('left over in a server are emptied when one of them is used', async () => {
    stage = await Stage.set();
    const on = stage;
    on.server.commands.set(on.club.id, [...(on.server.commands.get('global') ?? [])]);
    const member = on.member();
    const data = { ...member.commandData('help'), guild_id: on.club.id };
    await on.settled(member.send(member.interactionEvent(2, data)));
    await until('empty copies', () => on.server.commands.get(on.club.id)?.length === 0);
  });

  it('that cannot be registered stop nobody from asking', async () => {
    stage = await Stage.set({ bot: { timeoutMs: 500 } });
    const on = stage;
    await on.bot.stop();
    on.server.faults.plan('GET', /commands$/, { kind: 'error', status: 403, code: 50001 }, 4);
    await on.startBot({}, 'could not be handled');
    const answer = await on.answer(on.member().runs('material'));
    expect(answer.content).toContain('crag');
  });
});

it('the invitation asks for five rights and holds no secret', async () => {
  stage = await Stage.set();
  const link = new URL(stage.bot.invite);
  expect(link.searchParams.get('client_id')).toBe(stage.server.application);
  // VIEW_CHANNEL 1<<10, SEND_MESSAGES 1<<11, ATTACH_FILES 1<<15, READ_MESSAGE_HISTORY 1<<16, SEND_MESSAGES_IN_THREADS 1<<38.
  const wanted = [10n, 11n, 15n, 16n, 38n].reduce((sum, bit) => sum | (1n << bit), 0n);
  expect(BigInt(link.searchParams.get('permissions') ?? 0)).toBe(wanted);
  expect(stage.bot.invite).not.toContain(stage.server.token);
});
