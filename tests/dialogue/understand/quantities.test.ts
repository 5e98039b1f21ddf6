import { describe, expect, it } from 'vitest';
import { loadUnderstand, told } from './setup.ts';

const { understand } = await loadUnderstand();
const facts = (text: string, context = {}) => told(understand(text, context));

describe('temperatures', () => {
  it.each([
    ['4 C', 4],
    ['4°C', 4],
    ['4 °c', 4],
    ['4 degrees', 4],
    ['40F', 4.444],
    ['minus 5', -5],
    ['-5 °C', -5],
    ['5 below zero', -5],
    ['−3 °C', -3],
    ['just above freezing', 0],
    ['rock is minus 3', -3],
  ])('%s', (text, want) => expect(facts(text)).toEqual({ temperature_c: want }));
});

describe('the sea', () => {
  it.each([
    ['200 m from the sea', 200],
    ['2 km inland', 2000],
    ['half a mile from the ocean', 804.672],
    ['a mile from the coast', 1609.344],
    ['1,000 m from the shore', 1000],
    ['1.5km to the beach', 1500],
    ['within 250 m of the sea', 250],
    ['the sea is 300 m away', 300],
    ['500 yards from the water', 457.2],
  ])('%s', (text, want) => expect(facts(text)).toEqual({ sea_distance_m: want }));
});

describe('loads, people, times, money', () => {
  it.each([
    ['load 15 kN', { load_kn: 15 }],
    ['2000 lbf', { load_kn: 8.896 }],
    ['300 kgf', { load_kn: 2.942 }],
    ['250 daN', { load_kn: 2.5 }],
    ['80 kg climber', { mass_kg: 80 }],
    ['I weigh 12 stone', { mass_kg: 76.204 }],
    ['factor 1.7 fall with 80 kg', { fall_factor: 1.7, mass_kg: 80 }],
    ['glued 3 h ago', { hours_since: 3 }],
    ['glued 90 min ago', { hours_since: 1.5 }],
    ['glued 1 h 30 min ago', { hours_since: 1.5 }],
    ['for 20 bolts', { count: 20 }],
    ['a dozen bolts', { count: 12 }],
    ['twenty five anchors', { count: 25 }],
    ['highline 50 m span, 2 m sag, tension 5 kN', { use: 'highline', span_m: 50, sag_m: 2, tension_kn: 5 }],
    ['rope modulus 25 kN', { rope_modulus_kn: 25 }],
    ['60 degrees between the legs', { angle_deg: 60 }],
    ['bolts cost 6 € each, labour 20 €', { unit_cost: 6, labour_cost: 20 }],
    ['3% interest over 50 years', { discount_pct: 3, horizon_years: 50 }],
    ['life 25 years', { life_years: 25 }],
    ['humidity 85 %', { humidity_pct: 85 }],
    ['UCS 45 MPa', { ucs_mpa: 45 }],
    ['schmidt hammer 42', { rebound: 42 }],
    ['22, 24, 19 and 25 kN', { pulls_kn: [22, 24, 19, 25] }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));

  it('counts from the end of yesterday evening', () => {
    const now = '2027-05-02T09:00:00+02:00';
    expect(facts('glued since yesterday evening', { now })).toEqual({ hours_since: 11 });
    expect(facts('glued this morning', { now })).toEqual({ hours_since: 0 });
    expect(understand('glued yesterday').problems).toMatchObject([{ kind: 'ambiguous', value: 0 }]);
  });
});
