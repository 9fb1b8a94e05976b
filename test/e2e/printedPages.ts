// Sheets of paper that a page would print on.
import type { Page } from 'playwright-core';

export const paperFormats = ['A4', 'Letter'] as const;

export async function printedPages(page: Page, format: (typeof paperFormats)[number]): Promise<number> {
  const file = (await page.pdf({ format })).toString('latin1');
  return file.match(/\/Type\s*\/Page\b/g)?.length ?? 0;
}
