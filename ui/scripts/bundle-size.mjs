// Prints what the bundle weighs: what is loaded before the round is on the
// screen has a budget; the screens that are opened later are loaded then.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

const budget = 80 * 1024;
const dist = new URL('../dist/', import.meta.url).pathname;

/** The file itself, and all that it imports without being asked to. */
function atStart(path, seen = new Set()) {
  if (seen.has(path)) return seen;
  seen.add(path);
  const text = readFileSync(join(dist, path), 'utf8');
  const names = path.endsWith('.html')
    ? [...text.matchAll(/(?:src|href)="\.\/([^"]+\.(?:js|css))"/g)].map((found) => found[1])
    : [...text.matchAll(/(?:^|[;}])import(?:[^'"();]*from)?\s*["']\.\/([^"']+\.js)["']/g)].map((found) => `assets/${found[1]}`);
  for (const name of names) atStart(name, seen);
  return seen;
}

const first = atStart('index.html');

const sums = { start: 0, all: 0 };
for (const entry of readdirSync(dist, { recursive: true, withFileTypes: true })) {
  if (!entry.isFile()) continue;
  const file = join(entry.parentPath, entry.name);
  const path = file.slice(dist.length);
  const size = gzipSync(readFileSync(file), { level: 9 }).length;
  sums.all += size;
  if (first.has(path)) sums.start += size;
  console.log(`${(size / 1024).toFixed(1).padStart(7)} kB gzip  ${first.has(path) ? 'start' : 'later'}  ${path}`);
}
console.log(`${(sums.start / 1024).toFixed(1).padStart(7)} kB gzip before the round is on the screen, of ${budget / 1024} kB`);
console.log(`${(sums.all / 1024).toFixed(1).padStart(7)} kB gzip in all`);
if (sums.start > budget) {
  console.error('the bundle is over its budget');
  process.exit(1);
}
