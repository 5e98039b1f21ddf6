/** Spanish. What the words mean is common practice, no source. */
import { describe, expect, it } from 'vitest';
import { printScore } from './score.ts';
import { loadUnderstand, told } from './setup.ts';

const { understand } = await loadUnderstand('es');
const facts = (text: string, context = {}) => told(understand(text, context));

describe('messages in Spanish, topic and exact facts', () => {
  it.each(['es/messages.json', 'es/messages-late.json', 'es/messages-more.json'])('%s', async (name) => {
    const { topic, f1 } = await printScore(name, understand);
    expect(topic).toBeGreaterThanOrEqual(0.95);
    expect(f1).toBeGreaterThanOrEqual(0.95);
  });
});

describe('what is denied, quoted, a name or another word is no fact', () => {
  it.each([
    ['no es inox 316', {}],
    ['no tenemos granito por aquí', {}],
    ['ni epoxi ni poliéster', {}],
    ['nada de 304', {}],
    ['nada de titanio grado 2', {}],
    ['granito no, caliza', { rock: 'limestone' }],
    ['granito no es', {}],
    ['> usa 304 en granito', {}],
    ['escribió "10x80 en granito va bien"', {}],
    ['la vía Titanio Puro es de gneis', { rock: 'gneiss' }],
    ['chapas color granito', {}],
    ['en concreto no lo sé', {}],
    ['primeros auxilios', {}],
    ['artificial A2', { use: 'aid' }],
    ['una vía de 6c+', {}],
    ['304 m del mar', { sea_distance_m: 304 }],
    ['acantilado de 60 m', { environment: 'sea-cliff' }],
    ['a 2000 m de altitud', {}],
    ['a 300 m sobre el nivel del mar', {}],
    ['a 15 cm de la fisura', { edge_distance_mm: 150 }],
    ['seguro que sí', {}],
    ['la resina está seca', {}],
    ['es un sitio muy seco', {}],
    ['rocódromo al aire libre', {}],
    ['el 2º largo', {}],
    ['granizo', {}],
    ['un pirata', {}],
    ['me despierto', {}],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('what may be something else is asked back and not taken', () => {
  it.each([
    ['inox', 'metal', 'stainless-304'],
    ['titanio', 'metal', 'titanium-grade-2'],
    ['galvanizado', 'metal', 'zinc-plated'],
    ['químico', 'anchor', 'glue-in-single-leg'],
    ['anclaje de expansión', 'anchor', 'drop-in'],
    ['cerca del mar', 'environment', 'sea-cliff'],
    // Tufa and volcanic tuff have one name in Spanish.
    ['toba', 'rock', 'volcanic-tuff'],
    ['roca volcánica', 'rock', 'volcanic-tuff'],
    // A climbing wall stands indoors or out of doors.
    ['rocódromo', 'environment', 'city'],
    // A zip line in one place and a Tyrolean in another.
    ['tirolina', 'use', 'other-load'],
  ])('%s', (text, fact, careful) => {
    const { found, problems } = understand(text);
    expect(found).toEqual([]);
    expect(problems).toMatchObject([{ kind: 'ambiguous', fact, value: careful }]);
  });

  it.each([
    ['menos de 5 grados en la roca', 'ambiguous', 'temperature_c'],
    ['temperatura ambiente 15 grados', 'ambiguous', 'temperature_c'],
    // "Hace 5 grados" is said of the air.
    ['hace 5 grados', 'ambiguous', 'temperature_c'],
    ['10x12', 'impossible', 'length_mm'],
    ['carga 200 kg', 'unit-mismatch', 'load_kn'],
    ['granito y caliza', 'conflict', 'rock'],
  ])('%s: %s %s', (text, kind, fact) => {
    const { found, problems } = understand(text);
    expect(found.filter((one) => one.fact === fact)).toEqual([]);
    expect(problems).toMatchObject([{ kind, fact }]);
  });

  it.each([
    'quizás granito',
    'puede que sea granito',
    'no sé si es granito',
    'granito o algo así',
    'o granito o gneis',
  ])('%s', (text) => expect(facts(text)).toEqual({}));
});

describe('rocks whose names look like those of others', () => {
  it.each([
    ['toba calcárea', 'tufa'],
    ['toba volcánica', 'volcanic-tuff'],
    ['travertino', 'tufa'],
    ['chorreras', 'tufa'],
    ['pizarra', 'slate'],
    ['esquisto', 'schist'],
    ['mármol', 'limestone-hard'],
    ['marga', 'limestone-soft'],
    ['rodeno', 'sandstone'],
    ['caliza muy blanda', 'limestone-soft'],
    ['arenisca dura', 'sandstone-hard'],
    ['cuarcita', 'quartzite'],
    ['neis', 'gneiss'],
    ['dolomía', 'dolomite'],
    ['muro de cemento', 'concrete'],
  ])('%s: %s', (text, rock) => expect(facts(text)).toEqual({ rock }));

  it('keeps the mountains from the rock', () => {
    expect(facts('en las Dolomitas')).toEqual({ environment: 'alpine' });
  });
});

describe('numbers', () => {
  it.each([
    ['roca a 6º', { temperature_c: 6 }],
    ['roca a 6 ºC', { temperature_c: 6 }],
    ['la roca está a menos 5 grados', { temperature_c: -5 }],
    ['5 grados bajo cero', { temperature_c: -5 }],
    ['roca a más o menos 5 grados', { temperature_c: 5 }],
    ['al menos 80 mm de profundidad', { embedment_mm: 80 }],
    ['por lo menos 80 mm de profundidad', { embedment_mm: 80 }],
    ['roca de 4 a 6 grados', { temperature_c: 4 }],
    ['roca a 4 o 6 °C', { temperature_c: 4 }],
    ['80 a 100 mm de profundidad', { embedment_mm: 80 }],
    ['entre 80 y 100 mm de profundidad', { embedment_mm: 80 }],
    ['10x80 a 15 cm del borde', { diameter_mm: 10, length_mm: 80, edge_distance_mm: 150 }],
    ['anclajes de 12 a 20 cm del borde', { diameter_mm: 12, edge_distance_mm: 200 }],
    ['anclaje de 12 mm a 100 mm del borde', { diameter_mm: 12, edge_distance_mm: 100 }],
    ['a 1.000 m del mar', { sea_distance_m: 1000 }],
    ['a 1,5 km de la costa', { sea_distance_m: 1500 }],
    ['a medio kilómetro del mar', { sea_distance_m: 500 }],
    ['a kilómetro y medio del mar', { sea_distance_m: 1500 }],
    ['a dos mil quinientos metros de la playa', { sea_distance_m: 2500 }],
    ['el mar está a 300 m', { sea_distance_m: 300 }],
    ['treinta y cinco anclajes', { count: 35 }],
    ['ciento veinte anclajes', { count: 120 }],
    ['20 anclajes de 10x80', { count: 20, diameter_mm: 10, length_mm: 80 }],
    ['12 por 100', { diameter_mm: 12, length_mm: 100 }],
    ['métrica 12', { diameter_mm: 12 }],
    ['tres octavos de pulgada', { diameter_mm: 9.525 }],
    ['agujero de 14', { hole_diameter_mm: 14 }],
    ['agujeros de 14x100', { hole_diameter_mm: 14, embedment_mm: 100 }],
    [
      '20 anclajes de 12x120 en agujeros de 14',
      { count: 20, diameter_mm: 12, length_mm: 120, hole_diameter_mm: 14 },
    ],
    ['a 20 cm uno de otro', { spacing_mm: 200 }],
    ['pegado hace hora y media', { hours_since: 1.5 }],
    ['pegado hace dos horas y media', { hours_since: 2.5 }],
    ['vuelo de factor 1,7 con 80 kilos', { fall_factor: 1.7, mass_kg: 80 }],
    ['60 grados entre los ramales', { angle_deg: 60 }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('an emergency beats everything, a question about one does not', () => {
  it.each([
    'mi compañera está colgada de un bolt que se acaba de romper',
    'un escalador se ha caído y no responde',
    'me entró resina en el ojo',
    'llamad al rescate!!',
  ])('%s', (text) => expect(understand(text).topic).toBe('emergency'));

  it.each([
    'el año pasado se rompió un bolt, qué metal pongo?',
    'grieta en el ojo de la argolla, qué hago?',
    'va bien una reunión colgada en granito?',
    'bolt de 112 mm de largo en granito, basta?',
  ])('%s', (text) => expect(understand(text).topic).not.toBe('emergency'));
});

describe('what looks like a fact of the bolt and is none', () => {
  it.each([
    // No bolt measures 4 or 7 mm: the number names the bolt.
    ['bolt 4 aguantó 15 kN', { load_kn: 15 }],
    ['la chapa 7 gira', { signs: 'spinning' }],
    // So long the cartridge is past its date; nothing was glued.
    ['el cartucho caducó hace 3 semanas', { cartridge: 'expired' }],
    ['la broca está gastada', {}],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));

  it.each([
    ['el cartucho caducó hace 3 semanas', 'hours_since'],
    ['el cartucho está caducao desde hace 2 meses', 'hours_since'],
    ['bolt 4 aguantó 15 kN', 'diameter_mm'],
    ['anclajes de los 80', 'length_mm'],
    ['20 probados, todos aguantaron menos dos', 'temperature_c'],
  ])('%s: no %s', (text, fact) => expect(facts(text)).not.toHaveProperty(fact));
});

describe('tests of which not all went well', () => {
  it.each([
    ['todos aguantaron menos el último', 'one-gave-way'],
    ['aguantaron todos menos uno', 'one-gave-way'],
    ['todos aguantaron menos dos', 'several-gave-way'],
    ['todos aguantaron', 'all-held'],
  ])('%s: %s', (text, proof_tests) => expect(facts(text)).toEqual({ proof_tests }));
});

describe('sizes as they are said', () => {
  it.each([
    ['tornillos M8 de 6 cm', { diameter_mm: 8, length_mm: 60 }],
    ['varilla de doce', { diameter_mm: 12 }],
    ['es del 12', { diameter_mm: 12 }],
    ['80 bolts a 9 euros y 20 de mano de obra', { count: 80, unit_cost: 9, labour_cost: 20 }],
    ['entre los dos de la reunión hay 15 cm', { use: 'belay', spacing_mm: 150 }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});
