// An invented club's things: put in by one tap, looked at in every place, taken out in one act.
import { describe, expect, it } from 'vitest';
import { noBrowser, pages } from './openPage.ts';

describe.skipIf(noBrowser)('the demo', () => {
  const open = pages();

  it('is put in, leads to a comparison, a sugar and a beer, and leaves nothing behind', async () => {
    const { page, server, complaints } = await open({ ownServer: true, viewport: { width: 360, height: 780 } });
    await page.locator('.foot').getByRole('link', { name: 'Demo' }).click();
    await page.getByRole('button', { name: 'Put the club’s things in' }).click();
    for (const [link, heading] of [
      [/Two bonfire cooks/, /over one another|Lay/],
      [/Its sugar on the Shelf/, /Bonfire shards/],
      [/The stout/, /Bonfire stout/],
    ] as const) {
      await page.getByRole('link', { name: link }).click();
      await page.getByRole('heading', { level: 1, name: heading }).waitFor();
      await page.goBack();
    }
    await page.getByRole('button', { name: 'Take the club’s things out' }).click();
    await page.getByRole('button', { name: 'Take it all out' }).click();
    await page.getByRole('button', { name: 'Put the club’s things in' }).waitFor();
    const { rows } = (await (await fetch(`${server.address}api/workspace`)).json()) as { rows: unknown[] };
    expect(rows).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
