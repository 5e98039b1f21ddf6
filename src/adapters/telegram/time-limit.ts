/** Ends a call that has no answer. Waits between tries are not calls; a long poll ends by its own clock. */
import type { Api, Transformer } from 'grammy';

export type CallSignal = NonNullable<Parameters<Api['getMe']>[0]>;

/** grammY is typed against an older package's signal; the platform's own does all that it uses. */
export const callSignal = (signal: AbortSignal): CallSignal => signal as unknown as CallSignal;

/** What both kinds of signals have. */
interface Ending {
  readonly aborted: boolean;
  addEventListener(type: 'abort', listener: () => void): void;
  removeEventListener(type: 'abort', listener: () => void): void;
}

/**
 * Runs a task that ends with a signal, or when its time is over. By hand: the built-in way to join signals does not
 * hear those of the older package, which the runner uses.
 */
export async function limited<T>(
  until: Ending | undefined,
  milliseconds: number,
  task: (signal: AbortSignal) => Promise<T>,
): Promise<T> {
  const controller = new AbortController();
  const end = (): void => controller.abort();
  const timer = setTimeout(end, milliseconds);
  until?.addEventListener('abort', end);
  if (until?.aborted === true) end();
  try {
    return await task(controller.signal);
  } finally {
    clearTimeout(timer);
    until?.removeEventListener('abort', end);
  }
}

export function timeLimit(milliseconds: number): Transformer {
  return (call, method, payload, signal) =>
    method === 'getUpdates'
      ? call(method, payload, signal)
      : limited(signal, milliseconds, (ending) => call(method, payload, callSignal(ending)));
}
