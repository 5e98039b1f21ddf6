import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { builders } from '../../src/advice/builders.ts';
import { rules, rulesFolder, words } from '../support/desk.ts';
import { root } from '../support/program.ts';

const texts = readFileSync(join(rulesFolder, 'words', 'en.ftl'), 'utf8');
const known = new Set([...texts.matchAll(/^([a-z][\w-]*) =/gim)].map(([, id]) => id));

const sources = readdirSync(join(root, 'src'), { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .map((name) => [name, readFileSync(join(root, 'src', name), 'utf8')] as const);

describe('texts', () => {
  it('every text that the program names is there', () => {
    const missing = sources.flatMap(([name, text]) =>
      [...text.matchAll(/\bsay: '([\w-]+)'/g)].flatMap(([, id]) => (known.has(id) ? [] : [`${name}: ${id}`])),
    );
    expect(missing).toEqual([]);
  });

  it.each([
    ['embedment-', rules.decision('size').outcomes.verdict?.values],
    ['refusal-', rules.decision('refusal').outcomes.refusal?.values.filter((value) => value !== 'none')],
    ['topic-', Object.keys(builders)],
    ['inspect-', rules.decision('inspection').outcomes.verdict?.values],
    ['inspect-interval-', rules.decision('inspection-interval').outcomes.interval?.values],
    ['kind-', ['mean', 'characteristic', 'design', 'plain']],
    ['check-', ['mean', 'characteristic', 'design', 'plain']],
    ['origin-', ['said', 'assumed', 'club', 'map', 'measured']],
  ])('there is a text %s for each value that may come', (start, values) => {
    for (const value of values ?? []) expect(known.has(`${start}${value}`), `${start}${value}`).toBe(true);
  });

  it('no text is left over', () => {
    const all = sources.map(([, text]) => text).join('\n');
    // Ids made up of a fixed start and a value: `mode-${mode}`.
    const starts = [...all.matchAll(/`([a-z]+-(?:[a-z]+-)*)\$\{/g)].map(([, start]) => start ?? '');
    const unused = [...known].filter(
      (id) => id !== undefined && !all.includes(`'${id}'`) && !starts.some((start) => id.startsWith(start)),
    );
    expect(unused).toEqual([]);
  });

  it('a text that is not there is an error and never an empty line', () => {
    expect(() => words.say({ say: 'no-such-text' })).toThrow('no-such-text');
    expect(() => words.say({ say: 'took' })).toThrow('took');
  });
});
