/** A member's file: its size is looked at before it is fetched, and again while it comes. */
import type { Api } from 'grammy';
import type { Document } from 'grammy/types';
import { limited } from './time-limit.ts';

/** What the platform gives a bot at most (reference, getFile). */
const platformMost = 20 * 2 ** 20;
/** What is worked on: a table of test results is far smaller. */
export const mostBytes = 4 * 2 ** 20;

export type Fetched =
  | { readonly kind: 'file'; readonly name: string; readonly base64: string }
  | { readonly kind: 'too-big' }
  | { readonly kind: 'failed'; readonly error: unknown };

export type Fetch = (document: Document) => Promise<Fetched>;

async function read(response: Response): Promise<Buffer | null> {
  const chunks: Uint8Array[] = [];
  let size = 0;
  for await (const chunk of response.body ?? []) {
    size += chunk.length;
    if (size > mostBytes) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks);
}

/** The address of a file holds the token: it is neither kept nor logged. */
export function fetcher(
  api: Api,
  token: string,
  apiRoot: string,
  milliseconds: number,
  stop: AbortSignal,
): Fetch {
  return async (document) => {
    const told = document.file_size ?? 0;
    if (told > Math.min(mostBytes, platformMost)) return { kind: 'too-big' };
    try {
      const { file_path } = await api.getFile(document.file_id);
      if (file_path === undefined) return { kind: 'failed', error: new Error('the platform gave no path') };
      const path = file_path.split('/').map(encodeURIComponent).join('/');
      const bytes = await limited(stop, milliseconds, async (signal) => {
        const response = await fetch(`${apiRoot}/file/bot${token}/${path}`, { signal, redirect: 'error' });
        if (!response.ok) throw new Error(`a file was answered with ${response.status}`);
        return read(response);
      });
      if (bytes === null) return { kind: 'too-big' };
      const name = (document.file_name ?? 'file').slice(-255);
      return { kind: 'file', name, base64: bytes.toString('base64') };
    } catch (error) {
      return { kind: 'failed', error };
    }
  };
}
