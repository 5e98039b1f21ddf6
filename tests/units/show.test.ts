import { describe, expect, it } from 'vitest';
import { inches, longTime, showMeasure, twoDigits } from '../../src/units/show.ts';

describe('numbers for people', () => {
  it.each([
    [13.47, '13'],
    [0.0834, '0.083'],
    [4946, '4900'],
    [9.96, '10'],
    [0, '0'],
    [1.05, '1.1'],
    [-4.44, '-4.4'],
  ])('%d keeps two significant digits: %s', (value, text) => {
    expect(twoDigits(value)).toBe(text);
  });

  // The inch is 25.4 mm exactly: ISO 31-1 / NIST Special Publication 811, Appendix B.8.
  it.each([
    [12.7, '½ in'],
    [80, '3⅛ in'],
    [25.4, '1 in'],
    [10, '⅜ in'],
    [100, '3 15/16 in'],
    [0.5, '0 in'],
  ])('%d mm is shown as %s', (mm, text) => {
    expect(inches(mm)).toBe(text);
  });

  // 1 lbf = 4.448222 N: NIST Special Publication 811, Appendix B.8.
  it('shows a limit as the standard prints it', () => {
    expect(showMeasure(25, 'kN', true)).toBe('25 kN (5600 lbf)');
    expect(showMeasure(15, 'kN', true)).toBe('15 kN (3400 lbf)');
  });

  it('shows temperature, volume, stress and time', () => {
    expect(showMeasure(4, '°C')).toBe('4 °C (39 °F)');
    expect(showMeasure(4.084, 'ml')).toBe('4.1 ml (0.14 US fl oz)');
    expect(showMeasure(4.482, 'MPa')).toBe('4.5 MPa (650 psi)');
    // 1 lbf/in = 0.1751268 N/mm, 1 ft·lbf = 1.355818 J: NIST Special Publication 811, Appendix B.8.
    expect(showMeasure(5, 'kN/mm')).toBe('5.0 kN/mm (29000 lbf/in)');
    expect(showMeasure(1.2, 'kN/s')).toBe('1.2 kN/s (270 lbf/s)');
    expect(showMeasure(62.5, 'J')).toBe('63 J (46 ft·lbf)');
    expect(showMeasure(0.75, 'h')).toBe('45 min');
    expect(longTime(72, 'h')).toEqual({ number: '3', words: 'days' });
    expect(longTime(83.6, 'h', true)).toEqual({ number: '3.5', words: 'days' });
    expect(longTime(40.48, 'a')).toEqual({ number: '40', words: 'years' });
    expect(longTime(24, 'h')).toBeUndefined();
    expect(showMeasure(24, 'h', true)).toBe('24 h');
  });
});
