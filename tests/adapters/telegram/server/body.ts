/** Bodies as the Bot API takes them: JSON, or multipart with `attach://` names for files. */
import type { IncomingMessage } from 'node:http';

export async function bytesOf(request: IncomingMessage): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

/** In multipart everything is text: what looks like JSON is JSON, but for texts that members read. */
function fieldValue(key: string, value: string): unknown {
  if (key === 'text' || key === 'caption' || !/^(-?\d+$|true$|false$|[[{])/.test(value)) return value;
  return JSON.parse(value);
}

export async function readParams(request: IncomingMessage): Promise<Record<string, unknown>> {
  const body = await bytesOf(request);
  const type = request.headers['content-type'] ?? '';
  if (body.length === 0) return {};
  if (type.startsWith('application/json')) return JSON.parse(body.toString('utf8'));
  const boundary = /boundary=(.+)$/.exec(type)?.[1] ?? '';
  const params: Record<string, unknown> = {};
  const files = new Map<string, Upload>();
  for (const { name, file, bytes } of parts(body, boundary))
    if (file === undefined) params[name] = fieldValue(name, bytes.toString('utf8'));
    else files.set(name, { name: file, bytes });
  for (const [key, value] of Object.entries(params))
    if (typeof value === 'string' && value.startsWith('attach://'))
      params[key] = files.get(value.slice('attach://'.length));
  return params;
}

interface Upload {
  readonly name: string;
  readonly bytes: Buffer;
}

/** Multipart as the client writes it: names of files without quotes, which stricter readers refuse. */
function* parts(body: Buffer, boundary: string): Generator<{ name: string; file?: string; bytes: Buffer }> {
  const line = Buffer.from(`--${boundary}`);
  for (let from = body.indexOf(line); from >= 0; ) {
    const to = body.indexOf(line, from + line.length);
    if (to < 0) return;
    const part = body.subarray(from + line.length + 2, to - 2);
    const gap = part.indexOf('\r\n\r\n');
    const head = part.subarray(0, gap).toString('utf8');
    const name = /name="([^"]*)"/.exec(head)?.[1] ?? '';
    const file = /filename="?([^"\r\n]*)/.exec(head)?.[1];
    yield { name, bytes: part.subarray(gap + 4), ...(file === undefined ? {} : { file }) };
    from = to;
  }
}
