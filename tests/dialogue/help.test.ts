import { describe, expect, it } from 'vitest';
import { helped } from '../../src/dialogue/read.ts';
import { freshApp, talk } from '../support/app.ts';

const app = await freshApp();
const words = await app.languages.words('en');
const examplesIn = (text: string): string[] => [
  ...[...text.matchAll(/"([a-z][^"]{10,}\?)"/g)].map(([, example]) => example ?? ''),
  ...[...text.matchAll(/^ *• (.*\?)$/gm)].map(([, example]) => example ?? ''),
];

describe('help', () => {
  it.each(helped)('each example on %s works when it is typed', async (topic) => {
    const help = await talk(app, { user: `help-${topic}`, text: `/help ${topic}` });
    expect(help.text).toContain(words.say({ say: `help-${topic}` }));
    const examples = examplesIn(help.text);
    expect(examples.length).toBeGreaterThan(0);
    for (const [index, text] of examples.entries()) {
      const reply = await talk(app, { user: `example-${topic}-${index}`, text });
      expect(reply.topic, text).toBe(topic);
      expect(reply.advice !== null || reply.missing.length > 0, text).toBe(true);
    }
  });

  it('the general help works when it is typed', async () => {
    const examples = examplesIn((await talk(app, { user: 'help', text: 'help' })).text);
    expect(examples.length).toBeGreaterThanOrEqual(4);
    for (const [index, text] of examples.entries()) {
      const reply = await talk(app, { user: `general-${index}`, text });
      expect(reply.advice !== null || reply.missing.length > 0, text).toBe(true);
    }
  });
});

describe('a talk taken up again', () => {
  it('shows after days what is still held, with one tap to begin anew', async () => {
    await talk(app, { user: 'later', text: 'which bolt for a sea cliff?', at: '2027-05-02T09:00:00Z' });
    const soon = await talk(app, { user: 'later', text: 'temperate', at: '2027-05-02T10:00:00Z' });
    expect(soon.text).not.toContain('from last time');
    const later = await talk(app, { user: 'later', text: 'overhanging', at: '2027-05-05T09:00:00Z' });
    expect(later.text).toContain('I still hold from last time: place: sea cliff');
    expect(later.choices[0]).toEqual({ id: 'c:restart', label: 'Begin anew' });
    const anew = await talk(app, { user: 'later', press: 'c:restart', at: '2027-05-05T09:01:00Z' });
    expect(anew.facts).toEqual({});
  });

  it('"and for …?" and "same but …" go on from the last answer', async () => {
    await talk(app, { user: 'and', text: 'is 304 ok on an overhanging tropical sea cliff?' });
    const other = await talk(app, { user: 'and', text: 'and titanium?' });
    expect(other.advice?.recommend).toMatchObject({ asked: 'titanium-grade-2', suitability: 'suitable' });
    await talk(app, { user: 'same', text: 'how far from the edge for a 10x80?' });
    const bigger = await talk(app, { user: 'same', text: 'same but 12x150' });
    expect(bigger.facts).toMatchObject({ diameter_mm: 12, length_mm: 150 });
    expect(bigger.topic).toBe('spacing');
  });

  it('a question that is still open stays to be tapped after an answer that was not understood', async () => {
    const asked = await talk(app, { user: 'open', text: 'is a 12x100 glue-in in granite with epoxy ok?' });
    const lost = await talk(app, { user: 'open', text: 'xyzzy plugh' });
    expect(lost.choices).toEqual(asked.choices);
  });
});
