import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

/** The tests that run the program run what is built from the sources as they are. */
export default function build(): void {
  execFileSync('node', [fileURLToPath(new URL('../../src/build.js', import.meta.url)), '--if-stale'], {
    stdio: 'inherit',
  });
}
