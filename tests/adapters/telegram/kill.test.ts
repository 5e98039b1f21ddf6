/** The process is killed outright, again and again, while members write: every message is answered all the same. */
import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { Person } from './server/actors.ts';
import { TelegramServer } from './server/server.ts';
import { bot } from './server/world.ts';
import { freshFile } from './stage.ts';

const program = fileURLToPath(new URL('./child.ts', import.meta.url));
const members = 60;
/** One a round, each with an answer of its own. */
const commands = ['/help', '/why', '/material'];

test('killed in the midst of three rounds: no message is lost, none counts twice, a repeat says that it is one', async () => {
  const server = await new TelegramServer().start();
  const file = freshFile();
  const start = async (): Promise<ChildProcess> => {
    const child = spawn(process.execPath, ['--import', 'tsx', program, server.root, file], {
      stdio: 'inherit',
    });
    await server.until('it polls', () => server.updates.polled, 30_000);
    return child;
  };
  const people = Array.from({ length: members }, (_, at) => new Person(server, 4000 + at, 'Member', 'en'));
  const answers = (person: Person): (string | undefined)[] =>
    [...person.private.messages.values()].filter(({ from }) => from?.id === bot.id).map(({ text }) => text);
  const heard = (): number => people.reduce((sum, person) => sum + answers(person).length, 0);
  let child = await start();
  for (const command of commands) {
    for (const person of people) person.say(person.private, command);
    const before = heard();
    await server.until('some were answered', () => heard() >= before + members / 4, 30_000);
    child.kill('SIGKILL');
    await once(child, 'exit');
    child = await start();
  }
  const repeat = /^\(Sent again.*\)\n\n/;
  const different = (person: Person): number =>
    new Set(answers(person).map((text) => text?.replace(repeat, ''))).size;
  await server.until(
    'all were answered',
    () => people.every((one) => different(one) === commands.length),
    30_000,
  );
  await server.until('all is confirmed', () => server.updates.waiting.length === 0);
  child.kill('SIGKILL');
  await once(child, 'exit');
  for (const person of people) {
    const unmarked = answers(person).filter((text) => !repeat.test(text ?? ''));
    expect(new Set(unmarked).size).toBe(unmarked.length);
  }
  expect(server.breaches).toEqual([]);
  await server.stop();
}, 120_000);
