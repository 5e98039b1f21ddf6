/** What may go wrong between a bot and the platform, to be asked for by a test. */
import type { ServerResponse } from 'node:http';

export type Fault =
  /** Answered at once; with `after` only when the call has had its effect. */
  | {
      readonly kind: 'error';
      readonly code: number;
      readonly description: string;
      readonly after?: boolean;
      readonly parameters?: { readonly retry_after?: number; readonly migrate_to_chat_id?: number };
    }
  /** A gateway's page instead of JSON. */
  | { readonly kind: 'page'; readonly code: number; readonly after?: boolean }
  /** No answer ever. */
  | { readonly kind: 'hang'; readonly after?: boolean }
  /** The socket is torn down. */
  | { readonly kind: 'reset'; readonly after?: boolean }
  /** Half an answer, then the server's side of the socket ends. */
  | { readonly kind: 'half-close'; readonly after?: boolean };

export const tooMany = (retry_after: number): Fault => ({
  kind: 'error',
  code: 429,
  description: `Too Many Requests: retry after ${retry_after}`,
  parameters: { retry_after },
});
export const internal: Fault = { kind: 'error', code: 500, description: 'Internal Server Error' };
export const badGateway: Fault = { kind: 'page', code: 502 };
export const kicked: Fault = {
  kind: 'error',
  code: 403,
  description: 'Forbidden: bot was kicked from the supergroup chat',
};
export const blocked: Fault = {
  kind: 'error',
  code: 403,
  description: 'Forbidden: bot was blocked by the user',
};
export const conflict: Fault = {
  kind: 'error',
  code: 409,
  description:
    'Conflict: terminated by other getUpdates request; make sure that only one bot instance is running',
};

interface Planned {
  readonly method: string;
  readonly fault: Fault;
  readonly chat: number | undefined;
  left: number;
}

export class Faults {
  #planned: Planned[] = [];

  plan(method: string, fault: Fault, options: { times?: number; chat?: number } = {}): void {
    this.#planned.push({ method, fault, chat: options.chat, left: options.times ?? 1 });
  }

  clear(): void {
    this.#planned = [];
  }

  next(method: string, params: Readonly<Record<string, unknown>>): Fault | null {
    const found = this.#planned.find(
      (one) =>
        one.left > 0 && one.method === method && (one.chat === undefined || one.chat === params.chat_id),
    );
    if (found === undefined) return null;
    found.left -= 1;
    return found.fault;
  }
}

export function commit(fault: Fault, response: ServerResponse): void {
  switch (fault.kind) {
    case 'error': {
      const { code, description, parameters } = fault;
      const body = { ok: false, error_code: code, description, ...(parameters ? { parameters } : {}) };
      response.writeHead(code, { 'content-type': 'application/json' }).end(JSON.stringify(body));
      return;
    }
    case 'page':
      response
        .writeHead(fault.code, { 'content-type': 'text/html' })
        .end(`<html><body><h1>${fault.code} Bad Gateway</h1></body></html>`);
      return;
    case 'hang':
      return;
    case 'reset':
      response.socket?.resetAndDestroy();
      return;
    case 'half-close':
      response.writeHead(200, { 'content-type': 'application/json', 'content-length': '200' });
      response.write('{"ok":true,"resu');
      response.socket?.end();
      return;
  }
}
