// Who may import whom, as data, and what the core may not know. Comments are left out of account; test files too.
import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const src = fileURLToPath(new URL('../src/', import.meta.url));

/** The core's folders, in the order in which things build on each other, and which of those before it each may import. */
const coreMayImport = {
  units: [],
  matter: ['units'],
  reactions: ['units', 'matter'],
  pan: ['units', 'matter', 'reactions'],
  colour: ['units', 'matter', 'reactions', 'pan'],
  log: ['units', 'matter', 'reactions', 'pan', 'colour'],
  twin: ['units', 'matter', 'reactions', 'pan', 'colour', 'log'],
  learn: ['units', 'matter', 'reactions', 'pan', 'colour', 'log', 'twin'],
  advice: ['units', 'matter', 'reactions', 'pan', 'colour', 'log', 'twin', 'learn'],
  planning: ['units', 'matter', 'reactions', 'pan', 'colour', 'log', 'twin', 'learn', 'advice'],
  lot: ['units', 'matter', 'reactions', 'pan', 'colour', 'log', 'twin', 'learn', 'advice', 'planning'],
  beer: ['units', 'matter', 'reactions', 'pan', 'colour', 'log', 'twin', 'learn', 'advice', 'planning', 'lot'],
  book: ['units', 'matter', 'reactions', 'pan', 'colour', 'log', 'twin', 'learn', 'advice', 'planning', 'lot'],
} as const satisfies Record<string, readonly string[]>;
const coreFolders = Object.keys(coreMayImport);

/** What is outside the core. A few files may do more: commands that start the server or open its store. */
const shellMayImport: Readonly<Record<string, readonly string[]>> = {
  api: ['core'],
  server: ['core', 'api'],
  web: ['core', 'api'],
  cli: ['core', 'api'],
  'cli/serve.ts': ['core', 'api', 'server'],
  'cli/trust.ts': ['core', 'api', 'server'],
  'cli/doctor.ts': ['core', 'api', 'server'],
  'cli/dataOption.ts': ['server'],
  'cli/export.ts': ['core', 'api', 'server'],
  'cli/restore.ts': ['core', 'api', 'server'],
  'index.ts': ['core'],
};

/** The packages that the core may use: pure ones. */
const corePackages = ['pure-rand', 'culori', 'd3-array', 'd3-scale', 'd3-shape'];

/** What would make the core depend on when and where it runs. */
const impure = [
  'Date',
  'Math.random',
  'performance',
  'process',
  'window',
  'document',
  'globalThis',
  'fetch',
  'setTimeout',
];

interface SourceFile {
  /** Path within `src`, with `/`. */
  readonly path: string;
  readonly code: string;
  readonly imports: readonly string[];
}

const files = readdirSync(src, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path))
  .map((path) => path.split(sep).join('/'))
  .map((path): SourceFile => {
    const code = withoutComments(readFileSync(join(src, path), 'utf8'));
    return { path, code, imports: importsOf(code) };
  });
const coreFiles = files.filter(({ path }) => path.startsWith('core/'));

describe('the core', () => {
  it('lists its folders in order: each may import only from those before it', () => {
    for (const [index, allowed] of Object.values(coreMayImport).entries()) {
      expect(coreFolders.slice(0, index)).toEqual(expect.arrayContaining([...allowed]));
    }
  });

  it('has no folder that the matrix does not know', () => {
    const unknown = coreFiles.map(coreFolderOf).filter((folder) => !coreFolders.includes(folder));
    expect(unknown).toEqual([]);
  });

  it('imports only from its own folder and those that the matrix allows', () => {
    const breaches = coreFiles.flatMap((file) => {
      const own = coreFolderOf(file);
      const allowed: readonly string[] = [own, ...coreMayImport[own as keyof typeof coreMayImport]];
      return relativeImports(file)
        .filter((target) => !allowed.some((folder) => target.startsWith(`core/${folder}/`)))
        .map((target) => `${file.path} imports ${target}`);
    });
    expect(breaches).toEqual([]);
  });

  it('imports no package but the few pure ones, and nothing of Node', () => {
    const breaches = coreFiles.flatMap(({ path, imports }) =>
      imports
        .filter((name) => !name.startsWith('.') && !corePackages.includes(name.split('/')[0] ?? ''))
        .map((name) => `${path} imports ${name}`),
    );
    expect(breaches).toEqual([]);
  });

  it.each(impure)('does not mention %s', (name) => {
    const mention = new RegExp(`(?<![\\w.$'"-])${name.replace('.', '\\.')}(?![\\w$'"-]|\\s*:)`);
    const breaches = coreFiles.filter(({ code }) => mention.test(withoutStrings(code))).map(({ path }) => path);
    expect(breaches).toEqual([]);
  });
});

describe('server, web and command line', () => {
  it('import the core and the API, and nothing of each other', () => {
    const breaches = files
      .filter(({ path }) => !path.startsWith('core/'))
      .flatMap((file) => {
        const own = file.path.split('/')[0] ?? '';
        const allowed = shellMayImport[file.path] ?? shellMayImport[own];
        if (!allowed) return [`${file.path} is in a folder that the matrix does not know`];
        return relativeImports(file)
          .filter((target) => ![own, ...allowed].some((folder) => target.startsWith(`${folder}/`)))
          .map((target) => `${file.path} imports ${target}`);
      });
    expect(breaches).toEqual([]);
  });
});

describe('the reading of imports', () => {
  it('sees every way to import, and none in a comment', () => {
    const code = withoutComments(
      [
        "import { a } from './a.ts';",
        "import type { B } from '../b.ts';",
        "import './c.css';",
        "export { d } from './d.ts';",
        "const e = await import('./e.ts');",
        "new Worker(new URL('./f.worker.ts', import.meta.url));",
        "// import { g } from './g.ts';",
        "/* import './h.ts'; */",
      ].join('\n'),
    );
    expect(importsOf(code).toSorted()).toEqual(['../b.ts', './a.ts', './c.css', './d.ts', './e.ts', './f.worker.ts']);
  });
});

function importsOf(code: string): string[] {
  const forms = [/\bfrom\s*'([^']+)'/g, /\bimport\s*'([^']+)'/g, /\bimport\(\s*'([^']+)'/g, /new URL\(\s*'(\.[^']+)'/g];
  return forms.flatMap((form) => [...code.matchAll(form)].map((match) => match[1] ?? ''));
}

/** What a file imports within `src`, by path; what lies outside keeps its `../`. */
function relativeImports({ path, imports }: SourceFile): string[] {
  return imports
    .filter((name) => name.startsWith('.'))
    .map((name) =>
      relative(src, join(src, dirname(path), name))
        .split(sep)
        .join('/'),
    );
}

function coreFolderOf({ path }: SourceFile): string {
  return path.split('/')[1] ?? '';
}

function withoutComments(code: string): string {
  return code.replace(/\/\*[\s\S]*?\*\//g, '').replace(/(^|[^:'"`])\/\/.*$/gm, '$1');
}

function withoutStrings(code: string): string {
  return code.replace(/'(?:[^'\\\n]|\\.)*'/g, "''");
}
