/** The club's records through the pipe of the built program, which is struck down in between. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { freshStore, type Line, pipe, pipeAndKill, root } from '../support/program.ts';
import { choice, now, wholePull } from './support.ts';

const from = (id: string) => ({ id, at: now, chat: 'club', user: 'ana' });
const last = (lines: readonly Line[]): Line => {
  const line = lines.at(-1);
  if (line === undefined) throw new Error('no reply');
  return line;
};

describe('through the pipe', () => {
  it('an open record outlives a power cut, and a kept one is there afterwards', async () => {
    const db = freshStore();
    const shown = last(await pipeAndKill([{ ...from('1'), text: wholePull }], db));
    const [corrected] = await pipe([{ ...from('2'), text: 'it was 34 kN' }], db);
    expect(corrected?.facts).toMatchObject({ load_kn: 34, failure_mode: 'adhesive-rock' });
    expect(last(await pipe([{ ...from('3'), press: choice(shown, 'r:keep') }], db)).text).toContain(
      'older question',
    );
    const kept = last(await pipeAndKill([{ ...from('4'), text: 'keep' }], db));
    expect(kept.text).toContain('Kept as t');
    const ours = last(await pipe([{ ...from('5'), text: 'our tests in granite' }], db));
    expect(ours.facts.pulls_kn).toEqual([34]);
    expect(ours.advice?.cautions).toContain('pull-zone');
    expect(ours.advice?.deferral).toBe(true);
    expect(ours.files.map(({ mime }) => mime)).toEqual(['image/png']);
    expect(ours.files[0]?.alt).not.toBe('');
  });

  it("takes in the demo club's season and gives it out again", async () => {
    const db = freshStore();
    const season = readFileSync(join(root, 'demo', 'season.csv')).toString('base64');
    const read = last(await pipe([{ ...from('1'), file: { name: 'season.csv', base64: season } }], db));
    expect(read.text).toContain('I read 40 rows: 40 can be kept, 0 cannot');
    await pipe([{ ...from('2'), press: choice(read, 'r:keep') }], db);
    const out = last(await pipe([{ ...from('3'), text: 'export our tests' }], db));
    const again = { name: 'again.csv', base64: out.files[0]?.base64 ?? '' };
    expect(last(await pipe([{ ...from('4'), file: again }], db)).text).toContain('left out: 40');
  });
});
