import { openSqlite } from './sqlite.ts';
import type { Store } from './store.ts';

/** The store that the settings name. */
export const openStore = ({ db }: { readonly db: string }): Promise<Store> => openSqlite(db);
