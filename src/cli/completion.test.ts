// The shells themselves finish the words: bash always, the others where they are installed.
import { spawnSync } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { beforeAll, describe, expect, test, vi } from 'vitest';
import { exitCodeFor, umberpanProgram } from './program.ts';

const folder = mkdtempSync(join(tmpdir(), 'umberpan-'));
const run = (shell: string, ...args: string[]) => spawnSync(shell, args, { encoding: 'utf8' });
const has = (shell: string) => run(shell, '-c', 'true').status === 0;
const complete = (...words: string[]) => umberpanProgram().parseAsync(['completion', ...words], { from: 'user' });

async function scriptOf(shell: string): Promise<string> {
  const printed = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
  await complete(shell);
  const file = join(folder, shell);
  writeFileSync(file, String(printed.mock.calls[0]?.[0]));
  printed.mockRestore();
  return file;
}

describe.skipIf(!has('bash'))('bash', () => {
  let file = '';
  beforeAll(async () => {
    file = await scriptOf('bash');
  });

  /** What bash offers for the last word of a line, parted as bash parts it. */
  function offered(...words: string[]): string[] {
    const line = `source '${file}'; COMP_WORDS=(${words.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${words.length - 1}
      _umberpan; printf '%s\\n' "\${COMPREPLY[@]}"`;
    const { stdout, stderr } = run('bash', '--norc', '-c', line);
    expect(stderr).toBe('');
    return stdout.split('\n').filter(Boolean);
  }

  test('finishes a command, and the commands of a command', () => {
    expect(offered('umberpan', 'reh')).toEqual(['rehearse']);
    expect(offered('umberpan', 'handbook', 'boil')).toEqual(['boiling-point']);
    expect(offered('umberpan', 'completion', '')).toEqual(expect.arrayContaining(['bash', 'zsh', 'fish']));
  });

  test('finishes options of the command alone that is typed', () => {
    expect(offered('umberpan', 'plan', '--hard')).toEqual(['--hardness']);
    expect(offered('umberpan', 'plan', '--mass', '400g', '--rou')).toEqual(['--route']);
    expect(offered('umberpan', 'compare', '--hard')).toEqual([]);
    expect(offered('umberpan', 'handbook', 'boiling-point', '--j')).toEqual(['--json']);
  });

  test('finishes the words that an option takes, with or without a sign', () => {
    expect(offered('umberpan', 'plan', '--route', '')).toEqual(['pale', 'bright', 'deep']);
    expect(offered('umberpan', 'plan', '--route', '=')).toEqual(['pale', 'bright', 'deep']);
    expect(offered('umberpan', 'plan', '--route', '=', 'de')).toEqual(['deep']);
  });

  test('offers no words where a file or an amount is asked for', () => {
    expect(offered('umberpan', 'plan', '--kit', '')).toEqual([]);
    expect(offered('umberpan', 'plan', '--mass', '')).toEqual([]);
  });
});

// Neither needs be there, but what is there must take the script.
test.skipIf(!has('zsh'))('zsh takes its script', async () => {
  const said = run('zsh', '-f', '-n', await scriptOf('zsh'));
  expect([said.status, said.stderr]).toEqual([0, '']);
});

test.skipIf(!has('fish'))('fish finishes a command and the words of an option', async () => {
  const file = await scriptOf('fish');
  const offered = (line: string) =>
    run('fish', '--no-config', '-c', `source '${file}'; complete -C '${line}'`)
      .stdout.split('\n')
      .map((each) => each.split('\t')[0]);
  expect(offered('umberpan reh')).toContain('rehearse');
  expect(offered('umberpan plan --route ')).toEqual(expect.arrayContaining(['pale', 'bright', 'deep']));
});

test('another shell is misuse', async () => {
  const silent = vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  const refused = await complete('powershell').catch((error: unknown) => error);
  silent.mockRestore();
  expect(String(refused)).toContain('bash, zsh, fish');
  expect(exitCodeFor(refused)).toBe(2);
});
