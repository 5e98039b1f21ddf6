/** Writes samples down as loggers do: any separator, decimal mark, clock, unit, encoding, and chatter above the table. */
import type { Random } from './random.ts';

export const units = { kN: 1, N: 1e-3, daN: 1e-2, kgf: 0.00980665, lbf: 0.0044482216152605 } as const;
export type Unit = keyof typeof units;
const decimals: Readonly<Record<Unit, number>> = { kN: 4, N: 1, daN: 2, kgf: 2, lbf: 2 };

export const timeKinds = ['s', 'ms', 'sample', 'clock', 'iso', 'date+clock', 'ticks', 'none'] as const;
export type TimeKind = (typeof timeKinds)[number];

export interface Style {
  readonly separator: ';' | ',' | '\t' | '|' | ' ';
  readonly decimal: '.' | ',';
  readonly time: TimeKind;
  readonly unit: Unit;
  readonly unitPlace: 'header' | 'row' | 'above';
  readonly move: 'mm' | 'in' | null;
  readonly encoding: 'utf8' | 'utf8-bom' | 'utf16le' | 'utf16be' | 'latin1';
  readonly lineEnd: '\n' | '\r\n';
  readonly preamble: boolean;
  readonly language: 'en' | 'de' | 'es' | 'fr';
  /** The header again, and time from nought, before each further pull. */
  readonly sections: boolean;
}

const words = {
  en: {
    time: 'Time',
    force: 'Force',
    move: 'Displacement',
    sample: 'Sample',
    date: 'Date',
    rate: 'Sample rate',
    unit: 'Unit',
  },
  de: {
    time: 'Zeit',
    force: 'Kraft',
    move: 'Weg',
    sample: 'Messwert',
    date: 'Datum',
    rate: 'Abtastrate',
    unit: 'Einheit',
  },
  es: {
    time: 'Tiempo',
    force: 'Fuerza',
    move: 'Desplazamiento',
    sample: 'Muestra',
    date: 'Fecha',
    rate: 'Frecuencia',
    unit: 'Unidad',
  },
  fr: {
    time: 'Temps',
    force: 'Force',
    move: 'Déplacement',
    sample: 'Échantillon',
    date: 'Date',
    rate: 'Fréquence',
    unit: 'Unité',
  },
} as const;

const pad = (value: number, digits = 2): string => String(value).padStart(digits, '0');

function timeCells(style: Style, row: number, step: number, from: number): string[] {
  const seconds = row * step;
  // Whole tenths of milliseconds, so that no rounding of ours disturbs the clock.
  const units = Math.round((from + seconds) * 1e4);
  const [whole, rest] = [Math.floor(units / 1e4), units % 1e4];
  const clock = `${pad(Math.floor(whole / 3600) % 24)}:${pad(Math.floor(whole / 60) % 60)}:${pad(whole % 60)}`;
  const days = Math.floor(whole / 86_400);
  switch (style.time) {
    case 's':
      return [seconds.toFixed(4)];
    case 'ms':
      return [(seconds * 1000).toFixed(1)];
    case 'sample':
      return [String(row)];
    case 'clock':
      return [`${clock}.${pad(rest, 4)}`];
    case 'iso':
      return [`2026-05-${pad(4 + days)}T${clock}.${pad(rest, 4)}Z`];
    case 'date+clock':
      return [`${pad(4 + days)}.05.2026`, `${clock}.${pad(rest, 4)}`];
    case 'ticks':
      return [clock];
    case 'none':
      return [];
  }
}

function header(style: Style): { names: string[]; units: string[] } {
  const name = words[style.language];
  const timeUnit = {
    s: 's',
    ms: 'ms',
    clock: 'hh:mm:ss',
    iso: '',
    ticks: '',
    sample: '',
    'date+clock': '',
    none: '',
  };
  const names: string[] = [];
  const units: string[] = [];
  const add = (title: string, unit: string): void => {
    names.push(style.unitPlace === 'row' || unit === '' ? title : `${title} [${unit}]`);
    units.push(unit === '' ? '-' : unit);
  };
  if (style.time === 'date+clock') add(name.date, '');
  if (style.time === 'sample') add(name.sample, '');
  else if (style.time !== 'none') add(name.time, timeUnit[style.time]);
  add(name.force, style.unitPlace === 'above' ? '' : style.unit);
  if (style.move !== null) add(name.move, style.move);
  return { names, units };
}

export function encode(text: string, encoding: Style['encoding']): Buffer {
  switch (encoding) {
    case 'utf8':
      return Buffer.from(text, 'utf8');
    case 'utf8-bom':
      return Buffer.from(`\ufeff${text}`, 'utf8');
    case 'latin1':
      return Buffer.from(text, 'latin1');
    case 'utf16le':
      return Buffer.from(`\ufeff${text}`, 'utf16le');
    case 'utf16be':
      return Buffer.from(`\ufeff${text}`, 'utf16le').swap16();
  }
}

export interface Samples {
  readonly kn: readonly number[];
  readonly mm: readonly number[];
  readonly step: number;
  /** Rows at which a further pull begins. */
  readonly sectionRows: readonly number[];
}

export function write(samples: Samples, style: Style, random: Random): Buffer {
  const { kn, mm, step } = samples;
  const factor = units[style.unit];
  const name = words[style.language];
  const lines: string[] = [];
  const { separator } = style;
  if (style.preamble)
    lines.push(
      'Seagull Bay Climbing Club – pull tests',
      `Crag: Gannet Slab${separator}sector 3`,
      'Max. load of the cell: 50',
      '',
    );
  const rate = Math.round(1 / step);
  if (style.time === 'sample' || style.time === 'none')
    lines.push(
      rate >= 1000 && random.chance(0.5)
        ? `${name.rate}: ${rate / 1000} kHz`
        : `${name.rate}${separator}${rate} Hz`,
    );
  if (style.unitPlace === 'above') lines.push(`${name.unit}: ${style.unit}`);
  const { names, units: unitRow } = header(style);
  const glue = separator === ' ' ? '   ' : separator;
  const top = [names.join(glue), ...(style.unitPlace === 'row' ? [unitRow.join(glue)] : [])];
  lines.push(...top);
  const from =
    36_000 + Math.round(random.between(0, 50_000) * 100) / 100 + (random.chance(0.15) ? 50_395 - 36_000 : 0);
  let base = 0;
  const mark = (cell: string): string => (style.decimal === ',' ? cell.replace('.', ',') : cell);
  const quoted = (cell: string): string => (separator === ',' && style.decimal === ',' ? `"${cell}"` : cell);
  for (let row = 0; row < kn.length; row += 1) {
    if (style.sections && samples.sectionRows.includes(row)) {
      lines.push('', ...top);
      base = row;
    }
    const cells = timeCells(style, row - base, step, from);
    cells.push(((kn[row] as number) / factor).toFixed(decimals[style.unit]));
    if (style.move !== null)
      cells.push(
        ((mm[row] as number) / (style.move === 'in' ? 25.4 : 1)).toFixed(style.move === 'in' ? 6 : 5),
      );
    lines.push(
      cells
        .map((cell) => quoted(style.time === 'iso' && cell.includes('T') ? cell : mark(cell)))
        .join(separator),
    );
  }
  return encode(`${lines.join(style.lineEnd)}${style.lineEnd}`, style.encoding);
}

export function randomStyle(random: Random, index: number, rate: number): Style {
  const time = timeKinds[index % timeKinds.length] as TimeKind;
  const separator = random.pick([';', ';', ',', '\t', '|', ' '] as const);
  const sections = random.chance(0.3) && (time === 's' || time === 'ms' || time === 'sample');
  const encoding = random.pick(['utf8', 'utf8', 'utf8-bom', 'utf16le', 'utf16be', 'latin1'] as const);
  return {
    separator,
    decimal: random.chance(0.4) ? ',' : '.',
    // A clock of whole seconds makes no sense with a few rows a second.
    time: time === 'ticks' && rate < 25 ? 's' : time,
    unit: random.pick(['kN', 'kN', 'kN', 'N', 'daN', 'kgf', 'lbf'] as const),
    unitPlace: random.pick(['header', 'header', 'row', 'above'] as const),
    move: random.chance(0.4) ? random.pick(['mm', 'in'] as const) : null,
    encoding,
    lineEnd: random.pick(['\n', '\r\n'] as const),
    // A dash outside Latin-1 is not written in Latin-1.
    preamble: encoding !== 'latin1' && random.chance(0.6),
    language: random.pick(['en', 'de', 'es', 'fr'] as const),
    sections,
  };
}
