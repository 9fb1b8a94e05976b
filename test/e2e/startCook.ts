// Begins a real cook as a person does, and reads what the server keeps of it.
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { LogEvent } from '../../src/core/log/event.ts';
import type { BuiltServer } from './builtServer.ts';

/** Ticks everything that must be so on the page before a cook, and starts; gives the cook's id. */
export async function startCook(page: Page): Promise<string> {
  await page.locator('.checks input').first().waitFor();
  const start = page.getByRole('button', { name: 'Start the cook' });
  // That another cook is under way is known once the server has said so, and wants a tick of its own.
  const unticked = page.locator('.checks input:not(:checked)');
  const allTicked = async () => {
    while ((await unticked.count()) > 0) await unticked.first().click();
    return start.isEnabled();
  };
  await expect.poll(allTicked).toBe(true);
  await start.click();
  await page.locator('.card .done').waitFor();
  return new URL(page.url()).pathname.split('/').at(-1) ?? '';
}

export async function logOf({ address }: BuiltServer, cook: string): Promise<LogEvent[]> {
  const answer = await fetch(`${address}api/cooks/${cook}/events`);
  return ((await answer.json()) as { events: LogEvent[] }).events;
}
