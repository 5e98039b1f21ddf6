import { describe, expect, it } from 'vitest';
import { freshApp, talk } from '../support/app.ts';

const app = await freshApp();
const ask = (chat: string, lat: number, lon: number) => talk(app, { chat, place: { lat, lon } });

describe('a place on the map', () => {
  it('tells how far the sea is, as an assumption of the map that can be put right', async () => {
    const chat = 'far';
    await talk(app, { chat, text: 'is 316 ok for a lower-off, outdoors?' });
    const inland = await ask(chat, 43.77, 11.26);
    expect(inland.text).toMatch(/^By the open map the sea is about 7\d000 m/);
    expect(inland.facts.sea_distance_m).toBeGreaterThan(70_000);
    const corrected = await talk(app, { chat, text: 'no, the sea is 300 m away' });
    expect(corrected.facts.sea_distance_m).toBe(300);
  });

  it('takes the nearer end near a class limit, and says so', async () => {
    // A little more than 2 km from the shore.
    const near = await ask('limit', 37.957, 23.7);
    const used = Number(near.facts.sea_distance_m);
    expect(near.text).toContain('too near a class limit');
    expect(used).toBeLessThan(2000);
  });

  it.each([
    ['nowhere', 91, 0, 'No such place'],
    ['nowhere', 0, 181, 'No such place'],
    ['without a fix', 0, 0, 'a receiver without a fix'],
    ['at sea', 30, -40, 'open sea'],
  ])('%s: a clear line, and nothing changed', async (_, lat, lon, line) => {
    const chat = `bad ${lat} ${lon}`;
    const reply = await ask(chat, lat, lon);
    expect(reply.text).toContain(line);
    expect(reply.facts).toEqual({});
  });

  it('decides which row of the stainless steel code counts', async () => {
    const baltic = await ask('baltic', 54.4, 13.2);
    expect(baltic.facts.coast).toBe('baltic');
    const norway = await ask('norway', 60.4, 5.3);
    expect(norway.facts).not.toHaveProperty('coast');
  });

  it('is not kept: only what was read from it is', async () => {
    const reply = await ask('kept', 43.77, 11.26);
    expect(JSON.stringify(reply)).not.toContain('11.26');
  });
});
