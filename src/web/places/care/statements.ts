/**
 * What Care says: every statement with an id, its source, the date it was written down here, and where it holds. Marks in the
 * sources: (seen) in a stored copy or a page that quotes it, (from memory) otherwise. Each defers to the safety data sheet of
 * one's own product, local rules and the emergency services.
 */
import type { Sourced, Statement } from '../../../core/advice/safety.ts';

export interface Topic {
  readonly id: string;
  readonly title: string;
  readonly statements: readonly Statement[];
}

const date = '2026-11-25';
const numbersDate = '2026-11-29';
const any = { date, region: 'any' } as const;

const burns = 'ANZCOR guideline 9.1.3 and Australian and New Zealand burns bodies (seen)';
const mcLure = 'McLure et al. 2021, Cureus 13(6):e15779: durations in 18 guidelines (seen)';
const lyeSheet = 'Safety data sheets of sodium hydroxide; GHS phrases P301, P330, P331 (seen)';
const limeSheet = 'ECHA registration dossier 8065 and safety data sheets of calcium hydroxide (seen)';
const fire = 'NFPA cooking safety tips, as printed by newspapers and fire departments (seen second-hand)';

export const topics: readonly Topic[] = [
  {
    id: 'burn',
    title: 'Burned by hot sugar',
    statements: [
      {
        id: 'CARE-BURN-1',
        text: 'Cool at once under cool running water for 20 minutes. It still helps up to 3 hours later.',
        source: `${burns}; ${mcLure}`,
        ...any,
      },
      {
        id: 'CARE-BURN-2',
        text: 'Sugar that sticks: cool it with water first. Don’t scrape it off hot. Take off rings and clothes that don’t stick.',
        source: `${burns}; burns texts (from memory)`,
        ...any,
      },
      {
        id: 'CARE-BURN-3',
        text: 'No ice, butter, oil or cream. Leave blisters closed. Then cover loosely with cling film or a clean, fluff-free cloth; keep the person warm.',
        source: `${burns}; NHS North Bristol (seen)`,
        ...any,
      },
      {
        id: 'CARE-BURN-4',
        text: 'See a doctor: any child; larger than 3 cm; face, hands, feet, joints or genitals; all round a limb; white or charred; or any doubt.',
        source: 'Children’s burns centre and QUT burns pages (seen)',
        ...any,
      },
    ],
  },
  {
    id: 'eyes',
    title: 'Alkali in the eyes',
    statements: [
      {
        id: 'CARE-EYES-1',
        text: 'Flush at once with plenty of water, lids held open, for 20 minutes and more. Lenses out if it is easy.',
        source: `${limeSheet}: 15 to 20 minutes and more, “speed is essential”; ${lyeSheet}`,
        ...any,
      },
      {
        id: 'CARE-EYES-2',
        text: 'Have somebody call the emergency number while you go on flushing. Lime: wash clumps out from under the lids.',
        source: `${lyeSheet}; data sheet of a calcium hydroxide maker (seen)`,
        ...any,
      },
    ],
  },
  {
    id: 'skin',
    title: 'Alkali on the skin',
    statements: [
      {
        id: 'CARE-SKIN-1',
        text: 'Take off what is wet with it. Rinse with running water for 20 minutes. Slippery skin is being attacked, even if it doesn’t hurt.',
        source: `${limeSheet}; laboratory sheet of a college (seen)`,
        ...any,
      },
      {
        id: 'CARE-SKIN-2',
        text: 'Don’t neutralise with vinegar or acid, on skin or in eyes: it heats and costs time.',
        source: 'ANZCOR: irrigate and refer to the safety data sheet (seen); burns texts (from memory)',
        ...any,
      },
    ],
  },
  {
    id: 'swallowed',
    title: 'Alkali swallowed, or its dust breathed',
    statements: [
      {
        id: 'CARE-SWALLOW-1',
        text: 'Rinse the mouth. Don’t bring on vomiting. Call the poison line or emergency number at once.',
        source: lyeSheet,
        ...any,
      },
      {
        id: 'CARE-BREATHE-1',
        text: 'Breathed dust or mist: fresh air; a doctor if breathing stays hard.',
        source: `${lyeSheet}; ${limeSheet}`,
        ...any,
      },
    ],
  },
  {
    id: 'fire',
    title: 'Pan on fire',
    statements: [
      {
        id: 'CARE-FIRE-1',
        text: 'Lid on, heat off, leave it covered till it is cold. Never water.',
        source: fire,
        ...any,
      },
      {
        id: 'CARE-FIRE-2',
        text: 'If it doesn’t go out at once: leave, close the door, call.',
        source: fire,
        ...any,
      },
      {
        id: 'CARE-SMOKE-1',
        text: 'Sugar smokes: heat off, pan aside, ventilate. No water into it.',
        source: 'Kitchen practice (from memory)',
        ...any,
      },
    ],
  },
];

export interface EmergencyNumber extends Sourced {
  readonly place: string;
  readonly number: string;
  /** A second line: poison centre or advice. */
  readonly further?: { readonly name: string; readonly number: string };
}

export const emergencyNumbers: readonly EmergencyNumber[] = [
  {
    id: 'CARE-NUM-EU',
    place: 'European Union',
    number: '112',
    source: 'European Commission, one number in all member states (seen quoted)',
    date: numbersDate,
    region: 'EU',
  },
  {
    id: 'CARE-NUM-GB',
    place: 'United Kingdom',
    number: '999',
    further: { name: 'NHS advice', number: '111' },
    source: 'Emergency page of an NHS practice (seen)',
    date: numbersDate,
    region: 'GB',
  },
  {
    id: 'CARE-NUM-US',
    place: 'United States',
    number: '911',
    further: { name: 'Poison Help', number: '1-800-222-1222' },
    source: 'US Department of Health and Human Services, Poison Help (seen)',
    date: numbersDate,
    region: 'US',
  },
  {
    id: 'CARE-NUM-AU',
    place: 'Australia',
    number: '000',
    further: { name: 'Poisons line', number: '13 11 26' },
    source: 'ANZCOR, poison line (seen)',
    date,
    region: 'AU',
  },
  {
    id: 'CARE-NUM-NZ',
    place: 'New Zealand',
    number: '111',
    further: { name: 'Poisons line', number: '0800 764 766' },
    source: 'ANZCOR, poison line (seen)',
    date,
    region: 'NZ',
  },
];
