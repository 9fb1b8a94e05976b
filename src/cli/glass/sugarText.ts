/** How a sugar is written on the command line: `mass=800g ebc=120 solids=98 added=late`, in any order. */
import { type Input, mapped, number, percent, quantity, word } from '../input.ts';
import { suggestion } from '../nearest.ts';
import { misused, Stop } from '../stop.ts';

const bases = {
  '10ww': 'tenPercentByWeight',
  '10wv': 'tenPercentByVolume',
  undiluted: 'asIs',
} as const;

const text: Input<string> = {
  placeholder: '<text>',
  meaning: 'what it is called',
  required: false,
  read: (written) => written,
};

/** The two gravities of a forced ferment. */
const forced: Input<readonly [number, number]> = {
  placeholder: '<OG/FG>',
  meaning: 'gravities of a forced ferment of the sugar, as 1.040/1.003',
  required: false,
  read: (written, flag) => {
    const [first, last, further] = written.split('/');
    const gravity = number('', [0.985, 1.1]);
    if (first === undefined || last === undefined || further !== undefined) {
      misused(flag, written, 'is not understood', 'two gravities, as 1.040/1.003');
    }
    return [gravity.read(first, flag), gravity.read(last, flag)];
  },
};

export const sugarInputs = {
  name: text,
  lot: { ...text, placeholder: '<file>', meaning: 'a lot of the shelf as JSON: extract and colour are its own' },
  mass: quantity('mass', 'how much; left out when it is asked for', 'kg', [0, 2000]),
  added: word('when it goes in', ['kettle', 'late', 'fermenter']),
  solids: percent('dry solids, per cent', [0.5, 1]),
  points: number('instead: gravity points of a pound in a US gallon', [23, 46.2]),
  degrees: number('instead: litre degrees per kg', [193, 386]),
  ebc: number('EBC of its solution', [0, 25_000]),
  srm: number('instead: SRM of its solution', [0, 12_700]),
  icumsa: number('instead: ICUMSA units', [0, 1e6]),
  basis: mapped(word('solution that the EBC or SRM is of', ['10ww', '10wv', 'undiluted']), (each) => bases[each]),
  inverted: percent('share of its sucrose that is inverted, per cent; any if left out'),
  ferments: percent('share of its solids that yeast takes, per cent; by its colour if left out'),
  forced,
  alkali: word('what it was cooked with', ['naoh', 'lime', 'none']),
  dose: number('of alkali for each kg of sugar in the pan', [0, 12], 'g/kg'),
  price: number('of a kg, in your own currency', [0, 10_000]),
} as const satisfies Record<string, Input<unknown>>;

export type SugarField = keyof typeof sugarInputs;
export type SugarGiven = { readonly [K in SugarField]?: (typeof sugarInputs)[K] extends Input<infer T> ? T : never };

const fields = Object.keys(sugarInputs) as SugarField[];

/** @param flag the option that it was given for, which every refusal names together with the field */
export function sugarGiven(written: string, flag: string): SugarGiven {
  const given: Partial<Record<SugarField, unknown>> = {};
  for (const part of written.trim().split(/[\s,;]+(?=[a-z]+=)/)) {
    const [key = '', ...rest] = part.split('=');
    const field = fields.find((each) => each === key);
    if (field === undefined || rest.length === 0) {
      misused(flag, part, `is not field=value${suggestion(key, fields)}`, fields.join(', '));
    }
    if (field in given) misused(flag, part, 'is said twice', 'each field once');
    given[field] = sugarInputs[field].read(rest.join('=').trim(), `${flag} ${field}`);
  }
  return given as SugarGiven;
}

/** Refuses fields that say the same thing, or contradict each other. */
export function onlyOneOf(given: SugarGiven, names: readonly SugarField[], flag: string): SugarField | undefined {
  const said = names.filter((name) => given[name] !== undefined);
  if (said.length > 1) {
    const message = `${flag}: give one of ${names.join(', ')}, not ${said.join(' and ')}`;
    throw new Stop({ kind: 'misused', field: `${flag} ${said[1]}`, message });
  }
  return said[0];
}

export function sugarHelp(): string {
  const width = Math.max(...fields.map((field) => field.length + sugarInputs[field].placeholder.length)) + 1;
  return fields
    .map((field) => {
      const { placeholder, meaning } = sugarInputs[field];
      return `  ${`${field}=${placeholder}`.padEnd(width)}  ${meaning}`;
    })
    .join('\n');
}
