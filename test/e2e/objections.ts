// What axe objects to on a page, by the criteria of WCAG 2.2 AA and best practice: each with the elements that it names.
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';

const tags = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** @param within a part of the page; all of it unless told */
export async function objections(page: Page, within = 'html'): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).include(within).withTags(tags).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`);
}
