import { marks, readRows, runRow } from './check-rows.ts';

const shown = (value: number | string | boolean) =>
  typeof value === 'number' ? String(Number(value.toPrecision(6))) : String(value);

const results = readRows().map(runRow);
const table = results.map((r) => [
  r.ok ? 'ok' : 'FAILS',
  r.formula,
  r.name,
  `${shown(r.expected)} ${r.unit}`.trim(),
  shown(r.got),
  r.deviation === undefined ? '' : `${(100 * r.deviation).toFixed(3)} %`,
  r.mark,
  r.source,
]);
const heads = ['', 'formula', 'check', 'expected', 'got', 'deviation', 'mark', 'source'];
const widths = heads.map((head, i) =>
  Math.min(60, Math.max(head.length, ...table.map((t) => t[i]?.length ?? 0))),
);
const line = (cells: readonly string[]) =>
  cells.map((cell, i) => (i === cells.length - 1 ? cell : cell.padEnd(widths[i] ?? 0))).join('  ');
console.log([line(heads), ...table.map(line)].join('\n'));

const counts = marks.map((mark) => `${results.filter((r) => r.mark === mark).length} ${mark}`);
const failed = results.filter((r) => !r.ok).length;
console.log(`\n${results.length} checks: ${counts.join(', ')}; ${failed} fail`);
if (failed > 0) process.exitCode = 1;
