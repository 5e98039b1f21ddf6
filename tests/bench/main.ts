/** `npm run bench [name …]`: prints figures of this machine. Nothing here is asserted: a slow machine is no fault. */
import { cpus, totalmem } from 'node:os';

const benches: Readonly<Record<string, () => Promise<{ run(): Promise<void> }>>> = {
  answers: () => import('./answers.ts'),
  start: () => import('./start.ts'),
  rules: () => import('./rules.ts'),
  understanding: () => import('./understanding.ts'),
  sizing: () => import('./sizing.ts'),
  pictures: () => import('./pictures.ts'),
  simulation: () => import('./simulation.ts'),
  discord: () => import('./discord.ts'),
  telegram: () => import('./telegram.ts'),
  recordings: () => import('./recordings.ts'),
};

const wanted = process.argv.slice(2);
const [cpu] = cpus();
console.log(
  `${cpus().length} × ${cpu?.model.trim()}, ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.version}`,
);
for (const [name, load] of Object.entries(benches)) {
  if (wanted.length > 0 && !wanted.includes(name)) continue;
  console.log(`\n${name}`);
  await (await load()).run();
}
