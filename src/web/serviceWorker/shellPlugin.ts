/** Builds the service worker beside the app, and writes into it which files the app is made of and what they come to. */
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

const source = fileURLToPath(new URL('serviceWorker.ts', import.meta.url));
const built = 'service-worker.js';

export function shellPlugin(): Plugin {
  let folder = '';
  return {
    name: 'umberpan:shell',
    apply: 'build',
    configResolved({ root, build }) {
      folder = resolve(root, build.outDir);
    },
    buildStart() {
      this.emitFile({ type: 'chunk', id: source, fileName: built });
    },
    // From the folder: what lies in `public` is there by now, and not part of the bundle.
    writeBundle() {
      const worker = join(folder, built);
      const list = JSON.stringify(shellOf(folder));
      const code = readFileSync(worker, 'utf8');
      if (!/\bSHELL\b/.test(code)) throw new Error(`${built} has no place for the list of files`);
      writeFileSync(worker, `const SHELL=${list};\n${code}`);
    },
  };
}

/** The files of a build, and a version that differs whenever one of them does. */
export function shellOf(folder: string): { readonly version: string; readonly files: readonly string[] } {
  const files = readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.endsWith('.map') && !entry.name.startsWith(built))
    .map(({ parentPath, name }) => join(parentPath, name).slice(folder.length).split(sep).join('/'))
    .sort();
  const hash = createHash('sha256');
  for (const file of files) hash.update(`${file}\n`).update(readFileSync(join(folder, file)));
  return { version: hash.digest('hex').slice(0, 16), files };
}
