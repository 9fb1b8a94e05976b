// The kitchen sheet that the command line writes, printed by a real browser.

import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { umberpan } from '../runProgram.ts';
import { scratchFolder } from '../testServer.ts';
import { noBrowser, pages } from './openPage.ts';
import { paperFormats, printedPages } from './printedPages.ts';

const routes = ['pale', 'bright', 'deep'].flatMap((route) => [`--route ${route}`, `--route ${route} --form syrup`]);

describe.skipIf(noBrowser)('the kitchen sheet', () => {
  const open = pages();

  it.each([...routes, '--route deep --form syrup --alkali lime --dose 4 --step 158C,4min --step 158C,3min'])(
    '%s is one page of either format, nothing on it smaller than 10 pt',
    async (line) => {
      const file = join(scratchFolder(), 'sheet.html');
      const { code, stderr } = await umberpan(`plan ${line} --sheet ${file}`);
      expect([code, stderr]).toEqual([0, '']);
      const { page, complaints } = await open();
      await page.goto(pathToFileURL(file).href);
      for (const format of paperFormats) expect(await printedPages(page, format), format).toBe(1);
      await page.emulateMedia({ media: 'print' });
      const small = await page
        .locator('body :is(p, li, td, th, small, span, caption)')
        .evaluateAll((all) =>
          all.filter((each) => Number.parseFloat(getComputedStyle(each).fontSize) < (10 * 4) / 3 - 0.01).map(String),
        );
      expect(small).toEqual([]);
      expect(complaints).toEqual([]);
    },
  );
});
