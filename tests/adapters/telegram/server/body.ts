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
  const form = await new Response(new Uint8Array(body), { headers: { 'content-type': type } }).formData();
  const params: Record<string, unknown> = {};
  const files = new Map<string, { name: string; bytes: Buffer }>();
  for (const [key, value] of form) {
    if (typeof value === 'string') params[key] = fieldValue(key, value);
    else files.set(key, { name: value.name, bytes: Buffer.from(await value.arrayBuffer()) });
  }
  for (const [key, value] of Object.entries(params))
    if (typeof value === 'string' && value.startsWith('attach://'))
      params[key] = files.get(value.slice('attach://'.length));
  return params;
}
