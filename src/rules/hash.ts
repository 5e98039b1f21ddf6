import { createHash } from 'node:crypto';

/** JSON with sorted keys: the layout of a file is no change of the rules. */
function canonical(data: unknown): string {
  if (Array.isArray(data)) return `[${data.map(canonical).join(',')}]`;
  if (typeof data !== 'object' || data === null) return JSON.stringify(data);
  const pairs = Object.entries(data).sort(([a], [b]) => (a < b ? -1 : 1));
  return `{${pairs.map(([key, value]) => `${JSON.stringify(key)}:${canonical(value)}`).join(',')}}`;
}

export const hashOf = (contents: ReadonlyMap<string, unknown>): string =>
  createHash('sha256')
    .update(canonical(Object.fromEntries(contents)))
    .digest('hex')
    .slice(0, 12);
