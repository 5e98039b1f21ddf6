/** Where an answer goes is kept with it as text, so that it can be sent after a restart; each platform has its own shape. */
import type { z } from 'zod';

export interface AddressBook<T> {
  write(address: T): string;
  /** Null where the text is none of this shape: an older program wrote it. */
  read(text: string): T | null;
}

export const addressBook = <T>(shape: z.ZodType<T>): AddressBook<T> => ({
  write: (address) => JSON.stringify(address),
  read(text) {
    try {
      return shape.parse(JSON.parse(text));
    } catch {
      return null;
    }
  },
});
