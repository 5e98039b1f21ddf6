import { describe, expect, it } from 'vitest';
import { printScore } from './score.ts';
import { loadUnderstand, told } from './setup.ts';

const { understand } = await loadUnderstand('pt');
const facts = (text: string) => told(understand(text));

describe('Portuguese messages, topic and exact facts', () => {
  it.each(['pt/messages.json', 'pt/messages-late.json', 'pt/messages-more.json'])('%s', async (name) => {
    const { topic, f1 } = await printScore(name, understand);
    expect(topic).toBeGreaterThanOrEqual(0.95);
    expect(f1).toBeGreaterThanOrEqual(0.95);
  });
});

describe('Portuguese words that mean something else as well', () => {
  it.each([
    ['a chuva lava a parede', { rain_washed: 'yes' }],
    ['ele veio ontem', {}],
    ['falésia a 30 km do mar', { sea_distance_m: 30_000 }],
    ['malta, é calcário', { rock: 'limestone' }],
    ['um plano concreto', {}],
    ['reunião do clube', {}],
    ['corda de poliéster', {}],
    ['fica a 4 km do mar', { sea_distance_m: 4000 }],
    ['quanto gasto de resina', {}],
    ['cor de granito', {}],
    ['a via Sonho de Granito é calcário', { rock: 'limestone' }],
    ['rocha mole', {}],
    ['a chapa está podre', { signs: 'pitting' }],
    ['calcário podre', { rock: 'limestone', rock_condition: 'weathered' }],
    ['uns 5 cm da fissura', { edge_distance_mm: 50 }],
    ['na via Mar de Pedra', {}],
    ['haste de 12 c/ 80 mm de fundo', { diameter_mm: 12, embedment_mm: 80 }],
    ['furo de 14 mm p/ granito s/ ferrugem', { hole_diameter_mm: 14, rock: 'granite' }],
    ['rocha a 12 C / 54 F', { temperature_c: 12 }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));

  it.each([
    ['tufo', 'rock', 'volcanic-tuff'],
    ['inox', 'metal', 'stainless-304'],
    ['galvanizado', 'metal', 'zinc-plated'],
    ['grampo colado', 'anchor', 'glue-in-single-leg'],
    ['chumbador mecânico', 'anchor', 'drop-in'],
    ['costão', 'environment', 'sea-cliff'],
    ['tirolesa', 'use', 'highline'],
  ])('%s may be something else and asks back', (text, fact, careful) => {
    const { found, problems } = understand(text);
    expect(found).toEqual([]);
    expect(problems).toMatchObject([{ kind: 'ambiguous', fact, value: careful }]);
  });
});

describe('Portuguese denials and doubts', () => {
  it.each([
    ['não é inox 304', {}],
    ['nem 304 nem 316', {}],
    ['sem granito', {}],
    ['granito não', {}],
    ['granito não é, é gnaisse', { rock: 'gneiss' }],
    ['em vez de epóxi uso viniléster', { adhesive: 'vinyl-ester' }],
    ['talvez granito', {}],
    ['pode ser gnaisse', {}],
    ['acho que não é granito', {}],
    ['calcário, talvez', {}],
    ['o furo não está molhado', {}],
    ['o furo não está seco', { hole_moisture: 'damp' }],
    ['não tem ferrugem', {}],
    ['granito ou calcário?', {}],
    ['é dolomito, desculpa, não calcário', { rock: 'dolomite' }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('Portuguese numbers', () => {
  it.each([
    ['vinte e cinco chumbadores', { count: 25 }],
    ['cento e vinte mm de comprimento', { length_mm: 120 }],
    ['mil e quinhentos metros do mar', { sea_distance_m: 1500 }],
    ['1.500 m do mar', { sea_distance_m: 1500 }],
    ['1,5 km do mar', { sea_distance_m: 1500 }],
    ['dois quilômetros e meio do mar', { sea_distance_m: 2500 }],
    ['a menos de 250 m do mar', { sea_distance_m: 250 }],
    ['1200 m acima do nível do mar', {}],
    ['meia polegada por quatro polegadas', { diameter_mm: 12.7, length_mm: 101.6 }],
    ['20 chumbadores de 12', { count: 20, diameter_mm: 12 }],
    ['30 furos de 14 mm', { count: 30, hole_diameter_mm: 14 }],
    ['uma dúzia de chapas', { count: 12 }],
    ['3ºC', { temperature_c: 3 }],
    ['5 graus negativos', { temperature_c: -5 }],
    ['mais ou menos 5 graus', { temperature_c: 5 }],
    ['de 4 a 6 graus', { temperature_c: 4 }],
    ['2ª enfiada, 3º ponto', {}],
    ['colei às 9h', {}],
    ['colei ao meio-dia', {}],
    ['R$ 1.200,50 de mão de obra', { labour_cost: 1200.5 }],
    ['40 graus ao sol', { surface_temperature_c: 40 }],
    ['temperatura do ar 15 graus', {}],
    ['saíram a 17,5 - 20,1 - 18,3 kN', { pulls_kn: [17.5, 20.1, 18.3] }],
    ['12 ou 30 euros por ponto', { unit_cost: [12, 30] }],
    ['slackline esticada a 4 kN, 25 m', { use: 'highline', tension_kn: 4, span_m: 25 }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('Portuguese facts of a test or a cartridge, and what is none of the bolt', () => {
  it.each([
    // No bolt measures 4 mm: the number names the bolt.
    ['grampo 4 aguentou 15 kN', { load_kn: 15 }],
    // So long the cartridge is past its date; nothing was glued.
    ['cartucho vencido há 3 semanas', { cartridge: 'expired' }],
    ['todos aguentaram menos o último', { proof_tests: 'one-gave-way' }],
    ['aguentaram todos menos um', { proof_tests: 'one-gave-way' }],
    ['todos aguentaram menos dois', { proof_tests: 'several-gave-way' }],
    ['todos aguentaram', { proof_tests: 'all-held' }],
    ['parafusos M8 de 6 cm', { diameter_mm: 8, length_mm: 60 }],
    ['haste de doze', { diameter_mm: 12 }],
    ['trinta e quatro chapas', { count: 34 }],
    ['304 ou 316 pra uma pedreira', {}],
    ['ninguém sabe de que ano são', { signs: 'unknown-age' }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

it('takes "dez e quatro" for two numbers: fourteen is "catorze"', () =>
  expect(facts('tiges de dez e quatro de doze').diameter_mm).not.toBe(14));
