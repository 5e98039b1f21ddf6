declare module 'd3-dsv' {
  export function dsvFormat(delimiter: string): { parseRows(text: string): string[][] };
}
