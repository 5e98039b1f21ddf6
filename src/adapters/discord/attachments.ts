/** A file that a member sent: only from the platform's own hosts, only up to a size, only for so long. */
import type { Attachment } from 'discord.js';
import { clip } from './markdown.ts';

/** Measurements of a pull test, a map of anchors: small files. The platform itself takes ten times as much. */
export const mostBytes = 8 * 1024 * 1024;
export const fetchMs = 15_000;

const ownHosts = ['cdn.discordapp.com', 'media.discordapp.net'];

export type Fetched =
  | { readonly file: { readonly name: string; readonly base64: string } }
  | { readonly refused: 'discord-file-too-big' | 'discord-file-failed' };

export interface FetchLimits {
  readonly bytes: number;
  readonly ms: number;
}

function allowed(link: string, apiRoot: string | undefined): boolean {
  const url = URL.parse(link);
  if (url === null) return false;
  if (apiRoot !== undefined && url.host === URL.parse(apiRoot)?.host) return true;
  return url.protocol === 'https:' && ownHosts.includes(url.hostname) && url.port === '';
}

export async function fetchFile(
  { url, name, size }: Pick<Attachment, 'url' | 'name' | 'size'>,
  apiRoot: string | undefined,
  { bytes: most, ms }: FetchLimits = { bytes: mostBytes, ms: fetchMs },
): Promise<Fetched> {
  // Refused before a byte is asked for; what is told may be wrong, so that bytes are counted as well.
  if (size > most) return { refused: 'discord-file-too-big' };
  if (!allowed(url, apiRoot)) return { refused: 'discord-file-failed' };
  try {
    const response = await fetch(url, { signal: AbortSignal.timeout(ms), redirect: 'error' });
    if (!response.ok || response.body === null) return { refused: 'discord-file-failed' };
    const chunks: Uint8Array[] = [];
    let total = 0;
    for await (const chunk of response.body) {
      total += chunk.length;
      if (total > most) return { refused: 'discord-file-too-big' };
      chunks.push(chunk);
    }
    return { file: { name: clip(name, 255), base64: Buffer.concat(chunks).toString('base64') } };
  } catch {
    return { refused: 'discord-file-failed' };
  }
}
