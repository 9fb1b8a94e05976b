// Real outputs against the published schemas, which know no further fields.
import { describe, expect, test, vi } from 'vitest';
import { umberpanProgram } from '../program.ts';
import { documents } from './documents.ts';

/** What a command prints, on standard output or as its error. */
async function printed(line: string): Promise<unknown> {
  const out = vi.spyOn(process.stdout, 'write').mockReturnValue(true);
  const error = vi.spyOn(console, 'error').mockReturnValue();
  try {
    await umberpanProgram().parseAsync([...line.split(' '), '--json'], { from: 'user' });
    return JSON.parse([...out.mock.calls, ...error.mock.calls].map(([text]) => String(text)).join(''));
  } finally {
    out.mockRestore();
    error.mockRestore();
    process.exitCode = 0;
  }
}

const lines: Readonly<Record<keyof typeof documents, readonly string[]>> = {
  plan: [
    'plan --mass 300g --hardness 17dH',
    'plan --route pale --form syrup --sugar-price 1.2 --bought-price 9',
    'plan --route bright --colour 60EBC',
  ],
  simulate: ['simulate --mass 300g --draws 4'],
  colour: ['colour --ebc 210', 'colour --a430 0.42 --sugar 2g --made-up-to 100mL --fold 5'],
  prime: ['prime --volume 19L --temperature 20C --wish 2.4'],
  'handbook PROPERTY': ['handbook boiling-point --sucrose 90', 'handbook spoonful --batch 420g --temperature 140C'],
  'handbook list': ['handbook list'],
  'handbook parameters': ['handbook parameters --stove gas'],
  'any that fails': ['plan --mass 1parsec', 'plan --mass 90kg', 'plan --dose 9', 'plan --material aluminium'],
};

describe.each(Object.entries(lines))('%s', (name, each) => {
  test.each(each)('`umberpan %s --json` is as its schema says', { timeout: 60_000 }, async (line) => {
    const document = await printed(line);
    const checked = documents[name as keyof typeof documents].safeParse(document);
    expect(checked.error?.issues ?? []).toEqual([]);
    // What passes is what was printed: nothing is let fall.
    expect(checked.data).toEqual(document);
  });
});
