/** In a process that the manager of shards started. The manager itself sets the first of the two for its children. */
export const isShard = (environment: NodeJS.ProcessEnv): boolean =>
  environment.SHARDING_MANAGER !== undefined && environment.SHARDS !== undefined;
