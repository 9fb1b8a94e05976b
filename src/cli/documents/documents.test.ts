// Real outputs against the published schemas, which know no further fields, and let no field be left out that is always told.
import { randomUUID } from 'node:crypto';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Command } from 'commander';
import { encode } from 'jpeg-js';
import { afterAll, describe, expect, test, vi } from 'vitest';
import { regions, rendered, sceneCamera } from '../../../bench/measure/renderedPhoto.ts';
import type { Schema } from '../../../scripts/reference/schema.ts';
import { cookedLog } from '../../../test/cookedLog.ts';
import { umberpan } from '../../../test/runProgram.ts';
import { sha256 } from '../../../test/sampleCook.ts';
import { writeCookFile } from '../../core/log/cookFile.ts';
import type { KnownEvent } from '../../core/log/event.ts';
import { defaultKit } from '../../core/pan/kit.ts';
import { defaultRequest } from '../../core/planning/request.ts';
import { normalNumbers } from '../../core/reactions/normal.ts';
import { buildServer } from '../../server/server.ts';
import { openStore } from '../../server/store/store.ts';
import { entries } from '../handbook/entries.ts';
import { umberpanProgram } from '../program.ts';
import { documents, documentsJsonSchema } from './documents.ts';

type Name = keyof typeof documents;

const folder = mkdtempSync(join(tmpdir(), 'umberpan-'));
afterAll(() => rmSync(folder, { recursive: true }));

function file(name: string, text: string | Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}

const kit = file('kit.json', JSON.stringify(defaultKit));

const short = { ...defaultRequest, massKg: 0.2, route: 'bright', invertMinutes: 10, brownMinutes: 10 } as const;
const cooked = (alkaliGPerKg: number) =>
  cookedLog(defaultKit, 4, 'live', randomUUID(), { request: { ...short, alkaliGPerKg } }).events;
const cookFile = (name: string, events: readonly KnownEvent[]) =>
  file(name, writeCookFile(events[0]?.cook ?? '', events, sha256));
const events = cooked(4);
const march = cookFile('march.ndjson', events);
const april = cookFile('april.ndjson', cooked(7));
const unpoured = cookFile(
  'unpoured.ndjson',
  events.filter(({ kind }) => kind !== 'poured' && kind !== 'ended'),
);
const unheated = cookFile(
  'unheated.ndjson',
  events.filter(({ kind }) => kind !== 'heat'),
);
const misnoted = cookFile(
  'misnoted.ndjson',
  events.map((event) =>
    event.kind === 'heat' ? { ...event, body: { notch: Math.round(event.body.notch) / 3 } } : event,
  ),
);

const columns = '--time Seconds --temperature Probe --deed Note --unit C';
const table = file(
  'april.csv',
  'Seconds,Probe,Note\n0,21,heat 4\n60,50,spoonfuls 2; alkali\n90,60,step brown\n120,140,poured\n',
);
const untold = file('untold.csv', 'Seconds,Probe,Note\n0,,heat 4\n');
const spoiled = file('spoiled.csv', 'Seconds,Probe,Note\n0,warm,heat 4\n');

/** A minute of lag, six of heat and three of cooling: made up, but much like a pan of water. */
const heated = Array.from({ length: 60 }, (_, i) => 10 * (i + 1)).map((timeS) => {
  const shownC = timeS < 60 ? 15 + timeS / 20 : timeS < 420 ? 18 + (timeS - 60) / 7 : 69.4 - (timeS - 420) / 40;
  return `${timeS}s:${shownC.toFixed(1)}`;
});

const scene = { a430Path: 0.45, hueIndex: 6, exposure: 0.75 };
const photo = file(
  'photo.jpg',
  encode(rendered(sceneCamera(normalNumbers(3), false), scene, normalNumbers(1)), 95).data,
);
const [sample, white] = [regions.sample, regions.whites[0]].map(
  ({ left, top, width, height }) => `${left},${top},${width},${height}`,
);
const photographed = `colour --sample ${sample} --white ${white} --sugar 1g --made-up-to 100mL --path 6cm`;

const beer = 'glass --volume 20L --gravity 1.060 --ebc 12';
const strong = 'ebc=150,solids=98,price=3,alkali=naoh,dose=5';
const workspace = file('workspace.json', await filledWorkspace());
const kept = join(folder, 'kept');
await umberpan(`restore ${workspace} --data ${kept}`);
const open = join(folder, 'open');
mkdirSync(open, { mode: 0o755 });

async function filledWorkspace(): Promise<string> {
  const store = await openStore(join(folder, 'store'));
  const app = await buildServer({ store, pages: folder });
  await app.inject({ method: 'POST', url: '/api/kits', payload: defaultKit });
  const { body } = await app.inject('/api/workspace');
  await app.close();
  await store.close();
  return body;
}

const [bright, pale] = (
  await Promise.all([
    umberpan('plan --route bright --mass 300g --json'),
    umberpan('plan --route pale --mass 300g --json'),
  ])
).map(({ stdout }, i) => file(`plan${i}.json`, stdout));

/** After `<` what is read from standard input. */
const lines: Readonly<Record<Name, readonly string[]>> = {
  plan: [
    'plan --mass 300g --hardness 17dH',
    'plan --route pale --form syrup --sugar-price 1.2 --bought-price 9',
    'plan --sugar-price 1.2 --active 94 --carbonate 5',
    'plan --route bright --colour 60EBC',
  ],
  field: [
    'field --columns 2 --rows 2',
    'field --columns 2 --rows 2 --across dose --across-from 4 --across-to 12',
    'field --route pale --columns 2 --rows 2',
  ],
  simulate: ['simulate --mass 300g --draws 4'],
  rehearse: [
    'rehearse --mass 300g --route bright --form syrup --invert-time 1min --brown-time 1min --members 16 --follow-advice --speed max',
    'rehearse --mass 300g --route bright --form syrup --invert-time 8min --brown-time 1min --members 16 --follow-advice --speed max --surprises',
  ],
  'follow, of a measurement': [
    'follow --members 16 < {"t": 60, "reading": 75.2, "unit": "[degF]"}',
    'follow --members 16 < {"t": 70, "solids": 0.65}',
    'follow --members 16 < {"t": 90, "poured": true}\n{"t": 70, "reading": 25, "unit": "Cel"}',
  ],
  'follow, of a deed': [
    'follow --members 16 < {"t": 0, "heat": 4}',
    'follow --members 16 < {"t": 60, "step": "invert"}',
    'follow --members 16 < {"t": 60, "poured": true}',
  ],
  'follow, of a bad line': ['follow --members 16 < {"t": 1, "heat"', 'follow --members 16 < {"t": 5, "heat": 99}'],
  'import --preview': [`import ${table} ${columns} --preview`, `import ${untold} ${columns} --preview`],
  'check CHECK': [
    `check boiling-water --kit ${kit} --readings 100.4,100.6,100.5 --pressure 985hPa`,
    `check ice --kit ${kit} --readings 0.3,0.2,0.3`,
    `check lag --kit ${kit} --from 21C --readings 1s:33.1,2s:43.4,4:59.5,6:71.0,10:85.1,15:93.5,60:100`,
    `check spoons --kit ${kit} --weights 4.6g,5.1,4.4,4.9,4.2,5.0`,
    `check heating --kit ${kit} --water 1kg --start 15C --settings 0s:6,420s:0 --readings ${heated}`,
  ],
  learn: [`learn ${march} ${unheated} --kit ${kit}`, `learn ${misnoted} --kit ${kit}`],
  'compare, of two plans': [`compare ${bright} ${bright}`, `compare ${bright} ${pale} --explain --draws 2`],
  compare: [`compare ${march} ${april} --explain --draws 2`, `compare ${march} ${unpoured}`],
  colour: ['colour --ebc 210', 'colour --a430 0.42 --sugar 2g --made-up-to 100mL --fold 5'],
  'colour --photo': [`${photographed} --photo ${photo}`],
  glass: [
    beer,
    `${beer} --bought-price 5 --sugar mass=800g,${strong}`,
    `${beer} --sugar mass=300g,${strong} --sugar mass=3kg,srm=5,points=44`,
  ],
  'glass --swap': [
    `${beer} --sugar mass=800g,${strong} --swap ebc=250,solids=98,price=4,alkali=naoh,dose=5 --bought-price 5`,
  ],
  'glass, a wish that sugars meet': [
    `${beer} --to-ebc 30 --bought-price 5 --sugar ${strong}`,
    `${beer} --to-ebc 45 --to-share 12 --sugar name=pale,ebc=10,solids=98 --sugar name=dark,ebc=250,solids=98`,
  ],
  'glass, a wish that none meets': [
    `${beer} --to-ebc 30 --to-share 5 --sugar ebc=5,solids=98`,
    `${beer} --to-share 30 --sugar ${strong}`,
  ],
  prime: ['prime --volume 19L --temperature 20C --wish 2.4'],
  'handbook PROPERTY': [
    'handbook boiling-point --sucrose 90',
    ...entries.map(({ name, example }) => `handbook ${name} ${example}`),
  ],
  'handbook list': ['handbook list', 'handbook'],
  'handbook parameters': ['handbook parameters --stove gas'],
  restore: [`restore ${workspace} --data ${join(folder, 'new')}`],
  'restore, of what is there already': [`restore ${workspace} --data ${kept}`],
  trust: [`trust --data ${join(folder, 'trusted')}`],
  'trust --remove': [`trust --remove --data ${join(folder, 'trusted')}`],
  doctor: [`doctor --port 0 --data ${open}`],
  'any that fails': [
    'plan --mass 1parsec',
    'plan --mass 90kg',
    'plan --dose 9',
    'plan --material aluminium',
    'field --across dose --up dose',
    'rehearse --speed max',
    `import ${spoiled} ${columns}`,
    `learn ${march} --kit ${folder}/nowhere.json`,
    `compare ${march} ${folder}/nowhere.ndjson`,
    `${photographed} --photo ${kit}`,
    `${beer} --sugar ebc=75`,
    `restore ${march} --data ${folder}/new`,
    `trust --data ${march}`,
  ],
};

/** What a command prints, on standard output or as its error. */
async function printed(line: string): Promise<unknown> {
  const [command = '', input] = line.split(' < ');
  if (input !== undefined) return lastLine(command, input);
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

async function lastLine(command: string, input: string): Promise<unknown> {
  const { stdout, stderr } = await umberpan(command, { input });
  return JSON.parse(`${stdout}${stderr}`.trim().split('\n').at(-1) ?? '');
}

type Fields = Record<string, unknown>;

/** Every object in a document, with where it is; places in a list are one. */
function objectsIn(value: unknown, path = ''): readonly (readonly [string, Fields])[] {
  if (Array.isArray(value)) return value.flatMap((each) => objectsIn(each, `${path}[]`));
  if (typeof value !== 'object' || value === null) return [];
  const within = Object.entries(value).flatMap(([field, told]) => objectsIn(told, `${path}.${field}`));
  return [[path, value as Fields], ...within];
}

const defs = documentsJsonSchema().$defs as Readonly<Record<string, Schema>>;

/** Every field that a schema names, with where it is. */
function fieldsOf(schema: Schema | undefined, path = ''): readonly string[] {
  const { $ref, properties = {}, items, anyOf = [], oneOf = [] } = schema ?? {};
  return [
    ...($ref === undefined ? [] : fieldsOf(defs[$ref.split('/').at(-1) ?? ''], path)),
    ...[...anyOf, ...oneOf].flatMap((each) => fieldsOf(each, path)),
    ...(typeof items === 'object' ? fieldsOf(items, `${path}[]`) : []),
    ...Object.entries(properties).flatMap(([field, each]) => [
      `${path}.${field}`,
      ...fieldsOf(each, `${path}.${field}`),
    ]),
  ];
}

/** Objects of the same fields at the same place are told from each other by nothing that counts here: the first of each. */
function kindsOf(objects: ReturnType<typeof objectsIn>): ReturnType<typeof objectsIn> {
  return [...new Map(objects.toReversed().map((each) => [`${each[0]}: ${Object.keys(each[1])}`, each])).values()];
}

/** Fields that may be taken out of a document, and objects that take a field that nobody knows. */
function laxIn(name: Name, document: unknown) {
  const passes = () => documents[name].safeParse(document).success;
  const kinds = kindsOf(objectsIn(document));
  const takesMore = kinds.filter(([, object]) => {
    object['unheard'] = {};
    const taken = passes();
    delete object['unheard'];
    return taken;
  });
  const spares = kinds.flatMap(([path, object]) =>
    Object.entries(object).flatMap(([field, value]) => {
      delete object[field];
      const spared = passes();
      object[field] = value;
      return spared ? [{ path, field }] : [];
    }),
  );
  return { takesMore: takesMore.map(([path]) => path), spares };
}

/** What may be left out of a kit and of a request is the API's to say. */
const ofTheApi = /\.(kit|request)(\.|$)/;

describe.each(Object.entries(lines) as [Name, readonly string[]][])('%s', { timeout: 120_000 }, (name, each) => {
  const answers = new Map<string, unknown>();
  const answer = async (line: string) => {
    if (!answers.has(line)) answers.set(line, await printed(line));
    return answers.get(line);
  };
  /** One after the other: what is printed is caught for the whole process. */
  const all = async () => {
    for (const line of each) await answer(line);
    return [...answers.values()];
  };

  test.each(each)('`umberpan %s` is as its schema says', async (line) => {
    const document = await answer(line);
    const checked = documents[name].safeParse(document);
    expect(checked.error?.issues ?? []).toEqual([]);
    // What passes is what was printed: nothing is let fall.
    expect(checked.data).toEqual(document);
  });

  test('its schema refuses a field that it does not know, and misses each that is always told', async () => {
    const lax = (await all()).map((document) => laxIn(name, document));
    expect(lax.flatMap(({ takesMore }) => takesMore)).toEqual([]);
    const objects = (await all()).flatMap((document) => objectsIn(document));
    const alwaysTold = lax
      .flatMap(({ spares }) => spares)
      .filter(({ path }) => !ofTheApi.test(path))
      .filter(({ path, field }) => objects.every(([where, object]) => where !== path || field in object));
    expect(alwaysTold).toEqual([]);
  });

  test('each field that its schema names is told by one of them', async () => {
    const objects = (await all()).flatMap((document) => objectsIn(document));
    const told = new Set(objects.flatMap(([path, object]) => Object.keys(object).map((field) => `${path}.${field}`)));
    const named = fieldsOf(defs[documents[name].meta()?.id ?? '']);
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((field) => !ofTheApi.test(field) && !told.has(field))).toEqual([]);
  });
});

/** Every command that takes `--json`, as it is typed. */
function withJson(command: Command, before: readonly string[] = []): string[] {
  const itself = command.options.some(({ long }) => long === '--json') ? [before.join(' ')] : [];
  return [...itself, ...command.commands.flatMap((each) => withJson(each, [...before, each.name()]))];
}

test('there is a document for each command that takes --json', () => {
  const { 'any that fails': _, ...done } = lines;
  const typed = Object.values(done).flat();
  const bare = withJson(umberpanProgram()).filter(
    (path) => !typed.some((line) => line === path || line.startsWith(`${path} `)),
  );
  expect(bare).toEqual([]);
});

test('each document has a name of its own in the published schema', () => {
  const ids = Object.values(documents).map(({ meta }) => meta()?.id);
  expect(new Set(ids).size).toBe(ids.length);
  expect(Object.keys(defs)).toEqual(expect.arrayContaining(ids));
});
