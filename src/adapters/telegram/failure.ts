/** What an error of a call means for what was to be sent. */
import { GrammyError, HttpError } from 'grammy';

export type Failure =
  /** The chat is closed to us: blocked, removed, deleted, silenced. */
  | { readonly kind: 'gone' }
  /** The group has another id now. */
  | { readonly kind: 'moved'; readonly to: number }
  /** To wait exactly so long. */
  | { readonly kind: 'wait'; readonly milliseconds: number }
  /** It did not arrive: safe to send again. */
  | { readonly kind: 'unsent' }
  /** It may have arrived: sent again only with a mark that says so. */
  | { readonly kind: 'unsure' }
  /** The platform will never take it. */
  | { readonly kind: 'refused' };

const silenced = /not enough rights|have no rights to send|CHAT_WRITE_FORBIDDEN|chat not found/i;
const neverLeft = new Set(['ECONNREFUSED', 'ENOTFOUND', 'EAI_AGAIN', 'EHOSTUNREACH', 'ENETUNREACH']);

export function failureOf(error: unknown): Failure {
  if (error instanceof GrammyError) {
    const { error_code: code, parameters, description } = error;
    if (parameters.migrate_to_chat_id !== undefined)
      return { kind: 'moved', to: parameters.migrate_to_chat_id };
    if (code === 429) return { kind: 'wait', milliseconds: (parameters.retry_after ?? 5) * 1000 };
    if (code === 403 || (code === 400 && silenced.test(description))) return { kind: 'gone' };
    if (code >= 500) return { kind: 'unsure' };
    if (code === 401) return { kind: 'unsent' };
    return { kind: 'refused' };
  }
  if (error instanceof HttpError) {
    const { error: cause } = error;
    const code = typeof cause === 'object' && cause !== null && 'code' in cause ? String(cause.code) : '';
    return { kind: neverLeft.has(code) ? 'unsent' : 'unsure' };
  }
  return { kind: 'unsure' };
}

/** Two taps on a button, or one that was answered too late: nothing is wrong, and nothing else is passed over. */
export const isNoise = (error: unknown): boolean =>
  error instanceof GrammyError &&
  error.error_code === 400 &&
  /message is not modified|query is too old/.test(error.description);
