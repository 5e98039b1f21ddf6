/** Counters and times in the open text format. No member, no chat, no word of a message stands in them. */
import { Counter, Histogram, Registry } from 'prom-client';

export interface Metrics {
  answered(topic: string, platform: string, seconds: number): void;
  refused(platform: string, why: 'too-fast' | 'seen'): void;
  show(): Promise<{ readonly type: string; readonly text: string }>;
}

export function makeMetrics(): Metrics {
  const registry = new Registry();
  const answers = new Counter({
    name: 'chough_answers_total',
    help: 'Messages answered, by topic and platform',
    labelNames: ['topic', 'platform'] as const,
    registers: [registry],
  });
  const seconds = new Histogram({
    name: 'chough_answer_seconds',
    help: 'From taking a message in to its stored answer',
    labelNames: ['platform'] as const,
    buckets: [0.001, 0.002, 0.005, 0.01, 0.02, 0.05, 0.1, 0.5, 2],
    registers: [registry],
  });
  const refused = new Counter({
    name: 'chough_not_answered_total',
    help: 'Messages over the limit, and updates that came again',
    labelNames: ['platform', 'why'] as const,
    registers: [registry],
  });
  return {
    answered(topic, platform, took) {
      answers.inc({ topic, platform });
      seconds.observe({ platform }, took);
    },
    refused: (platform, why) => refused.inc({ platform, why }),
    show: async () => ({ type: registry.contentType, text: await registry.metrics() }),
  };
}
