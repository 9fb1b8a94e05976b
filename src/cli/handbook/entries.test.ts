import { describe, expect, test } from 'vitest';
import { referenceTable } from '../../../test/referenceTable.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { centralValues } from '../../core/pan/model.ts';
import { reactionParameters } from '../../core/reactions/parameters.ts';
import { amount, amountCount, createRates } from '../../core/reactions/rates.ts';
import { flagOf } from '../input.ts';
import { Stop } from '../stop.ts';
import { answerText } from './answerText.ts';
import { entries } from './entries.ts';
import { rateFacts, rateNames } from './rates.ts';

async function answer(name: string, texts: Record<string, string>) {
  const entry = entries.find((each) => each.name === name);
  if (!entry) throw new Error(`no entry ${name}`);
  return entry.answer(texts);
}

/** `--ph 4 --temperature 120C` as commander would collect it. */
function textsOf(example: string): Record<string, string> {
  const words = example.split(' ');
  const names = words
    .filter((_, at) => at % 2 === 0)
    .map((flag) => flag.slice(2).replace(/-(.)/g, (_, c) => c.toUpperCase()));
  return Object.fromEntries(names.map((name, at) => [name, words[2 * at + 1] ?? '']));
}

describe.each(entries.map((entry) => [entry.name, entry] as const))('%s', (_, entry) => {
  test('answers its example with a value inside its range', async () => {
    const { value, range } = await entry.answer(textsOf(entry.example));
    expect(Number.isFinite(value)).toBe(true);
    expect(range[0]).toBeLessThanOrEqual(value);
    expect(range[1]).toBeGreaterThanOrEqual(value);
  });

  test('says where its number comes from and names its options as people type them', () => {
    expect(entry.source.length).toBeGreaterThan(8);
    expect(entry.valid.length).toBeGreaterThan(3);
    for (const name of Object.keys(entry.inputs)) expect(flagOf(name)).toMatch(/^--[a-z0-9]+(-[a-z]+)*$/);
  });

  test('refuses garbage for every option, naming the option', async () => {
    for (const name of Object.keys(entry.inputs)) {
      const refusal = await entry
        .answer({ ...textsOf(entry.example), [name]: 'a spoon' })
        .catch((error: unknown) => error);
      expect(refusal).toBeInstanceOf(Stop);
      expect((refusal as Stop).problem).toMatchObject({ field: flagOf(name), value: 'a spoon' });
    }
  });
});

test.each([
  ['boiling-point --sucrose 85', 'Cel'],
  ['boiling-point --sucrose 85 --altitude 800m', 'Cel'],
  ['solids --temperature 130C --sugar sucrose', '%'],
  ['water-activity --glucose 41 --fructose 41 --temperature 25C', '1'],
  ['glass-transition --sucrose 97', 'Cel'],
  ['density --sucrose 65 --temperature 20C', 'kg/m3'],
  ['inversion --ph 4 --temperature 120C', 'min'],
  ['plato --gravity 1.0484', '%'],
  ['colour --a430 2.5 --path 5cm', '{EBC}'],
  ['rate --name fructoseDecay --temperature 140C', '1/min'],
])('%s is answered in %s', async (line, unit) => {
  const [name = '', ...words] = line.split(' ');
  const entry = entries.find((each) => each.name === name);
  expect((await answer(name, textsOf(words.join(' ')))).unit ?? entry?.unit).toBe(unit);
});

test('inversion half-life follows the acid route of the reference table within 0.3 %, and half of its last digit', async () => {
  let worst = { beyond: Number.NEGATIVE_INFINITY, row: '' };
  for (const row of referenceTable('inversion-half-life')) {
    const ph = row['pH_at_temperature'] ?? '';
    const { value } = await answer('inversion', { ph, temperature: `${row['T_C']}C` });
    const published = Number(row['halflife_min_dilute']);
    const beyond = (Math.abs(value - published) - 0.005) / published;
    if (beyond > worst.beyond) worst = { beyond, row: JSON.stringify(row) };
  }
  console.log('inversion half-life, worst:', worst);
  expect(worst.beyond).toBeLessThan(0.003);
});

test('half-lives of dilute sucrose at pH 4, 120 C lie in the stated range of both published routes', async () => {
  const { value, range } = await answer('inversion', { ph: '4', temperature: '120C' });
  // Vukov 1965, Int. Sugar J. 67:172 (from memory): log10 k = 16.91 - 5670/T - pH per min, water alone.
  const vukovMinutes = Math.LN2 / 10 ** (16.91 - 5670 / 393.15 - 4);
  expect(vukovMinutes).toBeGreaterThan(range[0]);
  expect(vukovMinutes).toBeLessThan(range[1]);
  expect(value).toBeCloseTo(22.7, 1);
});

test('degrees Plato follow the published tables within their printed rounding, and gravity is the way back', async () => {
  for (const row of referenceTable('plato-gravity').filter((each) => Number(each['plato']) < 40)) {
    const { value } = await answer('plato', { gravity: row['gravity'] ?? '' });
    expect(Math.abs(value - Number(row['plato']))).toBeLessThanOrEqual(Number(row['plato_tolerance']));
    const back = await answer('gravity', { plato: String(value) });
    expect(back.value).toBeCloseTo(Number(row['gravity']), 6);
  }
});

test('boiling point and solids are each other’s way back, for every composition and air', async () => {
  for (const percent of [50, 70, 85, 95]) {
    for (const air of [{}, { altitude: '800m' }, { pressure: '80kPa' }]) {
      const boils = await answer('boiling-point', { glucose: `${percent / 2}`, fructose: `${percent / 2}`, ...air });
      const solids = await answer('solids', { temperature: `${boils.value}C`, sugar: 'invert', ...air });
      expect(solids.value).toBeCloseTo(percent, 4);
    }
  }
});

test('the published boiling tables of sucrose lie in the range at 85 % (113 to 117.8 C; see reference/boiling-*.csv)', async () => {
  const { range } = await answer('boiling-point', { sucrose: '85' });
  for (const [table, celsius] of [
    ['Claassen', 113.0],
    ['confectionery', 116.1],
  ] as const) {
    expect([table, celsius > range[0] && celsius < range[1]]).toEqual([table, true]);
  }
});

describe('rate', () => {
  test.each(rateNames)('%s is kept at the temperature that its parameter states', (name) => {
    const { parameter, referenceC } = rateFacts(name);
    expect(reactionParameters[parameter].meaning).toContain(`at ${referenceC} C`);
  });

  /** What each reaction alone does to a mole of what it starts from, as the pan computes it, per min. */
  const seen = {
    glucoseToFructose: ['glucose', 'fructose', 1],
    fructoseToGlucose: ['fructose', 'glucose', 1],
    glucoseDecay: ['glucose', 'fragments', 1],
    fragmentFade: ['fragments', 'colourless', 1],
    amadoriDecay: ['amadori', 'amadori', -1],
    prepigment: ['prepigment', 'prepigment', -1],
  } as const;

  test.each(Object.keys(seen) as (keyof typeof seen)[])(
    '%s is the constant that the simulated pan uses',
    async (name) => {
      const [from, to, sign] = seen[name];
      for (const temperatureC of [110, 130, 150]) {
        const state = new Float64Array(amountCount);
        state[amount[from]] = 1;
        const change = new Float64Array(amountCount);
        const around = { temperatureC, syrupKg: 1, waterKg: 0.1, base: 1e-4, citricMol: 0, maltKg: 0.01 };
        const ph = createRates(centralValues(defaultKit)).derivatives(state, around, change, { water: 0, inverted: 0 });
        const { value } = await answer('rate', { name, temperature: `${temperatureC}C`, ph: String(ph) });
        // The pan reads its constants from curves sampled every 2 C.
        expect((sign * 60 * (change[amount[to]] ?? Number.NaN)) / value).toBeCloseTo(1, 4);
      }
    },
  );
});

test('alkali raises the hot pH, more of it more, and the sugar caps it', async () => {
  const ph = async (dose: string) => (await answer('ph-after-alkali', { dose })).value;
  const [none, some, much] = [await ph('0'), await ph('2'), await ph('8')];
  expect(some).toBeGreaterThan(none + 1);
  expect(much).toBeGreaterThan(some);
  expect(much).toBeLessThan(10.7);
});

test('colour scales follow the reference table', async () => {
  const rows = referenceTable('colour-scales').filter(
    (row) => row['from'] === 'A430' && ['SRM', 'EBC'].includes(row['to'] ?? ''),
  );
  expect(rows.length).toBeGreaterThan(1);
  for (const row of rows) {
    const { value } = await answer((row['to'] ?? '').toLowerCase(), { a430: row['given'] ?? '' });
    expect(Math.abs(value - Number(row['expected']))).toBeLessThanOrEqual(Number(row['tolerance']));
  }
});

test.each([
  ['solids', { temperature: '300C' }, ['--temperature', "'300C'", '200 °C']],
  ['solids', {}, ['--temperature', 'missing']],
  ['solids', { temperature: '90C' }, ["--temperature: '90C'", '99.98 °C, where water boils', '166.1 °C']],
  ['spoonful', { batch: '450g', temperature: '60C' }, ["--temperature: '60C'", '99.98 °C', '160 °C']],
  ['spoonful', { batch: '50g', temperature: '137C', spoon: '10mL' }, ["--spoon: '10mL'", 'up to 5 mL']],
  ['viscosity', { sucrose: '97', temperature: '20C' }, ["--temperature: '20C'", '33.7 °C to 200 °C', 'glass']],
  ['boiling-point', { sucrose: '99.9' }, ['--sucrose is 99.9 %', '0 to 99.5 %']],
  ['boiling-point', { sucrose: '98', fructose: '1.9' }, ['add up to 99.9 %', '0 to 99.5 %']],
  ['binding-heat', { sucrose: '99.9' }, ["--sucrose: '99.9'", '0 to 99.5 %']],
  ['a430', { icumsa: '5000', ebc: '20' }, ['one of', '--icumsa']],
  ['plato', { gravity: '1.2' }, ["--gravity: '1.2'", '0.985 to 1.17874']],
  ['boiling-point', {}, ['--sucrose 85']],
  ['boiling-point', { sucrose: '60', glucose: '60' }, ['120 %', '99.5 %']],
  ['density', { sucrose: '60', glucose: '60', temperature: '20C' }, ['120 %', '0 to 100 %']],
  ['boiling-point', { sucrose: '85', altitude: '800m', pressure: '95kPa' }, ['--altitude', '--pressure']],
  ['rate', { name: 'fructosDecay', temperature: '140C' }, ['did you mean fructoseDecay?']],
  ['colour', { a430: '2', ebc: '50' }, ['one of']],
])('%s of %o is refused with what would be right', async (name, texts, words) => {
  const refusal = (await answer(name, texts).catch((error: unknown) => error)) as Stop;
  expect(refusal).toBeInstanceOf(Stop);
  for (const word of words) expect(refusal.message).toContain(word);
});

async function printed(line: string): Promise<string> {
  const [name = '', ...words] = line.split(' ');
  const entry = entries.find((each) => each.name === name);
  if (!entry) throw new Error(`no entry ${name}`);
  return answerText(entry, await entry.answer(textsOf(words.join(' '))));
}

describe('what a person reads', () => {
  test.each(entries.map(({ name, example }) => `${name} ${example}`))(
    '%s: words, never a name of the code',
    async (line) => {
      const text = await printed(line);
      expect(text).not.toMatch(/\w_\w|[a-z][A-Z][a-z]+\w* {2}|\.ts\b|undefined|NaN|true|false/);
      expect(text).not.toMatch(/\((?:both )?([^()]+)\)\s+\(\1\)/);
    },
  );

  test.each([
    ['glass-transition --sucrose 97', 'hard on a shelf of 20 °C; keep it'],
    ['glass-transition --sucrose 95.5', 'barely hard'],
    ['glass-transition --glucose 45 --fructose 50', 'not hard on a shelf'],
    ['glass-transition --sucrose 0', 'a solution, no candy'],
    ['glass-transition --sucrose 97', '(error from memory or assumed)'],
    ['conductivity --sucrose 80 --temperature 60C', '(error assumed)'],
    ['vapour-pressure --temperature 120C', '(checked against a table)'],
    ['vapour-pressure --temperature 300C', '(error from memory)'],
    ['pressure --altitude 800m', '(what the weather does)'],
    ['colour --a430 2.5 --path 5cm', 'as near as a screen comes'],
    ['inversion --ph 7 --temperature 100C', '135000 min (94 days)'],
    ['rate --name amadori --temperature 120C --ph 9.5', 'taken at pH 8.5'],
    ['boiling-point --sucrose 0', 'water alone'],
    ['ph-after-alkali --dose 12', 'Caution: no plan takes so much'],
  ])('%s says: %s', async (line, words) => {
    expect((await printed(line)).replace(/\s+/g, ' ')).toContain(words);
  });

  test('no digits beyond what the range supports', async () => {
    expect(await printed('binding-heat --sucrose 95')).toMatch(
      /^binding-heat {2}130000 J\/kg\nrange {9}70000 to 260000 J\/kg/,
    );
  });

  test('JSON keeps its keys', async () => {
    const { further } = await answer('colour', { a430: '2.5' });
    expect(Object.keys(further ?? {})).toEqual(['srm', 'icumsa_IU', 'hueIndex', 'srgb', 'srgbClipped', 'lab']);
  });
});
