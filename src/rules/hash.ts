import { createHash } from 'node:crypto';

/** JSON with sorted keys: the layout of a file is no change of the rules. */
const canonical = (data: unknown): string =>
  JSON.stringify(data, (_, value: unknown) =>
    typeof value === 'object' && value !== null && !Array.isArray(value)
      ? Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)))
      : value,
  );

export const hashOf = (contents: ReadonlyMap<string, unknown>): string =>
  createHash('sha256')
    .update(canonical(Object.fromEntries(contents)))
    .digest('hex')
    .slice(0, 12);
