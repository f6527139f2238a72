// Prints what the bundle weighs, and fails above its budget.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

const budget = 80 * 1024;
const dist = new URL('../dist/', import.meta.url).pathname;
let total = 0;
for (const entry of readdirSync(dist, { recursive: true, withFileTypes: true })) {
  if (!entry.isFile()) continue;
  const path = join(entry.parentPath, entry.name);
  const size = gzipSync(readFileSync(path), { level: 9 }).length;
  total += size;
  console.log(`${(size / 1024).toFixed(1).padStart(7)} kB gzip  ${path.slice(dist.length)}`);
}
console.log(`${(total / 1024).toFixed(1).padStart(7)} kB gzip in all, of ${budget / 1024} kB`);
if (total > budget) {
  console.error('the bundle is over its budget');
  process.exit(1);
}
