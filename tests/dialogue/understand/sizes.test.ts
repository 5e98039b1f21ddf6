/** Common writings of sizes. Inches by the international inch of 25.4 mm (1959; from memory). */
import { describe, expect, it } from 'vitest';
import { loadUnderstand, told } from './setup.ts';

const { understand } = await loadUnderstand();
const facts = (text: string, context = {}) => told(understand(text, context));
const size = (diameter_mm: number, length_mm: number) => ({ diameter_mm, length_mm });

describe('pairs', () => {
  it.each([
    ['10x80', size(10, 80)],
    ['10 x 80 mm', size(10, 80)],
    ['10mm x 80mm', size(10, 80)],
    ['M10x90', size(10, 90)],
    ['M10 × 90', size(10, 90)],
    ['m10/90', size(10, 90)],
    ['12 mm × 100', size(12, 100)],
    ['80x10', size(10, 80)],
    ['⌀12 x 100', size(12, 100)],
    ['Ø 12x100', size(12, 100)],
    ['12 by 100', size(12, 100)],
    ['10,5 x 95', size(10.5, 95)],
    ['1.2 x 10 cm', size(12, 100)],
    ['12mm x 10cm', size(12, 100)],
    ['1/2" x 4"', size(12.7, 101.6)],
    ['½ × 4', size(12.7, 101.6)],
    ['½" × 4½"', size(12.7, 114.3)],
    ['3/8-inch by 3 1/2"', size(9.525, 88.9)],
    ['3/8 x 3', size(9.525, 76.2)],
    ['3/8" by 3-1/2"', size(9.525, 88.9)],
    ['half inch by four inch', size(12.7, 101.6)],
    ['12x100 twin-leg', { ...size(12, 100), anchor: 'glue-in-twin-leg' }],
    ['20 x 10x80', { ...size(10, 80), count: 20 }],
    ['20 10x80 bolts', { ...size(10, 80), count: 20 }],
    ['12x14x100 in a 14 hole', { ...size(12, 100), hole_diameter_mm: 14 }],
    ['12x90 hole', { hole_diameter_mm: 12, embedment_mm: 90 }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));
});

describe('one length and what it is', () => {
  it.each([
    ['12 mm', { diameter_mm: 12 }],
    ['half inch', { diameter_mm: 12.7 }],
    ['3 1/2 in', { length_mm: 88.9 }],
    ['100mm bolt', { length_mm: 100 }],
    ['80 deep', { embedment_mm: 80 }],
    ['embedded 70 mm', { embedment_mm: 70 }],
    ['hole 12 mm', { hole_diameter_mm: 12 }],
    ['in a 14 hole', { hole_diameter_mm: 14 }],
    ['12 mm bolt in a 14 mm hole 90 mm deep', { diameter_mm: 12, hole_diameter_mm: 14, embedment_mm: 90 }],
    ['edge 15 cm away', { edge_distance_mm: 150 }],
    ['15 cm from the edge', { edge_distance_mm: 150 }],
    ['20 cm apart', { spacing_mm: 200 }],
    ['sticks out 10 mm', { stick_out_mm: 10 }],
    ['50 micron zinc', { coating_um: 50 }],
    ['at 20 m', {}],
    ['20 m up the pitch', {}],
    ['60 m rope', {}],
    ['M10 in granite', { diameter_mm: 10, rock: 'granite' }],
    ['4 in long', { length_mm: 101.6 }],
  ])('%s', (text, want) => expect(facts(text)).toEqual(want));

  it('takes a bare number for what was asked', () => {
    expect(facts('100', { pending: 'length_mm' })).toEqual({ length_mm: 100 });
    expect(facts('12', { pending: 'diameter_mm' })).toEqual({ diameter_mm: 12 });
    expect(facts('20', { pending: 'count' })).toEqual({ count: 20 });
    expect(understand('12 mm', { pending: 'length_mm' }).problems).toMatchObject([
      { kind: 'impossible', fact: 'length_mm' },
    ]);
    expect(understand('big', { pending: 'diameter_mm' }).problems).toMatchObject([{ kind: 'not-a-number' }]);
  });
});
