/** Whatever the dialogue hands over, each message keeps to the platform's published limits, as the server checks them. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nonceOf } from '../../../src/adapters/discord/calls.ts';
import { carry, controls, readCarried } from '../../../src/adapters/discord/controls.ts';
import { form } from '../../../src/adapters/discord/form.ts';
import { bodyOf, repeated, screens } from '../../../src/adapters/discord/screen.ts';
import { noticeOf } from '../../../src/adapters/post.ts';
import type { Choice } from '../../../src/contracts/message.ts';
import { checkMessage, checkModal } from './server/limits.ts';

const words = {
  typeIt: 'Type it',
  pick: 'Choose …',
  more: 'Not everything fits into the menu.',
  again: 'Sent again.',
};
const user = '1575102837858238469';
const choice: fc.Arbitrary<Choice> = fc.record({
  id: fc.stringMatching(/^[fct]:[a-z-]{1,20}(:[a-z0-9?-]{1,20})?$/),
  label: fc.string({ minLength: 0, maxLength: 200 }),
});
const text = fc.string({ unit: 'grapheme', maxLength: 300 });
const paragraph = fc.record({
  text: fc.array(text, { maxLength: 8 }).map((lines) => lines.join('\n')),
  first: fc.boolean(),
});

describe('a reply of any text and choices', () => {
  it('becomes messages within the limits, with nothing of the text lost', () => {
    fc.assert(
      fc.property(
        fc.array(choice, { maxLength: 40 }),
        fc.array(paragraph, { minLength: 1, maxLength: 6 }),
        (choices, group) => {
          const { reply } = noticeOf({ id: '1', chat: 'discord:1', user }, '');
          const all = screens({ reply: { ...reply, choices }, groups: [group] }, words);
          for (const [index, one] of all.entries()) {
            expect(checkMessage(bodyOf(one, false), 0).problems).toEqual([]);
            expect(checkMessage(bodyOf(repeated(one, words), true), 0).problems).toEqual([]);
            if (index < all.length - 1) expect(one.components).toEqual([]);
          }
        },
      ),
      { numRuns: 150 },
    );
  });

  it('of signs that all need escaping still fits, and nothing of it is dropped', () => {
    const groups = [[{ text: '*_'.repeat(2500), first: true }]];
    const { reply } = noticeOf({ id: '1', chat: 'discord:1', user }, '');
    const all = screens({ reply, groups }, words);
    for (const one of all) expect(one.content.length).toBeLessThanOrEqual(2000);
    const signs = all.map(({ content }) => content.replace(/^\*\*|\*\*$/g, '').replace(/\\/g, '')).join('');
    expect(signs.length).toBe(5000);
  });
});

describe('choices', () => {
  const many = (count: number): Choice[] =>
    Array.from({ length: count }, (_, index) => ({ id: `f:rock:r${index}`, label: `rock ${index}` }));
  const kinds = (choices: readonly Choice[]) =>
    controls(user, choices, words).rows.map(({ components }) =>
      components.map((part) => ('options' in part ? part.options.length : 'button')),
    );

  it.each([
    [1, [['button']]],
    [5, [['button', 'button', 'button', 'button', 'button']]],
    [6, [[6]]],
    [25, [[25]]],
    // The 24 first and the last, "don't know", and a button to type what is missing.
    [30, [[25], ['button']]],
  ])('%i values', (count, expected) => {
    expect(kinds(many(count))).toEqual(expected);
    expect(controls(user, many(count), words).cut).toBe(count > 25);
  });

  it('keeps "why" a button beside a menu', () => {
    expect(kinds([{ id: 'c:why', label: 'Why?' }, ...many(8)])).toEqual([[8], ['button']]);
  });

  it('offers to type where there is nothing to tap', () => {
    expect(kinds([{ id: 'f:temperature_c:?', label: "Don't know" }])).toEqual([['button', 'button']]);
  });

  it('carries version, member and choice, and reads them back', () => {
    const id = `f:${'x'.repeat(24)}:${'y'.repeat(23)}`;
    expect(id).toHaveLength(50);
    const longest = carry('18446744073709551615', id);
    expect(longest.length).toBeLessThanOrEqual(100);
    expect(readCarried(longest)).toEqual({ user: '18446744073709551615', choice: id });
    fc.assert(
      fc.property(fc.bigInt({ min: 0n, max: (1n << 64n) - 1n }), (number) => {
        expect(readCarried(carry(String(number), 'c:why'))).toEqual({
          user: String(number),
          choice: 'c:why',
        });
      }),
    );
  });
});

it('a form keeps to the limits whatever the question', () => {
  fc.assert(
    fc.property(
      fc.string({ maxLength: 3000 }),
      fc.string({ minLength: 1, maxLength: 200 }),
      (question, label) => {
        const shown = form(carry(user, 'm'), { title: 'Your answer', label: `l${label}`, question });
        expect(checkModal(shown).problems).toEqual([]);
      },
    ),
  );
});

it('the number of a message is short, the same for the same part, and different for another', () => {
  const id = `discord:${user}`;
  expect(nonceOf(id, 0)).toBe(nonceOf(id, 0));
  expect(new Set([nonceOf(id, 0), nonceOf(id, 1), nonceOf(`${id}1`, 0)]).size).toBe(3);
  expect(nonceOf(id, 35).length).toBeLessThanOrEqual(25);
});
