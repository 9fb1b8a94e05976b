/** What must be known while sugar sets and when it is broken; each with an id, its source and a date, as Care's statements. */
import { anywhere } from '../../../../core/advice/safety.ts';
import type { Caution } from '../../../../core/planning/handling.ts';

const fromMemory = 'Kitchen practice (from memory)';

export const whileItSets: readonly Caution[] = [
  {
    id: 'CARE-SET-1',
    head: 'It stays hot far longer than it looks.',
    text: 'Don’t touch, tilt or taste it: the middle stays hot under a set skin. Hot sugar sticks; 60 °C (140 °F) already burns deep in about 5 s.',
    source:
      'Children’s hospital column on scalds, after Moritz & Henriques 1947, Am. J. Pathol. 23:695 (seen second-hand)',
    ...anywhere,
  },
  {
    id: 'CARE-SET-2',
    head: 'Children and pets at least 1 m away',
    text: 'until it is hand-warm all through.',
    source: 'NFPA cooking safety tips, as printed by newspapers (seen second-hand)',
    ...anywhere,
  },
];

export const castOnly: readonly Caution[] = [
  {
    id: 'CARE-SET-3',
    head: 'Into the freezer only when it is hand-warm all through.',
    text: 'Hotter, it cracks what it stands on and thaws what is beside it.',
    source: 'Common practice, no source',
    ...anywhere,
  },
];

export const whenBreaking: readonly Caution[] = [
  {
    id: 'CARE-BREAK-1',
    head: 'Shards are as sharp as glass, and fly.',
    text: 'Eye protection and gloves; wrap the slab in a thick cloth before you strike it, face away, nobody beside you.',
    source: fromMemory,
    ...anywhere,
  },
  {
    id: 'CARE-BREAK-2',
    head: 'Small children choke on hard pieces.',
    text: 'Sweep up the splinters, and keep the sugar out of reach.',
    source: fromMemory,
    ...anywhere,
  },
];
