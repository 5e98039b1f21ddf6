/** Numbers for people: metric and imperial side by side, no more digits than they deserve. The only place that rounds. */
import convert from 'convert';

/** Two significant digits: 13.47 → "13", 0.0834 → "0.083", 4946 → "4900". */
export function twoDigits(value: number): string {
  // Nothing here is measured finer than a millionth; a slip of the keyboard must not fill the screen with zeros.
  if (Math.abs(value) < 1e-6) return '0';
  const rounded = Number(value.toPrecision(2));
  const decimals = Math.max(0, 1 - Math.floor(Math.log10(Math.abs(rounded))));
  return rounded.toFixed(decimals);
}

/** As it was said or as a standard prints it: at most three decimals, no trailing zeros. */
function asSaid(value: number): string {
  return String(Math.round(value * 1000) / 1000);
}

const VULGAR: Readonly<Record<number, string>> = {
  2: '⅛',
  4: '¼',
  6: '⅜',
  8: '½',
  10: '⅝',
  12: '¾',
  14: '⅞',
};

/** Millimetres as inches to the nearest sixteenth: 12 → "½ in", 80 → "3⅛ in". */
export function inches(mm: number): string {
  const sixteenths = Math.round(convert(mm, 'mm').to('in') * 16);
  const whole = Math.floor(sixteenths / 16);
  const rest = sixteenths % 16;
  const fraction = rest === 0 ? '' : (VULGAR[rest] ?? `${whole > 0 ? ' ' : ''}${rest}/16`);
  return `${whole > 0 || rest === 0 ? whole : ''}${fraction} in`;
}

/** Metric alone, for a table whose title gives the conversion: "mean 38, 5 % value 17 kN". */
export const showMetric = (value: number, unit: string, exact = false): string =>
  `${exact ? asSaid(value) : twoDigits(value)} ${unit}`;

/** The same in the units of the other system, where there are any. */
function imperialOf(value: number, unit: string): string | undefined {
  switch (unit) {
    case 'kN':
      return `${twoDigits(convert(value, 'kN').to('lbf'))} lbf`;
    case 'mm':
      return inches(value);
    case 'm':
      return `${twoDigits(convert(value, 'm').to('ft'))} ft`;
    case '°C':
      return `${Math.round(convert(value, 'C').to('F'))} °F`;
    case 'ml':
      return `${twoDigits(convert(value, 'mL').to('fl oz'))} US fl oz`;
    case 'MPa':
      return `${twoDigits(convert(value, 'MPa').to('psi'))} psi`;
    case 'kN/s':
      return `${twoDigits(convert(value, 'kN').to('lbf'))} lbf/s`;
    case 'kN/mm':
      return `${twoDigits((convert(value, 'kN').to('lbf') as number) * (convert(1, 'in').to('mm') as number))} lbf/in`;
    case 'J':
      return `${twoDigits((convert(value, 'N').to('lbf') as number) * (convert(1, 'm').to('ft') as number))} ft·lbf`;
    default:
      return undefined;
  }
}

function metricOf(value: number, unit: string, exact: boolean): string {
  const number = exact ? asSaid(value) : twoDigits(value);
  switch (unit) {
    case 'mm':
      return `${exact ? asSaid(value) : String(Math.round(value))} mm`;
    case '°C':
      return `${asSaid(value)} °C`;
    case 'h':
      return showHours(value, exact);
    case 'money':
      return !exact && value >= 100 ? String(Math.round(value)) : number;
    case 'min':
      return `${Math.round(value)} min`;
    case '°':
      return `${number}°`;
    case '1':
      return number;
    default:
      return `${number} ${unit}`;
  }
}

/** `exact` is for what a member said and for a standard's limit, which are never rounded. Both systems, `first` first. */
export function showMeasure(
  value: number,
  unit: string,
  exact = false,
  first: 'metric' | 'imperial' = 'metric',
): string {
  const metric = metricOf(value, unit, exact);
  const imperial = imperialOf(value, unit);
  if (imperial === undefined) return metric;
  return first === 'metric' ? `${metric} (${imperial})` : `${imperial} (${metric})`;
}

function showHours(hours: number, exact: boolean): string {
  if (hours < 1) return `${Math.round(hours * 60)} min`;
  return `${exact ? asSaid(hours) : twoDigits(hours)} h`;
}

/** Times so long that they are told in words of the language ("3.5 days", "40 years"): the number and which words. */
export function longTime(
  value: number,
  unit: string,
  exact = false,
): { readonly number: string; readonly words: 'days' | 'years' } | undefined {
  if (unit === 'a') return { number: exact ? asSaid(value) : twoDigits(value), words: 'years' };
  // Waiting times above all: never shown shorter than they are.
  if (unit === 'h' && value >= 72)
    return { number: String(Math.ceil((value / 24) * 10) / 10), words: 'days' };
  return undefined;
}
