import { createHash, randomBytes } from 'node:crypto';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { eventBatchSchema } from '../../src/api/event.ts';
import { faultsOfFiled } from '../../src/api/filedEvent.ts';
import { eventsOf } from '../../src/core/learn/imported/events.ts';
import { type Mapping, previewTable } from '../../src/core/learn/imported/preview.ts';
import { timeForms } from '../../src/core/learn/imported/times.ts';
import { readCookFile, writeCookFile } from '../../src/core/log/cookFile.ts';
import { begunBody } from '../sampleCook.ts';
import { casesOf, everyCase, tallyOf, timeFor } from './cases.ts';
import { anyText, oddValue, spoilt, spoiltLines, spoiltText } from './spoilt.ts';

const sha256 = (text: string) => createHash('sha256').update(text).digest('hex');
const cases = casesOf(2000);

it(
  'any table (CSV or lines of JSON) has its wrong cells named, or becomes a cook that the server takes',
  async () => {
    const tally = tallyOf('tables');
    await everyCase(fc.tuple(tables, mappings), cases, ([text, mapping]) => {
      const preview = previewTable(text, mapping, begunBody);
      tally.count(preview.wrong.length > 0 ? 'refused' : 'taken');
      for (const { line, value, reason } of preview.wrong) {
        expect(line).toBeGreaterThanOrEqual(1);
        expect(typeof value).toBe('string');
        expect(reason).toMatch(/\w/);
      }
      if (preview.wrong.length > 0) return;
      const events = eventsOf(preview, begunBody, importing);
      for (let at = 0; at < events.length; at += 500) {
        expect(eventBatchSchema.safeParse(events.slice(at, at + 500)).error).toBeUndefined();
      }
      const file = readCookFile(writeCookFile(importing.cook, events, sha256), sha256);
      if (file.kind === 'refused') throw new Error(`line ${file.line}: ${file.reason}`);
      expect(file.events.flatMap(faultsOfFiled)).toEqual([]);
    });
    tally.tell();
  },
  timeFor(cases, 5),
);

const importing = {
  ...{ cook: '00000000-0000-4000-8000-000000000001', device: '00000000-0000-4000-8000-000000000002' },
  ...{ tz: 'UTC', startMs: Date.UTC(2031, 4, 9), random: () => randomBytes(10) },
};

const columns = ['Time', 'Probe', 'Note', 'constructor', '__proto__', 'toString', ''];
const mappings: fc.Arbitrary<Mapping> = fc
  .record({
    time: fc.oneof({ weight: 9, arbitrary: fc.constant('Time') }, fc.constantFrom(...columns)),
    temperature: fc.oneof({ weight: 9, arbitrary: fc.constant('Probe') }, fc.constantFrom(...columns)),
    deed: fc.oneof({ weight: 9, arbitrary: fc.constant('Note') }, fc.constantFrom(undefined, ...columns)),
    timeForm: fc.oneof({ weight: 9, arbitrary: fc.constant('s' as const) }, fc.constantFrom(...timeForms)),
    unit: fc.constantFrom('Cel', '[degF]', 'K'),
  })
  .map(({ deed, ...mapping }) => ({ ...mapping, ...(deed !== undefined && { deed }) }));

const deeds = [
  '',
  'heat 4',
  'heat 2,5',
  'spoonfuls 2',
  'water 30 g',
  'alkali',
  'step brown',
  'poured',
  'heat 4; alkali',
];
const odd = [
  '1e3',
  '-1',
  '9'.repeat(30),
  '0x10',
  'heat',
  'heat NaN',
  'heat 1e1',
  'water 1e-9 g',
  '23:59:59',
  '2031-02-29T12:00',
  '٣',
  '"',
  ' ',
];
const cell = fc.oneof({ weight: 60, arbitrary: fc.constant(undefined) }, fc.constantFrom(...odd), fc.string());

/** Rows that are right but for a cell here and there. */
const rows = fc.array(
  fc.record({
    stepS: fc.nat({ max: 900 }),
    valueC: fc.double({ min: -40, max: 400, noNaN: true }),
    deed: fc.constantFrom(...deeds),
    cells: fc.tuple(cell, cell, cell),
  }),
  { maxLength: 12 },
);

const values = rows.map((all) => {
  let timeS = 0;
  return all.map(({ stepS, valueC, deed, cells }) => {
    timeS += stepS;
    return [String(timeS), valueC.toFixed(2), deed].map((right, place) => cells[place] ?? right);
  });
});

const separated = fc
  .tuple(values, fc.constantFrom(',', ';', '\t'), fc.constantFrom('\n', '\r\n'))
  .map(([all, separator, end]) => [['Time', 'Probe', 'Note'], ...all].map((row) => row.join(separator)).join(end));

const objects = values.map((all) => all.map(([Time, Probe, Note]) => ({ Time, Probe, Note })));
const lines = (values: fc.Arbitrary<unknown>) =>
  values.map((all) => (Array.isArray(all) ? all : [all]).map((each) => JSON.stringify(each)).join('\n'));

const tables = fc.oneof(
  { weight: 6, arbitrary: separated },
  { weight: 3, arbitrary: spoiltText(separated) },
  { weight: 1, arbitrary: spoiltLines(separated) },
  { weight: 2, arbitrary: lines(objects) },
  { weight: 3, arbitrary: lines(spoilt(objects)) },
  { weight: 1, arbitrary: spoiltText(lines(objects)) },
  { weight: 1, arbitrary: lines(fc.array(oddValue)) },
  { weight: 1, arbitrary: anyText() },
);
