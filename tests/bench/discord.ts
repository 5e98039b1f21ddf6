/**
 * The whole way over Discord's client library: a bot that only echoes, and this program with a full answer, against the
 * same protocol server in the same run. The figures of the two are only good beside each other.
 */
import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { setTimeout as sleep } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import type { Interaction } from '../adapters/discord/server/interaction.ts';
import { Member } from '../adapters/discord/server/member.ts';
import { DiscordServer } from '../adapters/discord/server/server.ts';
import { channel, guild, person } from '../adapters/discord/server/world.ts';

const questions = [
  'which bolt for an overhanging limestone sea cliff in the Mediterranean?',
  'is 304 ok on an overhanging tropical sea cliff?',
  'how do I clean the hole for a glue-in?',
  'how far from the edge for a 12x100?',
  'can you certify this anchor?',
];
const rounds = 3;
const warm = 300;
const measured = 1500;
const atOnce = 50;
const perSecond = 40;
const steady = 200;

type Which = 'bare' | 'adapter' | 'ours';

interface Figures {
  readonly perSecond: number;
  readonly busyMs: number;
  readonly calmMs: number;
  readonly calmP99: number;
}

class Load {
  readonly club = guild('Bench Club');
  readonly server = new DiscordServer({
    guilds: [this.club],
    forget: true,
    perBucket: 1e9,
    perSecond: 1e9,
  });
  readonly #waiting = new Map<string, (took: number) => void>();
  #count = 0;
  /** A full answer ends with the message that has the buttons; an echo is one message. */
  whole = false;

  async start(): Promise<void> {
    await this.server.start();
    this.server.onAnswer = (one, posted) => {
      if (this.whole && posted.components.length === 0 && !posted.content.includes('never certif')) return;
      this.#done(one);
    };
  }

  #done(one: Interaction): void {
    if (one.timer) clearTimeout(one.timer);
    this.server.interactions.delete(one.token);
    this.#waiting.get(one.token)?.(performance.now());
    this.#waiting.delete(one.token);
  }

  /** Milliseconds from the event to the last part of its answer. */
  async ask(): Promise<number> {
    this.#count += 1;
    const room = channel(this.club.id, 'bench');
    this.server.channels.set(room.id, room);
    const member = new Member(this.server, person(`member-${this.#count}`), room.id);
    const event = member.interactionEvent(
      2,
      member.commandData('material', questions[this.#count % questions.length]),
    );
    const started = performance.now();
    const ended = new Promise<number>((resolve) => this.#waiting.set(event[0].token, resolve));
    member.send(event);
    const took = (await ended) - started;
    this.server.channels.delete(room.id);
    return took;
  }

  async many(count: number): Promise<number[]> {
    const taken: number[] = [];
    let left = count;
    const one = async (): Promise<void> => {
      while (left > 0) {
        left -= 1;
        taken.push(await this.ask());
      }
    };
    await Promise.all(Array.from({ length: atOnce }, one));
    return taken;
  }

  async calm(): Promise<number[]> {
    const asked: Promise<number>[] = [];
    for (let count = 0; count < steady; count += 1) {
      asked.push(this.ask());
      await sleep(1000 / perSecond);
    }
    return Promise.all(asked);
  }
}

const at = (values: readonly number[], share: number): number =>
  values.toSorted((a, b) => a - b)[Math.floor(values.length * share)] ?? Number.NaN;

async function bot(which: Which, server: DiscordServer): Promise<ChildProcess> {
  const child = fork(fileURLToPath(new URL('discord-bot.ts', import.meta.url)), [which, server.api], {
    execArgv: ['--import', 'tsx'],
    env: { ...process.env, DISCORD_TOKEN: server.token },
  });
  // A bot that ends by itself must not leave the load waiting.
  child.on('exit', (code) => {
    if (code) throw new Error(`the bot ${which} ended with ${code}`);
  });
  await once(child, 'message');
  return child;
}

async function measureBot(which: Which): Promise<Figures> {
  const load = new Load();
  await load.start();
  load.whole = which === 'ours';
  const child = await bot(which, load.server);
  await load.many(warm);
  const started = performance.now();
  const busy = await load.many(measured);
  const seconds = (performance.now() - started) / 1000;
  const calm = await load.calm();
  child.kill();
  await once(child, 'exit');
  await load.server.stop();
  if (load.server.breaches.length > 0) throw new Error(load.server.breaches.slice(0, 5).join('\n'));
  return {
    perSecond: measured / seconds,
    busyMs: at(busy, 0.5),
    calmMs: at(calm, 0.5),
    calmP99: at(calm, 0.99),
  };
}

export async function run(): Promise<void> {
  const names = { bare: 'bare echo', adapter: 'adapter alone', ours: 'full answer' } as const;
  const all: Record<Which, Figures[]> = { bare: [], adapter: [], ours: [] };
  for (let round = 1; round <= rounds; round += 1)
    for (const which of ['bare', 'adapter', 'ours'] as const) {
      const figures = await measureBot(which);
      all[which].push(figures);
      console.log(
        `  ${round} ${names[which].padEnd(14)} ${figures.perSecond.toFixed(0).padStart(6)}/s with ${atOnce} at once, median ${figures.busyMs.toFixed(1)} ms; at ${perSecond}/s median ${figures.calmMs.toFixed(2)} ms, p99 ${figures.calmP99.toFixed(1)} ms`,
      );
    }
  const beside = (which: Which, of: (one: Figures, bare: Figures) => number): number =>
    at(
      all[which].map((one, round) => of(one, all.bare[round] ?? one)),
      0.5,
    );
  for (const which of ['adapter', 'ours'] as const)
    console.log(
      `  ${names[which]} beside a bare echo: ${(beside(which, (one, bare) => one.perSecond / bare.perSecond) * 100).toFixed(0)} % of the throughput, ${beside(which, (one, bare) => one.calmMs - bare.calmMs).toFixed(2)} ms more at the median (median of ${rounds} rounds)`,
    );
}
