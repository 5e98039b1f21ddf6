/** Where the bytes of a recording come from: read in pieces, at any place, never as a whole. */
import { open } from 'node:fs/promises';
import { setImmediate as pause } from 'node:timers/promises';
import { RecordingError } from './problem.ts';

export interface Source {
  readonly size: number;
  /** Fills `into` from the place `at` as far as there are bytes; gives how many. */
  read(into: Uint8Array, at: number): Promise<number>;
  close(): Promise<void>;
}

/** A pull of a minute at 10 kHz has 20 MB; nobody needs a hundred times as much. */
const mostBytes = 2 ** 31;

export function bytesSource(bytes: Uint8Array): Source {
  return {
    size: bytes.length,
    read: async (into, at) => {
      // Other chats are answered in between.
      await pause();
      const part = bytes.subarray(at, at + into.length);
      into.set(part);
      return part.length;
    },
    close: async () => undefined,
  };
}

export async function fileSource(path: string): Promise<Source> {
  try {
    const handle = await open(path, 'r');
    const { size, isFile } = await handle.stat().then((stat) => ({ size: stat.size, isFile: stat.isFile() }));
    if (!isFile || size > mostBytes) {
      await handle.close();
      throw new RecordingError(isFile ? 'too-large' : 'unreadable');
    }
    return {
      size,
      read: async (into, at) => {
        let filled = 0;
        while (filled < into.length) {
          const { bytesRead } = await handle.read(into, filled, into.length - filled, at + filled);
          if (bytesRead === 0) break;
          filled += bytesRead;
        }
        return filled;
      },
      close: () => handle.close(),
    };
  } catch (error) {
    if (error instanceof RecordingError) throw error;
    throw new RecordingError('unreadable');
  }
}
