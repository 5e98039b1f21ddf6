/**
 * Escaping by construction. Markup as Discord's help page on Markdown lists it: bold, italics, underline, strikethrough,
 * spoilers, headings, small print, lists, quotes, code, masked links; and mentions, emojis and timestamps in angle
 * brackets (documentation, Reference, Message Formatting).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boldFirst, clip, escapeMarkdown } from '../../../src/adapters/discord/markdown.ts';
import { seen } from './support/seen.ts';

/** A sign is harmless if a backslash stands before it and that backslash is not itself escaped. */
function bare(text: string, sign: RegExp): boolean {
  for (const match of text.matchAll(sign)) {
    const before = /\\*$/.exec(text.slice(0, match.index))?.[0].length ?? 0;
    if (before % 2 === 0) return true;
  }
  return false;
}

describe('escaping', () => {
  it.each([
    [
      '**bold** __under__ ~~gone~~ ||hidden||',
      '\\*\\*bold\\*\\* \\_\\_under\\_\\_ \\~\\~gone\\~\\~ \\|\\|hidden\\|\\|',
    ],
    ['# heading', '\\# heading'],
    ['-# small', '\\-# small'],
    ['> quote\n>>> all', '\\> quote\n\\>>> all'],
    ['- item\n+ item\n1. item', '\\- item\n\\+ item\n1\\. item'],
    ['`code` ```block```', '\\`code\\` \\`\\`\\`block\\`\\`\\`'],
    ['[words](https://example.org)', '\\[words\\](https\\:\\/\\/example.org)'],
    ['example.org/x', 'example.org\\/x'],
    ['<@123> <@&5> <#7> <t:1> <:x:1>', '\\<@\u200b123> \\<@\u200b&5> \\<#7> \\<t:1> \\<:x:1>'],
    ['@everyone @here', '@\u200beveryone @\u200bhere'],
    ['10 kN, 3.5 mm, 5–7 (EN 959)', '10 kN, 3.5 mm, 5–7 (EN 959)'],
    ['• Use titanium', '• Use titanium'],
  ])('%s', (text, escaped) => {
    expect(escapeMarkdown(text)).toBe(escaped);
  });

  it('takes away marks that turn the direction of writing, and letters nobody sees', () => {
    expect(escapeMarkdown('a\u202eb\u2066c\u200bd\ufeffe\u0000f\u0085g')).toBe('abcdefg');
    expect(escapeMarkdown(`e${'\u0301'.repeat(50)}`)).toBe(`e${'\u0301'.repeat(4)}`);
    expect(escapeMarkdown('a\r\nb\rc')).toBe('a\nb\nc');
  });

  it('leaves no sign of markup bare, whatever the text, and is read back as it was', () => {
    const nasty = fc.stringMatching(/^[a-z*_~`|<>[\]()#@:/.\\ \n0-9+-]{0,60}$/);
    fc.assert(
      fc.property(nasty, (text) => {
        const escaped = escapeMarkdown(text);
        expect(bare(escaped, /[*_~`|<[]/g), escaped).toBe(false);
        expect(escaped).not.toMatch(/@(everyone|here|\d)/);
        expect(escaped).not.toMatch(/:\/\//);
        expect(escaped).not.toMatch(/^\s*(?:[#>]|[-+] )/m);
        expect(seen(escaped)).toBe(text);
      }),
      { numRuns: 500 },
    );
  });

  it('the first line is bold, and nothing in it ends that early', () => {
    expect(boldFirst('No **304** here\nnext')).toBe('**No \\*\\*304\\*\\* here**\nnext');
    expect(boldFirst('')).toBe('');
  });

  it('cuts without splitting a letter', () => {
    expect(clip('abc', 3)).toBe('abc');
    expect(clip('abcd', 3)).toBe('ab…');
    expect(clip('a😀b', 3)).toBe('a…');
  });
});
