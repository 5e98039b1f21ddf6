/** A place on the map: how far the sea is, told as an assumption that the member may put right. */
import type { Message } from '../contracts/message.ts';
import type { Phrase } from '../contracts/phrase.ts';
import type { Entry } from '../contracts/session.ts';
import type { Places } from '../places/seas.ts';
import { bandOf, type RuleSet } from '../rules/index.ts';

export type PlaceTold =
  | {
      readonly kind: 'told';
      readonly entries: readonly Omit<Entry, 'turn'>[];
      readonly lines: readonly Phrase[];
    }
  | { readonly kind: 'no'; readonly say: string };

/** Farther than this the sea no longer matters, and nobody counts. */
const farthest = 100_000;

/** Two digits, as the data deserve. */
const rounded = (metres: number): number => Number(metres.toPrecision(2));

const isWithin = (lat: number, lon: number): boolean => Math.abs(lat) <= 90 && Math.abs(lon) <= 180;
/** A receiver without a fix says 0, 0. */
const isNull = (lat: number, lon: number): boolean => Math.abs(lat) < 0.01 && Math.abs(lon) < 0.01;

export async function readPlace(
  rules: RuleSet,
  places: Places,
  { lat, lon }: NonNullable<Message['place']>,
): Promise<PlaceTold> {
  if (!isWithin(lat, lon)) return { kind: 'no', say: 'place-impossible' };
  if (isNull(lat, lon)) return { kind: 'no', say: 'place-null' };
  const { metres, uncertainty, coast, openSea } = await places.read({ lat, lon });
  if (openSea) return { kind: 'no', say: 'place-at-sea' };
  const fact = (id: string, value: string | number) => ({ fact: id, value, from: 'map' as const });
  if (metres >= farthest)
    return {
      kind: 'told',
      entries: [fact('sea_distance_m', farthest)],
      lines: [{ say: 'place-far', with: { distance: { value: farthest / 1000, unit: 'km' } } }],
    };
  const near = Math.max(0, metres - uncertainty);
  const band = rules.facts.get('sea_band');
  const step = (value: number) => (band?.kind === 'band' ? bandOf(band, value) : '');
  const onLimit = step(near) !== step(metres + uncertainty);
  const used = rounded(onLimit ? near : metres);
  const told = coast === null ? [] : [fact('coast', coast)];
  return {
    kind: 'told',
    entries: [fact('sea_distance_m', used), ...told],
    lines: [
      {
        say: onLimit ? 'place-near-limit' : 'place-sea',
        with: {
          distance: { value: rounded(metres), unit: 'm' },
          uncertainty: { value: rounded(uncertainty), unit: 'm' },
          used: { value: used, unit: 'm' },
        },
      },
    ],
  };
}
