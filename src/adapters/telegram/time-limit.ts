/** Ends a call that has no answer. Waits between tries are not calls; a long poll ends by its own clock. */
import type { Api, Transformer } from 'grammy';

export type CallSignal = NonNullable<Parameters<Api['getMe']>[0]>;

/** grammY is typed against an older package's signal; the platform's own does all that it uses. */
export const callSignal = (signal: AbortSignal): CallSignal => signal as unknown as CallSignal;

export function timeLimit(milliseconds: number): Transformer {
  return async (call, method, payload, signal) => {
    if (method === 'getUpdates') return call(method, payload, signal);
    const controller = new AbortController();
    const end = (): void => controller.abort();
    const timer = setTimeout(end, milliseconds);
    signal?.addEventListener('abort', end);
    if (signal?.aborted === true) end();
    try {
      return await call(method, payload, callSignal(controller.signal));
    } finally {
      clearTimeout(timer);
      signal?.removeEventListener('abort', end);
    }
  };
}
