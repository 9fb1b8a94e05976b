// What the Desk keeps, on the server and in the browser.
import { describe, expect, it } from 'vitest';
import type { KitRecord } from '../../src/api/kit.ts';
import type { PlanRecord } from '../../src/api/plan.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { field, noBrowser, pages, planned, says } from './openPage.ts';
import { startCook } from './startCook.ts';

const amounts = '.results .amounts';

describe.skipIf(noBrowser)('the Desk', () => {
  const open = pages();

  it('saves a plan, keeps it over a reload, opens it by its address, deletes it and takes that back', async () => {
    const { page, server, complaints } = await open({ ownServer: true });
    await planned(page);
    await field(page, 'Name').fill('Plum shards');
    await field(page, 'Finished sugar').fill('350 g');
    await page.getByRole('button', { name: 'Save plan' }).click();
    await page.getByText('Saved “Plum shards”.').waitFor();
    const address = page.url();
    expect(address).toMatch(/\?plan=[0-9a-f-]{36}$/);

    await field(page, 'Finished sugar').fill('280 g');
    await page.waitForFunction(() => !location.search.includes('plan='));
    await page.reload();
    expect(await field(page, 'Finished sugar').inputValue()).toBe('280 g');
    await page.goto(address);
    await page.getByText('Opened “Plum shards”.').waitFor();
    expect(await field(page, 'Finished sugar').inputValue()).toBe('350 g');

    await page.getByRole('button', { name: 'Delete Plum shards' }).click();
    await page.getByText('Deleted “Plum shards”.').waitFor();
    expect(await plansOn(server.address)).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('link', { name: /Plum shards/ }).waitFor();
    expect(await plansOn(server.address)).toBe(1);
    expect(complaints).toEqual([]);
  });

  it('takes further holds by field and by grip, refuses one that would have to cool, and keeps them with the plan', async () => {
    const { page, server, complaints } = await open({ ownServer: true, viewport: { width: 360, height: 780 } });
    await planned(page);
    await page.getByRole('radio', { name: /^Bright/ }).check();
    await page.getByRole('button', { name: 'Add a hold' }).click();
    expect(await field(page, 'Further hold 1 at').inputValue()).toBe('145 °C');
    await field(page, 'Further hold 1 for').fill('4 min');
    await page.getByRole('button', { name: 'Add a hold' }).click();
    await says(page, '.results .steps', /Brown[\s\S]*Roast[\s\S]*Roast/);

    const grip = page.getByRole('slider', { name: /^Further hold 2, roast, by hand/ });
    await grip.focus();
    for (const key of ['ArrowUp', 'ArrowUp', 'ArrowRight']) await page.keyboard.press(key);
    expect(await field(page, 'Further hold 2 at').inputValue()).toBe('152 °C');
    expect(await field(page, 'Further hold 2 for').inputValue()).toBe('6 min');

    await field(page, 'Further hold 2 at').fill('140 C');
    await says(page, '.refused', /would be cooler than the one before it; allowed is 145 °C and more/);
    await field(page, 'Further hold 2 at').fill('293 F');
    await says(page, '.results .steps', /142–148 °C[\s\S]*142–148 °C/);

    await field(page, 'Name').fill('Two more');
    await page.getByRole('button', { name: 'Save plan' }).click();
    await page.getByText('Saved “Two more”.').waitFor();
    const address = page.url();
    await page.getByRole('button', { name: 'Take away further hold 1' }).click();
    expect(await page.getByLabel('Further hold 2 at').count()).toBe(0);
    await page.waitForFunction(() => !location.search.includes('plan='));
    await page.getByRole('button', { name: 'Back to the route’s own holds' }).click();
    expect(await page.getByLabel('Further hold 1 at').count()).toBe(0);

    await page.goto(address);
    await page.getByText('Opened “Two more”.').waitFor();
    expect(await field(page, 'Further hold 1 for').inputValue()).toBe('4 min');
    expect(await field(page, 'Further hold 2 for').inputValue()).toBe('6 min');
    const { plans } = (await (await fetch(`${server.address}api/plans`)).json()) as { plans: PlanRecord[] };
    expect(plans[0]?.request.moreHolds).toEqual([
      { celsius: 145, minutes: 4 },
      { celsius: expect.closeTo(145, 9), minutes: 6 },
    ]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
    expect(complaints).toEqual([]);
  });

  it('gives back what was on the Desk when a saved plan was opened over it', async () => {
    const { page } = await open({ ownServer: true });
    await planned(page);
    await page.getByRole('button', { name: 'Save plan' }).click();
    await page.getByText('Saved “First batch”.').waitFor();
    await field(page, 'Finished sugar').fill('512 g');
    await page.getByRole('link', { name: /First batch/ }).click();
    await page.getByRole('button', { name: 'Back to what was here' }).click();
    expect(await field(page, 'Finished sugar').inputValue()).toBe('512 g');
  });

  it('opens a saved plan as a step forward: Back leads to the aim, the address and a reload keep the plan', async () => {
    const { page } = await open({ ownServer: true });
    await planned(page);
    // A kept kit that the plans know nothing of must not cost a plan its address.
    for (const [name, mass] of [
      ['Plum shards', '350 g'],
      ['Fig shards', '250 g'],
    ] as const) {
      await field(page, 'Name').fill(name);
      await field(page, 'Finished sugar').fill(mass);
      await page.getByRole('button', { name: 'Save plan' }).click();
      await page.getByText(`Saved “${name}”.`).waitFor();
    }
    await page.getByRole('button', { name: 'Save kit' }).click();
    await page.getByText('Saved “Kitchen”.').waitFor();
    await field(page, 'Name').fill('Not saved');
    await page.waitForFunction(() => location.search === '');

    const inHand = () => field(page, 'Name').inputValue();
    await page.getByRole('link', { name: /Plum shards/ }).click();
    await page.getByText('Opened “Plum shards”.').waitFor();
    await page.waitForTimeout(300);
    const plum = page.url();
    expect(plum).toMatch(/\?plan=/);
    await page.getByRole('link', { name: /Fig shards/ }).click();
    await page.getByText('Opened “Fig shards”.').waitFor();
    expect(await inHand()).toBe('Fig shards');
    await page.reload();
    await planned(page);
    expect(page.url()).toMatch(/\?plan=/);
    expect(await inHand()).toBe('Fig shards');

    // The address changes a moment before the page hears of it.
    await page.goBack();
    await page.waitForFunction((address) => location.href === address, plum);
    await expect.poll(inHand).toBe('Plum shards');
    await page.goBack();
    await page.waitForFunction(() => location.search === '');
    await expect.poll(inHand).toBe('Not saved');
    await page.goForward();
    await page.waitForFunction((address) => location.href === address, plum);
    await expect.poll(inHand).toBe('Plum shards');
  });

  it('keeps the address of a plan that is opened by it in a browser that never was here', async () => {
    const { page, server } = await open({ ownServer: true });
    await planned(page);
    await field(page, 'Name').fill('Plum shards');
    await page.getByRole('button', { name: 'Save plan' }).click();
    await page.getByText('Saved “Plum shards”.').waitFor();
    await page.getByRole('button', { name: 'Save kit' }).click();
    await page.getByText('Saved “Kitchen”.').waitFor();
    const address = page.url();
    const { pathname, search } = new URL(address);
    const elsewhere = await open({ on: server, at: pathname.slice(1) + search });
    await elsewhere.page.getByText('Opened “Plum shards”.').waitFor();
    await planned(elsewhere.page);
    expect(elsewhere.page.url()).toBe(address);
    expect(await field(elsewhere.page, 'Name').inputValue()).toBe('Plum shards');
  });

  it('keeps each version of a plan, lays one behind another, and names the one that a cook goes by', async () => {
    const { page, server, complaints } = await open({ ownServer: true });
    await planned(page);
    await page.getByRole('button', { name: 'Save plan' }).click();
    await page.getByText('Saved “First batch”.').waitFor();
    const [first] = await allPlans(server.address);

    await field(page, 'Dose').fill('4');
    const lain = field(page, 'Lay behind this plan');
    await lain.selectOption(first?.id ?? '');
    await page.getByRole('row', { name: 'Dose, sodium hydroxide, g/kg 4.0 5.0' }).waitFor();
    expect(await page.locator('.picture .behind-course').count()).toBeGreaterThan(1);
    expect(await page.getByRole('row', { name: /^Invert for/ }).count()).toBe(0);
    await page.getByRole('button', { name: 'Take it away' }).click();
    await page.locator('.picture .behind-course').first().waitFor({ state: 'detached' });

    await page.getByRole('button', { name: 'Save plan' }).click();
    await page.waitForFunction(() => location.search.includes('plan='));
    const [second, before] = await allPlans(server.address);
    expect(before).toEqual(first);
    expect(second).toMatchObject({ request: { ...before?.request, alkaliGPerKg: 4 } });
    expect(second?.id).not.toBe(first?.id);

    await page.goto('/stove/cook');
    await startCook(page);
    await expect.poll(() => plansOfCooks(server.address)).toEqual([second?.id]);
    expect(complaints).toEqual([]);
  });

  it('says of a plan that is not there which it was, and leads on', async () => {
    const { page } = await open({ at: '?plan=zzz' });
    await page.getByText('There is no saved plan “zzz”').waitFor();
    await planned(page);
    await page.getByRole('button', { name: 'Go on with this plan' }).click();
    await page.waitForFunction(() => location.search === '');
    await page.getByText('There is no saved plan').waitFor({ state: 'detached' });
  });

  it('keeps a kit, and says so when somebody else changed it first', async () => {
    const { page, server } = await open({ ownServer: true });
    await planned(page);
    await page.getByText('Change the kit').click();
    await field(page, 'Name of the kit').fill('Garden kitchen');
    await page.getByRole('button', { name: 'Save kit' }).click();
    await page.getByText('Saved “Garden kitchen”.').waitFor();
    const kit = await onlyKit(server.address);
    expect(kit).toMatchObject({ version: 1, kit: { ...defaultKit, name: 'Garden kitchen' } });

    await fetch(`${server.address}api/kits/${kit.id}`, {
      method: 'PUT',
      headers: { 'content-type': 'application/json', 'if-match': '"1"' },
      body: JSON.stringify({ ...kit.kit, altitudeM: 800 }),
    });
    await field(page, 'Inside diameter').fill('20 cm');
    await page.getByRole('button', { name: 'Save kit' }).click();
    await page.getByText('This kit was changed elsewhere in the meantime.').waitFor();
    expect(await field(page, 'Inside diameter').inputValue()).toBe('20 cm');
    await page.getByRole('button', { name: 'Save mine over it' }).click();
    await page.getByText('Saved “Garden kitchen”.').waitFor();
    expect(await onlyKit(server.address)).toMatchObject({
      version: 3,
      kit: { altitudeM: 100, pan: { diameterM: 0.2 } },
    });
  });

  it('goes on computing without a server, and says that saving is not possible', async () => {
    const { page } = await open({ ownServer: true });
    await planned(page);
    await page.route('**/api/**', (route) => route.abort());
    await page.getByRole('button', { name: 'Save plan' }).click();
    await page.getByText('Not saved: the server is not reached.').waitFor();
    await page.reload();
    await page.getByText('saving is not possible now').waitFor();
    await field(page, 'Finished sugar').fill('300 g');
    await says(page, amounts, /29\d|30\d/);
  });
});

async function allPlans(address: string): Promise<readonly PlanRecord[]> {
  const { plans } = (await (await fetch(`${address}api/plans`)).json()) as { plans: PlanRecord[] };
  return plans;
}

const plansOn = async (address: string): Promise<number> => (await allPlans(address)).length;

/** The plan that each cook's log names in its beginning. */
async function plansOfCooks(address: string): Promise<unknown[]> {
  const { cooks } = (await (await fetch(`${address}api/cooks`)).json()) as { cooks: { id: string }[] };
  return Promise.all(
    cooks.map(async ({ id }) => {
      const { events } = (await (await fetch(`${address}api/cooks/${id}/events`)).json()) as {
        events: { kind: string; body: { planId?: string } }[];
      };
      return events.find(({ kind }) => kind === 'begun')?.body.planId;
    }),
  );
}

async function onlyKit(address: string): Promise<KitRecord> {
  const { kits } = (await (await fetch(`${address}api/kits`)).json()) as { kits: KitRecord[] };
  expect(kits).toHaveLength(1);
  return kits[0] as KitRecord;
}
