import { createHash } from 'node:crypto';
import type { Advice, AdviceParts } from '../contracts/advice.ts';

/**
 * The only place that makes an Advice. It checks again at run time what the types already demand, because an
 * answer without cautions, deferral or sources must not exist even if a rule file or a cast went wrong.
 *
 * The id is a short digest of topic, facts and rule set: the same question gets the same id everywhere, and
 * `replay` can tell whether a later rule set answers differently.
 */
export function sealAdvice(parts: AdviceParts): Advice {
  if (parts.cautions.length === 0) throw new Error(`advice on ${parts.topic} has no cautions`);
  if (parts.sources.length === 0) throw new Error(`advice on ${parts.topic} has no sources`);
  for (const check of parts.checks)
    if (!Number.isFinite(check.value) || !Number.isFinite(check.limit))
      throw new Error(`check ${check.id} of ${parts.topic} is not a number`);
  const facts = Object.entries(parts.facts).toSorted(([a], [b]) => (a < b ? -1 : 1));
  const digest = createHash('sha256')
    .update(JSON.stringify([parts.topic, facts, parts.ruleset]))
    .digest();
  const id = BigInt(`0x${digest.subarray(0, 6).toString('hex')}`)
    .toString(36)
    .padStart(9, '0')
    .slice(0, 8);
  return Object.freeze({ ...parts, id, deferral: true as const }) as unknown as Advice;
}
