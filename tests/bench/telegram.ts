/**
 * The whole way over the wire, by turns, each bot in a process of its own against the same protocol server: a bare echo
 * bot; the adapter and the store on disk with one fixed long answer; the program with real rules. Every question comes
 * from another member. Without the platform's pace: what the program itself can do.
 */
import { type ChildProcess, spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { Person } from '../adapters/telegram/server/actors.ts';
import { TelegramServer } from '../adapters/telegram/server/server.ts';
import { questions } from './telegram-questions.ts';

const underWay = 100;
const rounds = 3;

interface Measured {
  readonly perSecond: number;
  readonly median: number;
  readonly p99: number;
}

const programme = fileURLToPath(new URL('./telegram-bots.ts', import.meta.url));

function launch(which: string, root: string): ChildProcess {
  return spawn(process.execPath, ['--import', 'tsx', programme, which, root], { stdio: 'inherit' });
}

class Load {
  readonly #server: TelegramServer;
  readonly #waiting = new Map<
    number,
    { readonly at: number; readonly done: (milliseconds: number) => void }
  >();
  #asked = 0;

  constructor(server: TelegramServer) {
    this.#server = server;
    // The first message of an answer is what the member waits for.
    server.onSent = (chat) => {
      const waiting = this.#waiting.get(chat);
      this.#waiting.delete(chat);
      waiting?.done(performance.now() - waiting.at);
    };
  }

  /** Milliseconds until the answer. */
  ask(): Promise<number> {
    const person = new Person(this.#server, 10_000 + this.#asked, 'Member', 'en');
    const text = questions[this.#asked % questions.length] ?? '';
    this.#asked += 1;
    return new Promise((done) => {
      this.#waiting.set(person.user.id, { at: performance.now(), done });
      person.say(person.private, text);
    });
  }

  /** So many a second with so many members asking side by side. */
  async full(times: number): Promise<number> {
    let next = 0;
    const from = performance.now();
    await Promise.all(
      Array.from({ length: underWay }, async () => {
        while (next < times) {
          next += 1;
          await this.ask();
        }
      }),
    );
    return (times / (performance.now() - from)) * 1000;
  }

  /** Waits at a steady rate, sorted. */
  async steady(times: number, perSecond: number): Promise<number[]> {
    const waits: Promise<number>[] = [];
    for (let at = 0; at < times; at += 1) {
      waits.push(this.ask());
      await new Promise((resolve) => setTimeout(resolve, 1000 / perSecond));
    }
    return (await Promise.all(waits)).sort((a, b) => a - b);
  }
}

async function measureBot(which: string): Promise<Measured> {
  const server = await new TelegramServer().start();
  server.keepCalls = false;
  const bot = launch(which, server.root);
  try {
    await server.until('the bot asks for updates', () => server.updates.polled, 30_000);
    const load = new Load(server);
    await load.full(400);
    const perSecond = await load.full(2000);
    const waits = await load.steady(250, 50);
    const at = (share: number): number => waits[Math.floor(waits.length * share)] ?? 0;
    if (server.breaches.length > 0) throw new Error(server.breaches[0]);
    return { perSecond, median: at(0.5), p99: at(0.99) };
  } finally {
    bot.kill('SIGKILL');
    await server.stop();
  }
}

const middle = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;

const bots = ['echo', 'courier', 'chough'] as const;

export async function run(): Promise<void> {
  const measured = new Map<string, Measured[]>(bots.map((bot) => [bot, []]));
  for (let round = 0; round < rounds; round += 1)
    for (const bot of bots) {
      const one = await measureBot(bot);
      measured.get(bot)?.push(one);
      console.log(
        `  ${bot.padEnd(8)} ${one.perSecond.toFixed(0).padStart(6)} answers/s with ${underWay} under way   at 50/s: median ${one.median.toFixed(2)} ms, p99 ${one.p99.toFixed(1)} ms`,
      );
    }
  const of = (bot: string, what: keyof Measured): number =>
    middle((measured.get(bot) ?? []).map((one) => one[what]));
  for (const bot of ['courier', 'chough'])
    console.log(
      `  ${bot}, middle of ${rounds} rounds: ${((of(bot, 'perSecond') / of('echo', 'perSecond')) * 100).toFixed(0)} % of the echo bot's throughput, ${(of(bot, 'median') - of('echo', 'median')).toFixed(2)} ms added at the median`,
    );
}
