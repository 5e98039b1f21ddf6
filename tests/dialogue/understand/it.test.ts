/** Italian. What the words mean is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { printScore } from './score.ts';
import { loadUnderstand, told } from './setup.ts';

const { understand } = await loadUnderstand('it');
const facts = (text: string, context = {}) => told(understand(text, context));

describe('Italian messages, topic and exact facts', () => {
  it.each(['it/messages.json', 'it/messages-late.json', 'it/messages-more.json'])('%s', async (name) => {
    const { topic, f1 } = await printScore(name, understand);
    expect(topic).toBeGreaterThanOrEqual(0.95);
    expect(f1).toBeGreaterThanOrEqual(0.95);
  });
});

describe('denied, quoted, a name or another thing: no fact', () => {
  it.each([
    ['non è inox 304', {}],
    ['né granito né gneiss', {}],
    ['senza epossidica', {}],
    ['granito no, è gneiss', { rock: 'gneiss' }],
    ['non è calcare è granito', { rock: 'granite' }],
    ['forse granito', {}],
    ['granito credo', {}],
    ['non so se è granito', {}],
    ['mi hanno detto "10x80 in granito è perfetto"', {}],
    ['> usa il 304 in granito', {}],
    ['la via si chiama Granito Rosso ma è calcare', { rock: 'limestone' }],
    ['macchia mediterranea', {}],
    ['occhiali di protezione', {}],
    ['parete artificiale', {}],
    ['lava il foro con acqua', {}],
    ['corda bagnata', {}],
    ['il trapano gira', {}],
    ['resina lenta', {}],
    ['A2 in artificiale', { use: 'aid' }],
    ['7c sportiva su calcare', { use: 'lead', rock: 'limestone' }],
    ['tiro da 30 m, corda da 60 m', {}],
    ['quota 1200 m', {}],
    ['30 m dal lago', {}],
    ['una chiesta antica', {}],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('what may be two things is asked back, with the careful one', () => {
  it.each([
    ['inox', 'metal', 'stainless-304'],
    ['zincato', 'metal', 'zinc-plated'],
    ['resinato', 'anchor', 'glue-in-single-leg'],
    ['tassello ad espansione', 'anchor', 'drop-in'],
    ['sul mare', 'environment', 'sea-cliff'],
    ['calata', 'use', 'lower-off'],
    ['45 gradi la roccia', 'temperature_c', 7.222],
  ])('%s', (text, fact, careful) => {
    const { found, problems } = understand(text);
    expect(found).toEqual([]);
    expect(problems).toMatchObject([{ kind: 'ambiguous', fact, value: careful }]);
  });

  it('takes the weaker rock of a name that has two', () => {
    expect(facts('tufo')).toEqual({ rock: 'volcanic-tuff' });
    expect(facts('porfido')).toEqual({ rock: 'volcanic-tuff' });
    expect(facts('calcarenite')).toEqual({ rock: 'limestone-soft' });
    expect(facts('ardesia')).toEqual({ rock: 'slate' });
  });
});

describe('of two values the careful one', () => {
  it.each([
    ['da 5 a 8 gradi', { temperature_c: 5 }],
    ['tra 4 e 6 gradi', { temperature_c: 4 }],
    ['15 gradi di giorno, 3 di notte', { temperature_c: 3 }],
    ['aria 15 gradi, roccia 4 gradi', { temperature_c: 4 }],
    ['umido o bagnato', { hole_moisture: 'wet' }],
    ['fuori è asciutto ma dentro è bagnato il foro', { hole_moisture: 'wet' }],
    ['arrugginito e si muove', { signs: 'loose' }],
    ['20-30 fittoni', { count: 30 }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('how numbers are said', () => {
  it.each([
    ['più o meno 5 gradi', { temperature_c: 5 }],
    ['meno 5 gradi', { temperature_c: -5 }],
    ['5 gradi sotto zero', { temperature_c: -5 }],
    ["un'ora e mezza fa", { hours_since: 1.5 }],
    ["mezz'ora fa", { hours_since: 0.5 }],
    ['1.500 m dal mare', { sea_distance_m: 1500 }],
    ['1,5 km dal mare', { sea_distance_m: 1500 }],
    ['una ventina di fori', { count: 20 }],
    ['venticinque fix', { count: 25, anchor: 'wedge' }],
    ['10 per 80', { diameter_mm: 10, length_mm: 80 }],
    ['resina da mettere in fori da 12 per 20 fix', { hole_diameter_mm: 12, count: 20, anchor: 'wedge' }],
    ['20 fix da 12', { count: 20, diameter_mm: 12, anchor: 'wedge' }],
    ['20 fori da 14', { count: 20, hole_diameter_mm: 14 }],
    ['fix da 12 in fori da 14', { diameter_mm: 12, hole_diameter_mm: 14, anchor: 'wedge' }],
    ['fix da 10 a 15 cm dal bordo', { diameter_mm: 10, edge_distance_mm: 150, anchor: 'wedge' }],
    ["profondita' 80 mm", { embedment_mm: 80 }],
    ["all'interno, dell'acqua nel foro", { hole_moisture: 'flooded' }],
    ['pareti calcaree bagnate', { rock: 'limestone', hole_moisture: 'wet' }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('acts and emergencies', () => {
  it.each([
    ['perché?', 'why'],
    ['come lo sai', 'why'],
    ['spiega tutto', 'why-all'],
    ['torna indietro', 'back'],
    ['ricominciamo', 'restart'],
    ['cancella i miei dati', 'forget'],
    ['aiuto', 'help'],
    ['non lo so', 'dont-know'],
    ['boh', 'dont-know'],
    ['sì', 'yes'],
    ['no', 'no'],
    ['grazie mille', 'thanks'],
    ['ciao', 'greeting'],
    ['no, granito', 'correction'],
    ['scusa, volevo dire gneiss', 'correction'],
  ])('%s: %s', (text, act) => expect(understand(text).act).toBe(act));

  it.each(['il mio compagno è appeso nel vuoto', 'è caduto e non respira', 'chiamate il soccorso!'])(
    '%s',
    (text) => expect(understand(text).topic).toBe('emergency'),
  );

  it.each(["l'anno scorso si è rotto un fittone, che metallo?", 'e se qualcuno resta appeso nel vuoto?'])(
    '%s is none',
    (text) => expect(understand(text).topic).not.toBe('emergency'),
  );
});
