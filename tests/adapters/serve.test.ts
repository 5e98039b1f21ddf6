/** `chough serve` as it is run: both platforms in one process, against the protocol servers, until SIGTERM. */
import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { freshStore, root, run } from '../support/program.ts';
import { Member } from './discord/server/member.ts';
import { DiscordServer } from './discord/server/server.ts';
import { channel, guild, person } from './discord/server/world.ts';
import { until } from './discord/support/stage.ts';
import { Person } from './telegram/server/actors.ts';
import { TelegramServer, testToken } from './telegram/server/server.ts';

let telegram: TelegramServer;
let discord: DiscordServer;
let child: ChildProcess;
let said = '';
let logged = '';

beforeAll(async () => {
  telegram = await new TelegramServer().start();
  discord = await new DiscordServer({ guilds: [guild('Gannet Wall Club')] }).start();
  child = spawn('node', [join(root, 'dist', 'chough.js'), 'serve'], {
    stdio: 'pipe',
    env: {
      ...process.env,
      CHOUGH_DB: freshStore(),
      TELEGRAM_TOKEN: testToken,
      TELEGRAM_API_ROOT: telegram.root,
      DISCORD_TOKEN: discord.token,
      DISCORD_API_ROOT: discord.api,
      CHOUGH_HTTP_PORT: '0',
      LOG_LEVEL: 'info',
    },
  });
  child.stdout?.setEncoding('utf8').on('data', (text: string) => {
    said += text;
  });
  child.stderr?.setEncoding('utf8').on('data', (text: string) => {
    logged += text;
  });
  await until('the port', () => said.includes('/metrics'), 30_000);
}, 60_000);

afterAll(async () => {
  child.kill('SIGKILL');
  await telegram.stop();
  await discord.stop();
});

describe('chough serve', () => {
  it('says how the bot is taken in, with the least rights', () => {
    expect(said).toContain('startgroup=club');
    expect(said).toMatch(/scope=bot(\+|%20)applications\.commands/);
  });

  it('answers on both platforms', { timeout: 30_000 }, async () => {
    const ana = new Person(telegram, 4711, 'Ana', 'en');
    const room = ana.private;
    ana.say(room, 'how long must vinyl ester cure at 8 °C?');
    await until(
      'an answer on Telegram',
      () =>
        [...room.messages.values()].some(
          ({ text = '', from }) => from?.is_bot === true && text.includes('never certifies'),
        ),
      20_000,
    );
    const place = discord.open(channel(undefined, 'direct'));
    const ben = new Member(discord, person('ben'), place.id);
    ben.types('how long must vinyl ester cure at 8 °C?');
    await until(
      'an answer on Discord',
      () =>
        discord.messages.all.some(
          ({ content, byBot, channel: id }) =>
            byBot && id === place.id && content.includes('never certifies'),
        ),
      20_000,
    );
  });

  it('shows that it is well, and counts without saying who or what', async () => {
    const [, port] = /port (\d+)/.exec(said) ?? [];
    const at = (path: string) => fetch(`http://127.0.0.1:${port}${path}`);
    expect((await at('/live')).status).toBe(200);
    expect((await at('/ready')).status).toBe(200);
    const metrics = await (await at('/metrics')).text();
    expect(metrics).toContain('chough_answers_total{topic="cure",platform="telegram"} 1');
    expect(metrics).not.toContain('4711');
    expect((await at('/elsewhere')).status).toBe(404);
  });

  it('stops cleanly on SIGTERM, in less than ten seconds, with no secret in its logs', {
    timeout: 20_000,
  }, async () => {
    const began = Date.now();
    const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
    child.kill('SIGTERM');
    expect(await ended).toBe(0);
    expect(Date.now() - began).toBeLessThan(10_000);
    for (const secret of [testToken.slice(-20), discord.token]) expect(said + logged).not.toContain(secret);
    expect(logged).not.toContain('vinyl');
    expect(telegram.breaches).toEqual([]);
    expect(discord.breaches).toEqual([]);
  });

  it('without a token says how to get one, and does nothing', async () => {
    const { code, stdout } = await run(['serve']);
    expect(code).toBe(2);
    expect(stdout).toContain('@BotFather');
    expect(stdout).toContain('privileged intents off');
  });

  it('refuses a webhook without a secret, and a token that nobody gave out', async () => {
    const env = { TELEGRAM_TOKEN: '1:wrong', TELEGRAM_API_ROOT: telegram.root };
    const refused = await run(['serve'], '', freshStore(), undefined, {
      ...env,
      TELEGRAM_WEBHOOK_URL: 'https://bot.example.org',
    });
    expect(refused.code).toBe(1);
    expect(refused.stderr).toContain('TELEGRAM_WEBHOOK_SECRET');
    const wrong = await run(['serve', '--check'], '', freshStore(), undefined, env);
    expect(wrong.code).toBe(1);
    expect(wrong.stderr).toContain('does not take this token');
  });
});
