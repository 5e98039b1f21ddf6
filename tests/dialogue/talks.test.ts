/** Whole conversations through the pipe of the built program, ended and started again where a talk says so. */
import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Message } from '../../src/contracts/message.ts';
import { freshStore, type Line, pipe, pipeAndKill } from '../support/program.ts';

interface TurnOf extends Partial<Message> {
  readonly kill?: boolean;
  readonly topic?: string;
  readonly facts?: Readonly<Record<string, string | number>>;
  readonly absent?: readonly string[];
  readonly advice?: boolean;
  readonly metal?: readonly string[];
  readonly asked?: readonly [value: string, suitability: string];
  readonly refusal?: string;
  readonly missing?: string;
  readonly contains?: readonly string[];
}
const { talks } = JSON.parse(readFileSync(new URL('talks/talks.json', import.meta.url), 'utf8')) as {
  talks: { name: string; turns: TurnOf[] }[];
};

function messageOf(turn: TurnOf, chat: string): Partial<Message> {
  const { text, press, at, locale } = turn;
  return {
    chat: turn.chat ?? chat,
    user: turn.user ?? 'member',
    ...(text === undefined ? {} : { text }),
    ...(press === undefined ? {} : { press }),
    ...(at === undefined ? {} : { at }),
    ...(locale === undefined ? {} : { locale }),
  };
}

/** Sends the turns in one run of the program, or in several where it is killed in between. */
async function play(turns: readonly TurnOf[], chat: string): Promise<readonly Line[]> {
  const db = freshStore();
  const runs: TurnOf[][] = [[]];
  for (const turn of turns) {
    if (turn.kill) runs.push([]);
    runs.at(-1)?.push(turn);
  }
  const replies: Line[] = [];
  for (const [index, run] of runs.entries()) {
    const messages = run.map((turn) => messageOf(turn, chat));
    // Every run but the last is struck down with no warning, as by a power cut.
    replies.push(...(await (index === runs.length - 1 ? pipe(messages, db) : pipeAndKill(messages, db))));
  }
  return replies;
}

/** Talks that end nothing share one run of the program: each in a chat of its own, as in a club of many groups. */
const lasting = talks.filter(({ turns }) => turns.every((turn) => !turn.kill));
const shared = pipe(lasting.flatMap(({ name, turns }) => turns.map((turn) => messageOf(turn, name))));

async function repliesTo(name: string, turns: readonly TurnOf[]): Promise<readonly Line[]> {
  const place = lasting.findIndex((talk) => talk.name === name);
  if (place === -1) return play(turns, name);
  const before = lasting.slice(0, place).reduce((sum, talk) => sum + talk.turns.length, 0);
  return (await shared).slice(before, before + turns.length);
}

function hold(turn: TurnOf, reply: Line | undefined): void {
  const said = turn.text ?? turn.press;
  if (reply === undefined) throw new Error(`no reply to ${said}`);
  expect(reply.error, said).toBeUndefined();
  if (turn.topic !== undefined) expect(reply.topic, said).toBe(turn.topic);
  if (turn.facts !== undefined) expect(reply.facts, said).toMatchObject(turn.facts);
  for (const fact of turn.absent ?? []) expect(reply.facts, said).not.toHaveProperty(fact);
  if (turn.advice !== undefined) expect(reply.advice !== null, `${said}: ${reply.text}`).toBe(turn.advice);
  if (turn.metal !== undefined) expect(reply.advice?.recommend.metal, said).toEqual(turn.metal);
  if (turn.asked !== undefined)
    expect([reply.advice?.recommend.asked, reply.advice?.recommend.suitability], said).toEqual(turn.asked);
  if (turn.refusal !== undefined) expect(reply.advice?.recommend.refusal, said).toBe(turn.refusal);
  if (turn.missing !== undefined) expect(reply.missing[0], said).toBe(turn.missing);
  for (const part of turn.contains ?? []) expect(reply.text, said).toContain(part);
  if (reply.advice !== null) {
    expect(reply.advice.cautions.length, said).toBeGreaterThan(0);
    expect(reply.advice.deferral, said).toBe(true);
  }
}

describe('talks', () => {
  // The run the talks share is waited for once, under its own limit.
  beforeAll(() => shared, 60_000);
  it.each(talks.map(({ name, turns }) => [name, turns] as const))('%s', async (name, turns) => {
    const replies = await repliesTo(name, turns);
    expect(replies).toHaveLength(turns.length);
    for (const [index, turn] of turns.entries()) hold(turn, replies[index]);
  });
});
