// SQLite for Node before 22.16: the better-sqlite3 addon, compiled once a user and kept in the user's cache folder.
// Newer Node brings SQLite itself (docs/decisions/0001-stack.md).
import { copyFileSync, existsSync, mkdirSync, readFileSync, renameSync } from 'node:fs';
import { homedir } from 'node:os';
import { dirname, join } from 'node:path';
import { aptInstall, mayInstall } from './apt.mjs';
import { hasOwnSqlite } from './node-version.mjs';
import { npm, onPath, root, run, say } from './run.mjs';

const PACKAGE = join(root, 'node_modules', 'better-sqlite3');
const ADDON = join(PACKAGE, 'build', 'Release', 'better_sqlite3.node');
const TOOLS = ['g++', 'make', 'python3'];

export async function prepareSqlite() {
  if (hasOwnSqlite(process.versions.node) || (await loads())) return;
  const kept = join(cacheFolder(process.env, process.platform, homedir()), addonKey(about()), 'better_sqlite3.node');
  if (existsSync(kept)) {
    copy(kept, ADDON);
    if (await loads()) return;
  }
  await compile();
  copy(ADDON, kept);
}

async function compile() {
  say('compiling SQLite, once for this user and this Node (about a minute; Node 22.16 and newer need none of it)');
  if (TOOLS.some((tool) => !onPath(tool)) && mayInstall()) await aptInstall(TOOLS).catch((error) => say(error.message));
  try {
    await npm(['rebuild', 'better-sqlite3', '--loglevel=error'], headers());
  } catch (error) {
    throw new Error(
      `${error instanceof Error ? error.message : error}\n\nSQLite could not be compiled. It needs a C++ compiler, make, Python 3 and ` +
        "Node's header files. Or use Node 22.16 or newer, which has SQLite built in.",
    );
  }
  if (!(await loads())) throw new Error('SQLite was compiled, but this Node cannot load it.');
}

/** Headers that were installed with this Node spare a download. */
function headers() {
  const prefix = dirname(dirname(process.execPath));
  const there = existsSync(join(prefix, 'include', 'node', 'node.h'));
  return there && !process.env['npm_config_nodedir'] ? { npm_config_nodedir: prefix } : {};
}

/** Asked of a process of its own, as an addon made for another Node may crash the one that loads it. */
function loads() {
  if (!existsSync(ADDON)) return Promise.resolve(false);
  const probe = "new (require('better-sqlite3'))(':memory:').prepare('select 1').get()";
  return run(process.execPath, ['-e', probe]).then(
    () => true,
    () => false,
  );
}

/**
 * Copies so that the target is never seen half-written.
 * @param {string} from
 * @param {string} to
 */
function copy(from, to) {
  mkdirSync(dirname(to), { recursive: true });
  const beside = `${to}.${process.pid}`;
  copyFileSync(from, beside);
  renameSync(beside, to);
}

function about() {
  const { version } = JSON.parse(readFileSync(join(PACKAGE, 'package.json'), 'utf8'));
  const { header } = /** @type {{ header: { glibcVersionRuntime?: string } }} */ (process.report.getReport());
  const libc = process.platform !== 'linux' ? 'system' : header.glibcVersionRuntime ? 'glibc' : 'musl';
  return { version, abi: process.versions.modules, platform: process.platform, arch: process.arch, libc };
}

/**
 * The folder name that tells one compiled addon from another.
 * @param {{ version: string, abi: string, platform: string, arch: string, libc: string }} about
 */
export function addonKey({ version, abi, platform, arch, libc }) {
  return `better-sqlite3-${version}-abi${abi}-${platform}-${arch}-${libc}`;
}

/**
 * The user's cache folder, by the custom of each system.
 * @param {Record<string, string | undefined>} env
 * @param {string} platform
 * @param {string} home
 */
export function cacheFolder(env, platform, home) {
  if (env['XDG_CACHE_HOME']) return join(env['XDG_CACHE_HOME'], 'umberpan');
  if (platform === 'darwin') return join(home, 'Library', 'Caches', 'umberpan');
  if (platform === 'win32') return join(env['LOCALAPPDATA'] || join(home, 'AppData', 'Local'), 'umberpan', 'Cache');
  return join(home, '.cache', 'umberpan');
}
