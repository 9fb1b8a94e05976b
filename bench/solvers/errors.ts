/** How far two courses over the same deeds lie apart, in what matters. */
import { place } from '../../src/core/pan/state.ts';

interface Outcome {
  readonly states: readonly Float64Array[];
  readonly temperatureC: Float64Array;
}

const column = (index: number) => (outcome: Outcome) => outcome.states[index];

const judged: Readonly<Record<string, (outcome: Outcome) => Float64Array>> = {
  temperature: ({ temperatureC }) => temperatureC,
  water: column(place.waterKg),
  sucrose: column(place.sucrose),
  pigment: ({ states }) => states[place.melanoidin].map((value, i) => value + states[place.caramel][i]),
  acid: column(place.acid),
  enthalpy: column(place.enthalpyJ),
};

export interface Difference {
  readonly name: string;
  /** Greatest difference over time as a share of the greatest value. */
  readonly share: number;
}

/** The judged column that differs most. */
export function worstDifference(outcome: Outcome, reference: Outcome): Difference {
  const all = Object.entries(judged).map(([name, read]) => {
    const [a, b] = [read(outcome), read(reference)];
    const size = b.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
    const off = b.reduce((most, value, i) => Math.max(most, Math.abs(value - a[i])), 0);
    return { name, share: off / size };
  });
  return all.reduce((worst, each) => (each.share > worst.share ? each : worst));
}
