/** What the server can be told to do wrong. */
import type { ServerResponse } from 'node:http';

export type Fault =
  /** Answers with this status (and error code) instead of doing what was asked. */
  | {
      readonly kind: 'error';
      readonly status: number;
      readonly code?: number;
      readonly message?: string;
      readonly delayMs?: number;
    }
  /** Does what was asked, and then answers with this status all the same. */
  | { readonly kind: 'error-after'; readonly status: number }
  | { readonly kind: 'rate-limit'; readonly retryAfter: number; readonly global: boolean }
  /** Never answers. */
  | { readonly kind: 'hang' }
  /** Closes the socket, before or after doing what was asked. */
  | { readonly kind: 'reset'; readonly after: boolean }
  /** Does what was asked, later. */
  | { readonly kind: 'slow'; readonly ms: number };

interface Planned {
  readonly method: string;
  readonly path: RegExp;
  readonly fault: Fault;
  left: number;
}

export class Faults {
  readonly #planned: Planned[] = [];

  /** The next `times` calls of this kind meet the fault. */
  plan(method: string, path: RegExp, fault: Fault, times = 1): void {
    this.#planned.push({ method, path, fault, left: times });
  }

  take(method: string, path: string): Fault | null {
    const found = this.#planned.find((one) => one.left > 0 && one.method === method && one.path.test(path));
    if (found === undefined) return null;
    found.left -= 1;
    return found.fault;
  }

  clear(): void {
    this.#planned.length = 0;
  }
}

/** Cuts the line without an answer, as a proxy that dies does. */
export function cut(response: ServerResponse): void {
  response.socket?.resetAndDestroy();
}
