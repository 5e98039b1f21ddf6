/** Sending at the pace that the platform publishes: core.telegram.org/bots/faq, "My bot is hitting limits". */
import { expect, test } from 'vitest';
import { type Limit, publishedPace, Window } from '../../../src/adapters/telegram/pace.ts';
import { group, Person } from './server/actors.ts';
import { raise } from './stage.ts';

/** The most that fell into any stretch of so many milliseconds. */
const densest = (times: readonly number[], milliseconds: number): number =>
  Math.max(0, ...times.map((from) => times.filter((at) => at >= from && at < from + milliseconds).length));

test('a window never lets more through than its limit, in any stretch of time', () => {
  for (const limit of Object.values(publishedPace)) {
    const window = new Window(limit);
    const sent: number[] = [];
    for (let now = 0; sent.length < 200; now += Math.max(1, window.wait(now))) {
      if (window.wait(now) > 0) continue;
      window.count(now);
      sent.push(now);
    }
    expect(densest(sent, limit.milliseconds)).toBe(limit.most);
  }
});

test('the published limits: 30 a second in all, about one a second in a chat, 20 a minute in a group', () => {
  const per = ({ most, milliseconds }: { most: number; milliseconds: number }): number =>
    (most / milliseconds) * 1000;
  expect(per(publishedPace.all)).toBe(30);
  expect(per(publishedPace.chat)).toBe(1);
  expect(publishedPace.group).toEqual({ most: 20, milliseconds: 60_000 });
});

test('on the wire: a chat is paced, and many chats go side by side up to the limit of all', async () => {
  const pace = {
    chat: { most: 2, milliseconds: 300 },
    group: { most: 3, milliseconds: 700 },
    all: { most: 10, milliseconds: 300 },
  };
  const stage = await raise({ pace });
  const { server, ana, own } = stage;
  const people = Array.from({ length: 20 }, (_, at) => new Person(server, 1000 + at, 'Somebody', 'en'));
  const room = group(server, -580, [[ana, 'member']]);
  const from = performance.now();
  for (const person of people) person.say(person.private, '/help');
  for (let at = 0; at < 5; at += 1) ana.say(room, '/help');
  await server.until(
    'all were answered',
    () => people.every((one) => own(one.private).length === 1) && own(room).length === 5,
  );
  const sent = server.callsOf('sendMessage');
  // The way to the server takes its time, so that only the earliest moment of each is sure.
  const early = (times: readonly number[], { most, milliseconds }: Limit): readonly number[] =>
    times.filter((at, nth) => at - from < Math.floor(nth / most) * milliseconds);
  const inGroup = sent.filter(({ params }) => params.chat_id === -580).map(({ at }) => at);
  expect(inGroup).toHaveLength(5);
  expect(
    early(
      sent.map(({ at }) => at),
      pace.all,
    ),
  ).toEqual([]);
  expect(early(inGroup, pace.chat)).toEqual([]);
  expect(early(inGroup, pace.group)).toEqual([]);
  await stage.end();
});

test('under the limits nothing waits', async () => {
  const stage = await raise();
  const { server, own } = stage;
  const people = Array.from({ length: 25 }, (_, at) => new Person(server, 2000 + at, 'Somebody', 'en'));
  const from = performance.now();
  for (const person of people) person.say(person.private, 'thanks');
  await server.until('all were answered', () => people.every((one) => own(one.private).length === 1));
  // A second would be the next stretch of the limit of all.
  expect(performance.now() - from).toBeLessThan(1000);
  await stage.end();
});
