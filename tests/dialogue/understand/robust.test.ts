import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadCases, loadUnderstand } from './setup.ts';

const { understand, view } = await loadUnderstand();
const seen = await loadCases('messages-seen.json');

const sound = (text: string, pending?: string): boolean => {
  const parsed = understand(text, pending === undefined ? {} : { pending });
  const values = [...parsed.found, ...parsed.ruledOut, ...parsed.alternatives.flat()];
  return values.every(({ fact, value }) => {
    const definition = view.facts.get(fact);
    if (definition?.kind === 'number') {
      const [least, most] = definition.possible;
      const numbers = typeof value === 'object' && definition.many ? value : [value];
      return numbers.every((one) => typeof one === 'number' && one >= least && one <= most);
    }
    return definition?.kind === 'choice' && typeof value === 'string';
  });
};

describe('whatever is typed', () => {
  const pending = fc.option(fc.constantFrom(...view.facts.keys()), { nil: undefined });
  const words = fc.constantFrom(
    ...seen.flatMap(({ say }) => say.split(' ')),
    ...'-5 1/2 " ½ × 1e400 99999999999999999999 NaN ∞ ٣ x x x / . , : ( ) > \' # 10x80x12x14 0 - ° m10 \u200b \u202e \n'.split(
      ' ',
    ),
  );

  it('never fails and never gives what cannot be', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 200 }), pending, sound), { numRuns: 500 });
    fc.assert(
      fc.property(fc.array(words, { maxLength: 25 }), pending, (list, fact) => sound(list.join(' '), fact)),
      { numRuns: 1500 },
    );
  });

  it('gives the same answer every time', () => {
    for (const { say } of seen.slice(0, 100)) expect(understand(say)).toEqual(understand(say));
  });

  it.each(['', ' ', '?!…', '🤔👍', '\u0000\u0007', '\u200b\u202e', '-', '/', '"', '>'])(
    '%j tells nothing',
    (text) => {
      const { found, problems } = understand(text);
      expect([...found, ...problems]).toEqual([]);
    },
  );

  it('sees through invisible and full-width characters', () => {
    const facts = understand('gra\u200bnite １０ｘ８０ \u202e').found.map(({ value }) => value);
    expect(facts).toEqual(['granite', 10, 80]);
  });
});

describe('time', () => {
  /** The best of three: the others wait for whatever else the machine does. */
  const worst = (text: string): number => {
    understand(text);
    const times = [1, 2, 3].map(() => {
      const start = performance.now();
      understand(text);
      return performance.now() - start;
    });
    return Math.min(...times);
  };
  const fill = (piece: string): string => piece.repeat(Math.ceil(10_000 / piece.length)).slice(0, 10_000);

  it.each([
    'a',
    '1',
    '1/',
    '"',
    "' ",
    '> ',
    'granite ',
    '10x80 ',
    'not ',
    'how long ',
    'xyzzyq plugh ',
    '4 C, ',
    'no, ',
    '-',
    'deep depth 80 mm hole 12 ',
  ])('reads ten thousand characters of %j in time', (piece) => expect(worst(fill(piece))).toBeLessThan(250));

  it('reads a message in a millisecond or so', () => {
    const times = seen.map(({ say }) => worst(say)).sort((a, b) => a - b);
    const median = times[Math.floor(times.length / 2)] ?? 0;
    console.log(`median ${median.toFixed(3)} ms`);
    expect(median).toBeLessThan(3);
  });
});
