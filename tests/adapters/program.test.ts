/** The main job through the real program: arguments in, answer out. */
import { cpSync, mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshStore, pipe, root, run } from '../support/program.ts';

const ask = async (question: string) => JSON.parse((await run(['ask', '--json', question])).stdout);

describe('chough ask', () => {
  it('recommends titanium for an overhanging limestone sea cliff in the Mediterranean', async () => {
    const { code, stdout } = await run([
      'ask',
      'which bolt for an overhanging limestone sea cliff in the Mediterranean?',
    ]);
    expect(code).toBe(0);
    expect(stdout.split('\n')[0]).toContain('titanium');
    expect(stdout).toMatch(/zinc-plated steel: \w+/);
    expect(stdout).toMatch(/stainless steel 304: 304 has cracked/);
    for (const part of ['I assumed', 'Take care', 'certificate', 'Sources:', 'EN 1993-1-4'])
      expect(stdout).toContain(part);
  });

  it('prints each failure mode of a glue-in with mean and 5 % value against EN 959', async () => {
    const reply = await ask('is a 10x80 glue-in in granite with epoxy deep enough?');
    expect(reply.topic).toBe('embedment');
    expect(reply.facts).toMatchObject({ rock: 'granite', adhesive: 'epoxy', diameter_mm: 10, length_mm: 80 });
    const { checks, recommend } = reply.advice;
    for (const mode of [
      'pulled out, metal',
      'pulled out, glue off the metal',
      'pulled out, glue out of the rock',
      'pulled out, rock cone',
    ])
      for (const kind of ['mean', 'characteristic'])
        expect(
          checks.find((c: { name: string; kind: string }) => c.name === mode && c.kind === kind),
        ).toMatchObject({ limit: 15, unit: 'kN' });
    expect(checks).toContainEqual(
      expect.objectContaining({ name: 'installed length (EN 959)', value: 80, limit: 70, ok: true }),
    );
    expect(recommend.governing).toBe('bondSteel');
    expect(reply.text).toContain('goes first');
  });

  it('limits what cold and wet forbid, and gives amount and cure', async () => {
    const reply = await ask(
      '12mm x 100 twin-leg in soft wet sandstone, 4 C, which glue and how much for 20 bolts?',
    );
    expect(reply.facts).toMatchObject({ rock: 'sandstone-soft', temperature_c: 4, count: 20 });
    expect(['wet', 'flooded']).toContain(reply.facts.hole_moisture);
    const rejected = reply.advice.reject.map(({ what }: { what: string }) => what);
    expect(rejected).toEqual(expect.arrayContaining(['epoxy', 'polyester', 'cement-grout']));
    // Annulus of a 12 mm rod in a 14 mm hole, 100 mm deep: π/4·(14² − 12²)·100 = 4084 mm³ (geometry).
    expect(reply.advice.recommend.ml_per_hole).toBeCloseTo(4.1, 1);
    expect(reply.advice.recommend.ml_total).toBeGreaterThan(20 * 4.084);
    expect(reply.text).toContain('data sheet');
    expect(reply.text).toMatch(/h before load/);
  });

  it('answers a question without words by saying what it wants', async () => {
    const { code, stderr } = await run(['ask', '  ']);
    expect(code).toBe(2);
    expect(stderr).toContain('chough ask');
  });
});

describe('the command line', () => {
  it('has a help page and names a call that it does not have', async () => {
    const help = await run(['--help']);
    expect(help.code).toBe(0);
    for (const call of ['ask', 'pipe', 'chat', 'CHOUGH_DB']) expect(help.stdout).toContain(call);
    const wrong = await run(['asc', 'x']);
    expect(wrong.code).toBe(2);
    expect(wrong.stderr).toContain('"asc"');
    expect(wrong.stdout).toBe('');
    const option = await run(['--jsn']);
    expect(option.code).toBe(2);
  });

  it('stops with file, rule and mend when a rule file is broken', async () => {
    const copy = mkdtempSync(join(tmpdir(), 'chough-broken-'));
    for (const folder of ['dist', 'rules', 'package.json'])
      cpSync(join(root, folder), join(copy, folder), { recursive: true });
    cpSync(join(root, 'node_modules', 'pino'), join(copy, 'node_modules', 'pino'), { recursive: true });
    const file = join(copy, 'rules', 'decisions', 'metal.json');
    const text = readFileSync(file, 'utf8');
    writeFileSync(
      file,
      text.replace('"metal.bare-steel"', '"metal.bare-steel-2"').replace('"severe"', '"sever"'),
    );
    const { code, stdout, stderr } = await run(
      ['ask', 'hello'],
      '',
      freshStore(),
      join(copy, 'dist', 'chough.js'),
    );
    expect(code).toBe(1);
    expect(stdout).toBe('');
    expect(stderr).toContain('decisions/metal.json');
    expect(stderr).toContain('severe');
  });

  it('says which setting cannot be used', async () => {
    const { code, stderr } = await run(['pipe'], '', join(root, 'package.json', 'store.sqlite'));
    expect(code).toBe(1);
    expect(stderr).toContain('CHOUGH_DB');
    expect(stderr.split('\n').length).toBeLessThan(4);
  });
});

describe('chough chat', () => {
  it('answers lines, takes a letter for a choice, and keeps the talk', async () => {
    const { code, stdout } = await run(['chat'], 'sea cliff limestone?\nb\nwhy\n');
    expect(code).toBe(0);
    expect(stdout).toContain('Type a letter');
    expect(stdout).toContain('  a  ');
  });
});

describe('chough pipe', () => {
  it('answers with the object of the protocol', async () => {
    const [reply] = await pipe([{ text: 'sea cliff limestone?' }]);
    expect(Object.keys(reply ?? {}).toSorted()).toEqual(
      [
        'advice',
        'assumed',
        'chat',
        'choices',
        'facts',
        'files',
        'inReplyTo',
        'missing',
        'text',
        'topic',
        'user',
      ].toSorted(),
    );
    expect(reply).toMatchObject({
      inReplyTo: '1',
      chat: 'chat',
      user: 'user',
      topic: 'material',
      facts: { rock: 'limestone', environment: 'sea-cliff' },
    });
  });

  it('reports a bad line with its number and goes on', async () => {
    const good = JSON.stringify({ id: 'x', chat: 'c', user: 'u', text: 'hello' });
    const bad = [
      'not json',
      '[]',
      '{"id":"1"}',
      '{"id":"1","chat":"c","user":"u"}',
      '{"id":1,"chat":"c","user":"u","text":"x"}',
      '{"id":"1","chat":"c","user":"u","text":"x","at":"yesterday"}',
      '{"id":"1","chat":"c","user":"u","text":"x","__proto__":{"a":1}}',
      'null',
    ];
    const { code, stdout } = await run(['pipe'], `${[...bad, good].join('\n')}\n`);
    const lines = stdout
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(code).toBe(0);
    expect(lines).toHaveLength(bad.length + 1);
    for (const [index, line] of lines.slice(0, -1).entries()) {
      expect(line.error, bad[index]).toContain(`line ${index + 1}`);
      expect(line.line).toBe(index + 1);
    }
    expect(lines.at(-1).inReplyTo).toBe('x');
  });

  it('carries a talk on after the program has ended and started again', async () => {
    const db = freshStore();
    const [asked] = await pipe([{ text: 'which bolt for a sea cliff?' }], db);
    expect(asked?.advice).toBeNull();
    const answers = await pipe([{ text: 'overhanging' }, { text: 'tropical' }, { text: "don't know" }], db);
    expect(answers.at(-1)?.facts.environment).toContain('cliff');
    expect(answers.some(({ advice }) => advice !== null)).toBe(true);
  });

  it('keeps interleaved members and chats apart', async () => {
    const replies = await pipe([
      { user: 'a', text: 'is a 12x100 glue-in in granite with epoxy ok?' },
      { user: 'b', text: 'which bolt for a sea cliff?' },
      { user: 'a', chat: 'other', text: 'which glue at 10 C in a dry hole?' },
      { user: 'a', text: 'sound rock' },
    ]);
    expect(replies[1]?.facts).not.toHaveProperty('rock');
    expect(replies[2]?.facts).not.toHaveProperty('diameter_mm');
    expect(replies[3]?.facts).toMatchObject({ rock: 'granite', diameter_mm: 12, rock_condition: 'sound' });
  });
});
