// Guards the first page's weight: what index.html names, and what those scripts import at once, gzipped.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

const LIMIT_KB = 200;
const dist = new URL('../dist/web/', import.meta.url);

const html = readFileSync(new URL('index.html', dist), 'utf8');
const named = [...html.matchAll(/(?:src|href)="\/?([^"]+\.(?:js|css))"/g)].map((match) => match[1]);

/** @type {Set<string>} */
const loaded = new Set();
for (const file of named) follow(file);

let total = gzipSync(html).length;
for (const file of loaded) {
  const size = gzipSync(readFileSync(new URL(file, dist))).length;
  console.log(`${(size / 1000).toFixed(1).padStart(7)} kB  ${file}`);
  total += size;
}
const verdict = `${(total / 1000).toFixed(1)} kB gzipped for the first page; ${LIMIT_KB} kB is the limit`;
console.log(verdict);
if (loaded.size === 0) fail(`no script found in ${fileURLToPath(new URL('index.html', dist))}`);
if (total > LIMIT_KB * 1000) fail(`too large: ${verdict}`);

/** @param {string} file a script's static imports are loaded with it; dynamic ones are not */
function follow(file) {
  if (loaded.has(file)) return;
  loaded.add(file);
  if (!file.endsWith('.js')) return;
  const source = readFileSync(new URL(file, dist), 'utf8');
  for (const [, relative] of source.matchAll(/\b(?:import|from)\s*"(\.{1,2}\/[^"]+)"/g)) {
    follow(new URL(relative, `file:///${file}`).pathname.slice(1));
  }
}

/** @param {string} sentence */
function fail(sentence) {
  console.error(sentence);
  process.exit(1);
}
