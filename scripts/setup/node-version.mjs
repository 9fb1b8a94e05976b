// Which Node runs Umberpan, and what that Node brings with it.

const NEEDED = [20, 19];
const WITH_SQLITE = [22, 16];

/**
 * The sentence to stop with when this Node is too old; undefined when it will do.
 * @param {string} version such as `20.19.4`
 */
export function nodeVersionProblem(version) {
  if (isAtLeast(version, NEEDED)) return undefined;
  return `Umberpan needs Node ${NEEDED.join('.')} or newer, and this is Node ${version}. Install a newer Node (24 is best), then try again.`;
}

/**
 * True when Node's own SQLite has all that the store asks of it, so that no addon need be compiled.
 * @param {string} version
 */
export function hasOwnSqlite(version) {
  return isAtLeast(version, WITH_SQLITE);
}

/**
 * @param {string} version
 * @param {number[]} wanted major and minor
 */
function isAtLeast(version, [wantedMajor, wantedMinor]) {
  const [major, minor] = version.split('.').map(Number);
  return major > wantedMajor || (major === wantedMajor && minor >= wantedMinor);
}
