/** One REST call: reading a body (JSON or multipart), and the answer to it. */
import type { IncomingMessage, ServerResponse } from 'node:http';

export interface SentFile {
  readonly field: string;
  readonly name: string;
  readonly type: string;
  readonly bytes: Buffer;
}

export interface Call {
  readonly method: string;
  readonly path: string;
  readonly query: URLSearchParams;
  readonly authorization: string | undefined;
  readonly body: unknown;
  readonly files: readonly SentFile[];
}

export interface Answer {
  readonly status: number;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

export const problem = (status: number, code: number, message: string): Answer => ({
  status,
  body: { code, message },
});

export async function readCall(request: IncomingMessage): Promise<Call> {
  const url = new URL(request.url ?? '/', 'http://server');
  const chunks: Buffer[] = [];
  for await (const chunk of request) chunks.push(chunk as Buffer);
  const bytes = Buffer.concat(chunks);
  const type = request.headers['content-type'] ?? '';
  const files: SentFile[] = [];
  let body: unknown = null;
  if (type.startsWith('multipart/')) {
    const form = await new Response(bytes, { headers: { 'content-type': type } }).formData();
    for (const [field, value] of form) {
      if (typeof value === 'string') {
        if (field === 'payload_json') body = JSON.parse(value);
      } else
        files.push({
          field,
          name: value.name,
          type: value.type,
          bytes: Buffer.from(await value.arrayBuffer()),
        });
    }
  } else if (bytes.length > 0) body = JSON.parse(bytes.toString('utf8'));
  return {
    method: request.method ?? 'GET',
    path: decodeURIComponent(url.pathname).replace(/^\/api\/v10/, ''),
    query: url.searchParams,
    authorization: request.headers.authorization,
    body,
    files,
  };
}

export function write(response: ServerResponse, { status, body, headers }: Answer): void {
  if (response.destroyed) return;
  const json = body !== undefined && !Buffer.isBuffer(body);
  response.writeHead(status, { ...(json ? { 'content-type': 'application/json' } : {}), ...headers });
  if (body === undefined) response.end();
  else response.end(json ? JSON.stringify(body) : body);
}
