// From a lot to a glass of beer, kept, tasted, and in a calendar, in a real browser.
import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { GlassRecord } from '../../src/api/glass.ts';
import type { NewLot } from '../../src/api/lot.ts';
import { givenBy } from '../../src/core/beer/given.ts';
import { usualPathCm, usualRest } from '../../src/core/beer/glass.ts';
import { primingFor, usualPriming } from '../../src/core/beer/priming.ts';
import { reach } from '../../src/core/beer/reach.ts';
import { sugarOfLot } from '../../src/core/beer/sugarOfLot.ts';
import { a430FromEbc, ebcFromA430, srmFromA430 } from '../../src/core/colour/scales.ts';
import { defaultRequest } from '../../src/core/planning/request.ts';
import { objections } from './objections.ts';
import { askBeside, field, noBrowser, pages, says, seen } from './openPage.ts';

const around = (mid: number) => ({ low: 0.9 * mid, mid, high: 1.1 * mid });

function lotOf(name: string, a430: number, planId: string | null = null): NewLot {
  return {
    name,
    cookId: null,
    planId,
    madeAt: '2027-11-14T16:20:00.000Z',
    form: 'hard',
    weighedKg: 0.371,
    expected: {
      massKg: around(0.39),
      waterShare: around(0.02),
      inverted: { low: 0.8, mid: 0.9, high: 0.95 },
      a430: around(a430),
      ebc: around(25 * a430),
      srm: around(12.7 * a430),
      icumsa: around(3e4),
    },
  };
}

async function post(page: Page, address: string, body: object, id: string = randomUUID()): Promise<string> {
  const answer = await askBeside(page, address, { method: 'POST', body, headers: { 'idempotency-key': id } });
  expect(answer.status).toBe(201);
  return id;
}

const rest = { volumeL: 20, gravity: 1.06, a430PerCm: a430FromEbc(12), ...usualRest };
const alkali = { substance: 'sodiumHydroxide', gramsPerKgSucrose: defaultRequest.alkaliGPerKg } as const;
const row = (page: Page, label: string) =>
  page.locator('.glass > .wide-table tr', { has: page.getByRole('rowheader', { name: label, exact: true }) });
/** The number with the sugars in it, and its range. */
async function withIts(page: Page, label: string): Promise<string[]> {
  const [text = ''] = await row(page, label).locator('td').last().allInnerTexts();
  return text.split(/\n+/);
}

/** Puts the lot alone in the glass, 300 g of it, late. */
async function putIn(page: Page, lot: string) {
  await page.locator('.drawn').waitFor();
  await field(page, 'From').selectOption(lot);
  await field(page, 'How much').fill('300 g');
  await field(page, 'When').selectOption('late');
  await says(page, '.dose legend', /Plum shards/);
}

describe.skipIf(noBrowser)('the Glass', () => {
  const open = pages();

  it("shows the core's numbers of a lot, with what its plan says of the alkali", async () => {
    const { page, complaints } = await open({ at: 'glass', ownServer: true });
    const planId = await post(page, '/api/plans', { kitId: null, request: defaultRequest });
    const lot = lotOf('Plum shards', 8, planId);
    const id = await post(page, '/api/lots', lot);
    await page.reload();
    await putIn(page, id);
    expect(await withIts(page, 'Final gravity')).toHaveLength(2);
    await page.getByText('Alkali, fermentability, price').click();
    await page.locator('input[value="5 g/kg"]').waitFor();
    await field(page, 'Price of a kg').fill('3');

    const glass = {
      rest,
      doses: [{ sugar: sugarOfLot(lot, { alkali, pricePerKg: 3 }), massKg: 0.3, added: 'late' as const }],
      kettleLossL: 0,
      pathCm: usualPathCm,
    };
    const { beer, drawn, cost, empirical } = givenBy(glass);
    await row(page, 'Sodium added, mg/L')
      .filter({ hasText: beer.sodiumMgPerL.mid.toFixed(0) })
      .waitFor();
    expect(beer.sodiumMgPerL.mid).toBeGreaterThan(10);
    await says(page, '.look', /a litre/);
    const shown = ({ low, mid, high }: typeof beer.abv, digits: number, factor = 1) => {
      const [l, m, h] = [low, mid, high].map((value) => (value * factor).toFixed(digits));
      return l === m && m === h ? [m] : [m, `${l} to ${h}`];
    };
    expect(await withIts(page, 'Original gravity')).toEqual(shown(beer.originalGravity, 4));
    expect(await withIts(page, 'Original extract, °P')).toEqual(shown(beer.originalPlato, 2));
    expect(await withIts(page, 'Final gravity')).toEqual(shown(beer.finalGravity, 4));
    expect(await withIts(page, 'Alcohol, % by volume')).toEqual(shown(beer.abv, 2));
    expect(await withIts(page, 'Apparent attenuation, %')).toEqual(shown(beer.apparentAttenuation, 1, 100));
    expect(await withIts(page, 'Colour, EBC')).toEqual(shown(beer.a430PerCm, 1, ebcFromA430(1)));
    expect(await withIts(page, 'Sodium added, mg/L')).toEqual(shown(beer.sodiumMgPerL, 0));
    expect(await withIts(page, 'Energy, kJ/100 mL')).toEqual(shown(beer.kcalPer100mL, 0, 4.184));
    const { r, g, b } = drawn.withSugars.mid;
    expect(await page.locator('.tumblers svg').last().locator('path').first().getAttribute('fill')).toBe(
      `rgb(${r} ${g} ${b})`,
    );
    const look = await seen(page, '.look');
    expect(look).toContain(`empirical formula ${(empirical.srm.mid / 0.508).toFixed(1)} EBC`);
    expect(look).toContain(`${cost?.sugars.mid.toFixed(2)}, ${cost?.perLitre.mid.toFixed(3)} a litre`);

    await page.getByLabel('Colour in').selectOption('SRM');
    await page.getByLabel('Gravity in').selectOption('P');
    await page.getByLabel('Volumes in').selectOption('gal');
    expect(await withIts(page, 'Colour, SRM')).toEqual(shown(beer.a430PerCm, 1, srmFromA430(1)));
    expect(await field(page, 'Its gravity').inputValue()).toBe('14.741 °P');
    expect(await field(page, 'Wort').inputValue()).toBe('5.2834 gal');
    expect(await field(page, 'How much').inputValue()).toBe('10.582 oz');
    expect(await withIts(page, 'Original gravity')).toEqual(shown(beer.originalGravity, 4));
    expect(complaints).toEqual([]);
  });

  it('says what is wrong with a text, and keeps the last beer', async () => {
    const { page } = await open({ at: 'glass' });
    await page.locator('.drawn').waitFor();
    const before = await withIts(page, 'Original gravity');
    await field(page, 'Its gravity').fill('1.3');
    await page.getByText('Its gravity: “1.3” is too much. Allowed: 1 to 1.14.').waitFor();
    expect(await withIts(page, 'Original gravity')).toEqual(before);
    await page.getByText("A field can't be read").waitFor();
    expect(await page.getByRole('button', { name: 'Keep this glass' }).isDisabled()).toBe(true);
  });

  it('reckons the other way: how much of which lot; and an aim for the Desk when none does it', async () => {
    const { page, complaints } = await open({ at: 'glass', ownServer: true });
    const lot = lotOf('Plum shards', 8);
    await putInAfter(page, lot);
    const candidates = [{ sugar: sugarOfLot(lot), added: 'kettle' as const }];
    const bare = { rest, doses: [], kettleLossL: 0, pathCm: usualPathCm };

    await field(page, 'Beer colour').fill('35');
    await page.getByRole('button', { name: 'Find' }).click();
    const found = reach(bare, candidates, { ebc: 35 });
    if (found.kind !== 'ways') throw new Error('the core finds no way');
    const [use] = found.ways[0]?.uses ?? [];
    await says(page, '.way', new RegExp(`${((use?.massKg ?? 0) * 1000).toFixed(0)} g of Plum shards`));
    await page.getByRole('button', { name: 'Put in Plum shards' }).click();
    await says(page, '.tumbler-words', /35\.0 EBC/);

    await field(page, 'Beer colour').fill('200');
    await field(page, 'Sugar share').fill('5');
    await page.getByRole('button', { name: 'Find' }).click();
    const none = reach(bare, candidates, { ebc: 200, extractShare: 0.05 });
    if (none.kind !== 'aim') throw new Error('the core has no aim');
    const link = page.getByRole('link', { name: 'Plan it at the Desk' });
    const { massKg, ebcRange } = none.aim;
    const [low, mid, high] = [ebcRange?.low, ebcRange?.mid, ebcRange?.high].map((ebc) => Number(ebc?.toPrecision(3)));
    expect(await link.getAttribute('href')).toBe(
      `/?colour=${mid}&from=${low}&to=${high}&mass=${(1000 * massKg).toFixed(0)}`,
    );
    await says(page, '.answer', new RegExp(`${mid} EBC \\(10 % w/w\\) \\(8 in 10: ${low} to ${high}\\)`));
    expect(complaints).toEqual([]);
  });

  it('swaps a sugar at equal extract, and makes another size of the same beer', async () => {
    const { page } = await open({ at: 'glass', ownServer: true });
    await putInAfter(page, lotOf('Plum shards', 8));
    const before = await withIts(page, 'Original gravity');
    await field(page, 'This one').selectOption('White table sugar');
    await field(page, 'At equal').selectOption('extract');
    await page.getByRole('button', { name: 'Put it in instead' }).click();
    await says(page, '.dose legend', /White table sugar/);
    await says(page, '.tumbler-words', /11\.8 EBC|11\.9 EBC/);
    expect((await withIts(page, 'Original gravity'))[0]).toBe(before[0]);
    await field(page, 'Beer wanted').fill('40 L');
    await page.getByRole('button', { name: 'Make it this size' }).click();
    await says(page, '.glass > .wide-table', /40\.00 L/);
    expect((await withIts(page, 'Original gravity'))[0]).toBe(before[0]);
  });

  it('primes, warns of the pressure, and refuses what bursts bottles in words', async () => {
    const { page } = await open({ at: 'glass', ownServer: true });
    const lot = lotOf('Plum shards', 8);
    await putInAfter(page, lot);
    await field(page, 'Beer to prime').fill('20 L');
    await field(page, 'With').selectOption('Plum shards');
    const request = { ...usualPriming, volumeL: 20, beerC: 20, wishGPerL: 2.5 * 1.977 };
    const primed = primingFor(request, sugarOfLot(lot));
    if (primed.kind !== 'primed') throw new Error('the core does not prime');
    await says(page, '.priming .glass-numbers', new RegExp(`${(1000 * primed.numbers.massKg.mid).toFixed(0)} g`));
    await says(page, '.priming .caution-list', /WARNING|warning/i);
    await field(page, 'Carbonation wished').fill('4 vol');
    await page
      .getByRole('alert')
      .filter({ hasText: 'a bottle that bursts cuts; allowed: up to 3.5 volumes' })
      .waitFor();
    expect(await page.locator('.priming .glass-numbers').count()).toBe(0);
    await field(page, 'Carbonation wished').fill('7.9 g/L');
    await field(page, 'Into').selectOption('heavy');
    await says(page, '.priming .glass-numbers', /7\.90/);
    await field(page, 'Carbonation wished').fill('0.6 vol');
    await page.getByText('no sugar is needed').waitFor();
  });

  it('keeps a glass over a reload, is tasted, takes a slip away, and gives its days for a calendar', async () => {
    const { page, complaints } = await open({ at: 'glass', ownServer: true, acceptDownloads: true });
    await putInAfter(page, lotOf('Plum shards', 8));
    await field(page, 'Name of the beer').fill('Abbey, winter');
    await page.getByText('Kettle, water, glass and bottling').click();
    await field(page, 'Bottled on').fill('2027-12-20');
    await page.getByRole('button', { name: 'Keep this glass' }).click();
    await page.getByText('Kept “Abbey, winter”.').waitFor();
    expect(page.url()).toMatch(/\/glass\/[0-9a-f-]{36}$/);

    await field(page, 'Tasted on').fill('2028-01-31');
    await page.getByText('6 weeks in the bottle').waitFor();
    await field(page, 'Dried fruit').selectOption('4');
    await field(page, 'Burnt').selectOption('0');
    await field(page, 'Liked, 0 to 10').selectOption('8');
    await field(page, 'Note').fill('Plums.');
    await page.getByRole('button', { name: 'Keep this tasting' }).click();
    for (const words of [/6 weeks in the bottle, liked 8 of 10/, /dried fruit 4; none of burnt/, /Plums\./])
      await says(page, '.tasting-list li', words);
    await page.getByRole('button', { name: /^Take away/ }).click();
    await page.locator('.tasting-list li').waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.locator('.tasting-list li').waitFor();

    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'For a calendar (ICS)' }).click(),
    ]);
    const chunks: Buffer[] = [];
    for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
    const text = Buffer.concat(chunks).toString();
    expect(download.suggestedFilename()).toBe('tastings.ics');
    expect([...text.matchAll(/DTSTART;VALUE=DATE:(\d+)\r\n/g)].map(([, day]) => day)).toEqual([
      '20280103',
      '20280131',
      '20280313',
    ]);
    expect(text).toContain('SUMMARY:Taste Abbey\\, winter: 2 weeks in the bottle\r\n');

    await page.reload();
    await page.locator('.tasting-list li').waitFor();
    expect(await field(page, 'Name of the beer').inputValue()).toBe('Abbey, winter');
    await page.getByRole('button', { name: 'New beer' }).click();
    await says(page, 'h1', /First beer/);
    await page.getByRole('link', { name: /Abbey, winter/ }).click();
    await says(page, 'h1', /Abbey, winter/);
    expect(complaints).toEqual([]);
  });

  it('takes a kept glass away with its tastings, and puts back what was in hand with all of it', async () => {
    const { page, complaints } = await open({ at: 'glass', ownServer: true });
    await page.locator('.drawn').waitFor();
    await field(page, 'Name of the beer').fill('Abbey');
    await page.getByRole('button', { name: 'Keep this glass' }).click();
    await page.getByText('Kept “Abbey”.').waitFor();
    await field(page, 'Liked, 0 to 10').selectOption('8');
    await page.getByRole('button', { name: 'Keep this tasting' }).click();
    await page.locator('.tasting-list li').waitFor();
    const address = page.url();
    await field(page, 'Name of the beer').fill('Abbey, second thoughts');

    await page.getByRole('button', { name: 'Take this glass away' }).click();
    await page.getByText('Taken away “Abbey” with its tasting.').waitFor();
    expect(new URL(page.url()).pathname).toBe('/glass');
    await says(page, 'h1', /First beer/);
    await says(page, '.glass-kept', /None yet/);
    expect((await askBeside(page, new URL(address).pathname.replace('/glass/', '/api/glasses/'))).status).toBe(404);

    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('“Abbey” is there again.').waitFor();
    expect(page.url()).toBe(address);
    await says(page, '.glass-kept', /Abbey/);
    await says(page, '.tasting-list li', /liked 8 of 10/);
    expect(await field(page, 'Name of the beer').inputValue()).toBe('Abbey, second thoughts');
    await page.getByRole('button', { name: 'Keep the changes' }).click();
    await page.getByText('Kept “Abbey, second thoughts”.').waitFor();
    expect(complaints.filter((words) => !words.includes('404'))).toEqual([]);
  });

  it('takes a lot from its page on the Shelf: alone in a fresh beer, beside the sugars of one in hand, past one that is bottled', async () => {
    const { page, complaints } = await open({ at: 'shelf', ownServer: true });
    const [first, second] = [await post(page, '/api/lots', lotOf('Plum shards', 8)), lotOf('Fig shards', 6)];
    const other = await post(page, '/api/lots', second);
    const putInBeer = async (lot: string) => {
      await page.goto(`/shelf/${lot}`);
      await page.getByRole('link', { name: 'Put it in a beer' }).click();
    };
    const sugars = () => page.locator('.dose legend').allInnerTexts();

    await putInBeer(first);
    await page.getByText('Put “Plum shards” into “First beer”.').waitFor();
    await expect.poll(sugars).toEqual([expect.stringContaining('Plum shards')]);
    expect(await field(page, 'From').inputValue()).toBe(first);
    expect(page.url()).not.toContain('lot=');
    await page.locator('.drawn').waitFor();

    await putInBeer(other);
    await page.getByText('Put “Fig shards” into “First beer”.').waitFor();
    await expect.poll(sugars).toEqual([expect.stringContaining('Plum shards'), expect.stringContaining('Fig shards')]);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(sugars).toEqual([expect.stringContaining('Plum shards')]);

    await putInBeer(first);
    await page.getByText('“Plum shards” is in this beer already.').waitFor();
    expect(await sugars()).toHaveLength(1);

    await page.getByText('Kettle, water, glass and bottling').click();
    await field(page, 'Bottled on').fill('2027-12-20');
    await putInBeer(other);
    await page.getByText('Put “Fig shards” into a new beer.').waitFor();
    await expect.poll(sugars).toEqual([expect.stringContaining('Fig shards')]);
    expect(complaints).toEqual([]);
  });

  it('tells of a change made elsewhere in the meantime, and lets one choose', async () => {
    const { page } = await open({ at: 'glass', ownServer: true });
    await page.locator('.drawn').waitFor();
    await page.getByRole('button', { name: 'Keep this glass' }).click();
    await page.getByText('Kept “First beer”.').waitFor();
    const address = new URL(page.url()).pathname.replace('/glass/', '/api/glasses/');
    const kept = async () => (await (await askBeside(page, address)).json()) as GlassRecord;
    const theirs = { ...(await kept()).glass, name: 'Theirs' };
    await askBeside(page, address, { method: 'PUT', body: theirs, headers: { 'if-match': '"1"' } });
    await field(page, 'Name of the beer').fill('Mine');
    await page.getByRole('button', { name: 'Keep the changes' }).click();
    await page.getByText('“Theirs” was changed elsewhere in the meantime.').waitFor();
    await page.getByRole('button', { name: 'Keep mine instead' }).click();
    await page.getByText('Kept “Mine”.').waitFor();
    expect((await kept()).version).toBe(3);
  });

  it('axe objects to nothing, nothing scrolls sideways and targets are 48 px, on a phone, a tablet and a screen, in light and dark', async () => {
    const { page } = await open({ at: 'glass', ownServer: true });
    await putInAfter(page, lotOf('Plum shards', 8));
    await page.getByText('Kettle, water, glass and bottling').click();
    await page.getByText('Alkali, fermentability, price').click();
    await page.getByText('By which formulas').click();
    await page.getByText('Which sugars may be taken, and how much').click();
    await field(page, 'Bottled on').fill('2027-12-20');
    await field(page, 'Carbonation wished').fill('9 vol');
    await page.getByRole('button', { name: 'Keep this glass' }).click();
    await field(page, 'Tasted on').waitFor();
    await field(page, 'Beer colour').fill('30');
    await page.getByRole('button', { name: 'Find' }).click();
    await page.locator('.way').first().waitFor();
    for (const [width, colorScheme] of [
      [360, 'light'],
      [768, 'dark'],
      [1440, 'light'],
      [1440, 'dark'],
    ] as const) {
      const at = `${width} px, ${colorScheme}`;
      await page.setViewportSize({ width, height: 800 });
      await page.emulateMedia({ colorScheme });
      await page.waitForTimeout(700);
      expect(await objections(page), at).toEqual([]);
      const [wide, room] = await page.evaluate(() => {
        const { scrollWidth, clientWidth } = document.documentElement;
        return [scrollWidth, clientWidth] as const;
      });
      expect(wide, at).toBeLessThanOrEqual(room);
      const low = await page
        .locator(
          'button:visible, .button:visible, select:visible, summary:visible, input:visible:not([type=checkbox]), .tick',
        )
        .evaluateAll((all) =>
          all.filter((each) => each.getBoundingClientRect().height < 47.5).map((each) => each.outerHTML),
        );
      expect(low, at).toEqual([]);
    }
  });

  it('can be used by keyboard alone, and shows where the focus is', async () => {
    const { page } = await open({ at: 'glass', ownServer: true });
    await page.locator('.drawn').waitFor();
    const before = await withIts(page, 'Original gravity');
    const reached: string[] = [];
    for (let i = 0; i < 60; i++) {
      await page.keyboard.press('Tab');
      const at = await page.evaluate(() => {
        const element = document.activeElement as HTMLElement;
        const label = (element as HTMLInputElement).labels?.[0]?.textContent;
        const name = element.getAttribute('aria-label') ?? label ?? element.textContent ?? '';
        return { name: name.trim().split('\n')[0] ?? '', outline: getComputedStyle(element).outlineStyle };
      });
      expect(at.outline, at.name).toBe('solid');
      reached.push(at.name);
      if (at.name === 'How much') {
        await page.keyboard.press('Control+a');
        await page.keyboard.type('1 kg');
      }
      if (at.name === 'With') break;
    }
    for (const name of ['Keep this glass', 'Name of the beer', 'How much', 'Add a bought sugar', 'Beer colour', 'With'])
      expect(reached).toContain(name);
    expect((await withIts(page, 'Original gravity'))[0]).not.toBe(before[0]);
  });

  /** Makes the lot through the API, opens the page anew, and puts it in. */
  async function putInAfter(page: Page, lot: NewLot): Promise<void> {
    const id = await post(page, '/api/lots', lot);
    await page.reload();
    await putIn(page, id);
  }
});
