/** Why a recording cannot be read. Each has a text `recording-problem-<code>` in rules/words. */
export const problemCodes = [
  'unreadable',
  'empty',
  'packed',
  'binary',
  'too-large',
  'long-line',
  'no-table',
  'no-header',
  'no-load',
  'many-loads',
  'unit',
  'no-time',
  'time-unit',
  'no-rate',
  'missing-cell',
  'no-number',
  'no-clock',
  'formula',
  'time-back',
  'truncated',
  'too-short',
  'strange-text',
  'decimal-mark',
] as const;
export type ProblemCode = (typeof problemCodes)[number];

export class RecordingError extends Error {
  override readonly name = 'RecordingError';
  constructor(
    readonly code: ProblemCode,
    /** Counted from 1; null where it is about the file as a whole. */
    readonly line: number | null = null,
  ) {
    super(line === null ? `recording: ${code}` : `recording: ${code} in line ${line}`);
  }
}
