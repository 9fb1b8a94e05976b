/** The package that this server is part of: the same from the sources and from the build. */
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

const require = createRequire(import.meta.url);

export const { version } = require('#package.json') as { version: string };

/** The built pages. */
export const webFolder = join(dirname(require.resolve('#package.json')), 'dist', 'web');
