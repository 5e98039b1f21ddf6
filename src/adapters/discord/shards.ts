/** Many servers need several connections: the library's own manager starts one process each. Below 2000 servers nobody needs it. */
import { REST, Routes, ShardingManager } from 'discord.js';
import type { Logger } from 'pino';
import { z } from 'zod';
import { told } from './secrets.ts';

export interface ShardOptions {
  readonly token: string;
  readonly shards: 'auto' | number;
  readonly apiRoot?: string | undefined;
  /** The program that serves one shard, and how it is called. */
  readonly file: string;
  readonly args: readonly string[];
  readonly execArgv?: readonly string[] | undefined;
  readonly log: Logger;
  /** Milliseconds between two starts: the platform wants 5 seconds between identifies. */
  readonly delayMs?: number | undefined;
}

const gatewaySchema = z.looseObject({ shards: z.int().min(1) });

/** Asked here and not by the manager, which knows no other address of the interface. */
async function recommended({ token, apiRoot }: ShardOptions): Promise<number> {
  const rest = new REST({ version: '10', ...(apiRoot === undefined ? {} : { api: apiRoot }) });
  const answer = await rest.setToken(token).get(Routes.gatewayBot());
  return gatewaySchema.parse(answer).shards;
}

export async function manageShards(
  options: ShardOptions,
): Promise<{ readonly count: number; stop(): Promise<void> }> {
  const { token, shards, file, args, execArgv, log, delayMs = 5500 } = options;
  const count = shards === 'auto' ? await recommended(options) : shards;
  const manager = new ShardingManager(file, {
    token,
    totalShards: count,
    mode: 'process',
    respawn: true,
    shardArgs: [...args],
    execArgv: [...(execArgv ?? [])],
  });
  manager.on('shardCreate', (shard) => {
    log.info({ shard: shard.id }, 'a shard starts');
    shard.on('death', () => log.warn({ shard: shard.id }, 'a shard ended'));
    shard.on('error', (error) =>
      log.error({ shard: shard.id, fault: told(error) }, 'a shard reports an error'),
    );
  });
  await manager.spawn({ delay: delayMs });
  return {
    count,
    async stop() {
      manager.respawn = false;
      const ended = [...manager.shards.values()].map(
        (shard) => new Promise<void>((resolve) => shard.once('death', () => resolve())),
      );
      for (const shard of manager.shards.values()) {
        const child = shard.process;
        // The shard finishes what it is at.
        if (child !== null && 'pid' in child) child.kill('SIGTERM');
      }
      await Promise.all(ended);
    },
  };
}
