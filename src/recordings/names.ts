/** What loggers write above their columns, in the languages spoken here. Not shown to anybody: only recognised. */
import type { ForceUnit, LengthUnit } from '../units/convert.ts';

const forces: Readonly<Record<string, ForceUnit>> = {
  kn: 'kN',
  kilonewton: 'kN',
  n: 'N',
  newton: 'N',
  newtons: 'N',
  dan: 'daN',
  kgf: 'kgf',
  kp: 'kgf',
  lbf: 'lbf',
  lbsf: 'lbf',
};
const lengths: Readonly<Record<string, LengthUnit>> = {
  mm: 'mm',
  millimeter: 'mm',
  cm: 'cm',
  µm: 'µm',
  μm: 'µm',
  um: 'µm',
  in: 'in',
  inch: 'in',
  inches: 'in',
  zoll: 'in',
};
const seconds: Readonly<Record<string, number>> = {
  s: 1,
  sec: 1,
  secs: 1,
  second: 1,
  seconds: 1,
  sek: 1,
  sekunden: 1,
  seg: 1,
  segundos: 1,
  secondes: 1,
  secondi: 1,
  ms: 1e-3,
  msec: 1e-3,
  msecs: 1e-3,
  milliseconds: 1e-3,
  millisekunden: 1e-3,
  milisegundos: 1e-3,
  millisecondes: 1e-3,
  millisecondi: 1e-3,
  µs: 1e-6,
  μs: 1e-6,
  us: 1e-6,
  min: 60,
};

/** "Force [kN]", "force_kN", "F/kN", "Kraft in kN", "kN": the words that may be a unit, the likeliest first. */
export function unitWords(cell: string): string[] {
  const bracketed = [...cell.matchAll(/[[({<]([^\])}>]*)[\])}>]/g)].map(([, inner]) => (inner ?? '').trim());
  const bare = cell.replace(/[[({<][^\])}>]*[\])}>]/g, ' ').trim();
  const last = bare.split(/[\s_/,:;=.-]+/).filter(Boolean);
  return [...bracketed, ...(bracketed.length === 0 && last.length > 0 ? [last.at(-1) as string] : [])];
}

const lookUp = <T>(table: Readonly<Record<string, T>>, cell: string): T | null => {
  for (const word of unitWords(cell)) {
    const key = word.toLowerCase();
    if (Object.hasOwn(table, key)) return table[key] as T;
  }
  return null;
};

export const forceUnitIn = (cell: string): ForceUnit | null => lookUp(forces, cell);
export const lengthUnitIn = (cell: string): LengthUnit | null => lookUp(lengths, cell);
export const secondsIn = (cell: string): number | null => lookUp(seconds, cell);

/** A cell that is a unit and nothing else, as in a row of units below the names. */
export function isUnitCell(cell: string): boolean {
  const bare = cell.replace(/^[[({<]|[\])}>]$/g, '').trim();
  if (bare === '' || bare === '-' || /^[hmsfdyHMSDYT:./ -]+$/.test(bare)) return true;
  return (
    bare.length <= 14 &&
    !/\s/.test(bare) &&
    [forces, lengths, seconds].some((table) => Object.hasOwn(table, bare.toLowerCase()))
  );
}

const word = (list: string): RegExp => new RegExp(`(?:^|[^\\p{L}])(?:${list})(?![\\p{L}])`, 'iu');
const names = {
  force: /force|load|kraft|fuerza|carga|forç|forza|carico|effort|charge|zuglast|tensile|dynamom/iu,
  forceShort: word('f|last|zug|pull|fz'),
  extreme: word('max|peak|min|hold|spitze|pico|crête|picco|mean|avg|mittel|limit|target|soll|rate'),
  move: /disp|exten|movement|travel|stroke|weg|verschieb|deform|desplaz|recorrido|déplac|deplac|spostam|corsa|desloc|position|slip|lvdt/iu,
  time: word(
    'time|zeit|uhrzeit|tiempo|tempo|temps|hora|heure|ora|timestamp|elapsed|t|datetime|zeitstempel|messzeit|laufzeit',
  ),
  sample: word(
    'samples?|index|scan|no|nr|n|point|messwert|muestra|échantillon|campione|amostra|count|i|row|zeile|record|datapoint|num',
  ),
};

export const namesForce = (cell: string): boolean => names.force.test(cell) || names.forceShort.test(cell);
export const namesExtreme = (cell: string): boolean => names.extreme.test(cell);
export const namesMove = (cell: string): boolean => names.move.test(cell);
export const namesTime = (cell: string): boolean => names.time.test(cell.replaceAll('_', ' '));
export const namesSample = (cell: string): boolean =>
  /^\s*#\s*$/.test(cell) || names.sample.test(cell.replaceAll('_', ' '));

const plain = (text: string): number => Number(text.replace(',', '.'));

/** "Sample rate: 100 Hz", "Abtastrate;1 kHz", "Rate (Hz) = 50", "interval 10 ms": samples a second, or null. */
export function rateIn(line: string): number | null {
  const numbers = line.match(/\d+(?:[.,]\d+)?/g);
  if (numbers === null) return null;
  const hertz = /(\d+(?:[.,]\d+)?)\s*"?[;,\t|]?"?\s*(k?)(?:hz|s\/s|sps|samples?\s*(?:\/|per)\s*s)/i.exec(
    line,
  );
  if (hertz !== null) return plain(hertz[1] as string) * (hertz[2] === '' ? 1 : 1000);
  const before = /[[(]?\b(k?)hz\b[\])]?\D*(\d+(?:[.,]\d+)?)/i.exec(line);
  if (before !== null) return plain(before[2] as string) * (before[1] === '' ? 1 : 1000);
  const every =
    /(?:interval|period|periodo|période|\bdt\b|Δt)[^\d]*(\d+(?:[.,]\d+)?)\s*"?[;,\t|]?"?\s*([mµμu]?s)\b/iu.exec(
      line,
    );
  if (every === null) return null;
  const step = plain(every[1] as string) * (seconds[(every[2] as string).toLowerCase()] ?? 1);
  return step > 0 ? 1 / step : null;
}

/** "Force unit: kN", "Einheit;daN" in the lines above the table. */
export function forceUnitStated(line: string): ForceUnit | null {
  if (!/unit|einheit|unidad|unité|unità|unidade/iu.test(line)) return null;
  const found = new Set(
    line.split(/[\s;,:=|\t"'()[\]]+/).flatMap((part) => {
      const key = part.toLowerCase();
      return Object.hasOwn(forces, key) ? [forces[key] as ForceUnit] : [];
    }),
  );
  return found.size === 1 ? ([...found][0] as ForceUnit) : null;
}
