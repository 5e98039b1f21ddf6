/** Snowflakes as Discord makes them: milliseconds since 2015 in the upper 42 bits (documentation, Reference, Snowflakes). */
const epoch = 1_420_070_400_000n;
let count = 0n;

export function snowflake(at = Date.now()): string {
  count = (count + 1n) % 4_194_304n;
  return String(((BigInt(at) - epoch) << 22n) | count);
}
