/** In what two cooks can differ, and a cook that has some of it from the one and the rest from the other. */
import type { Kit } from '../pan/kit.ts';
import type { AlkaliPart, Charge, Step } from '../pan/steps.ts';
import type { AsCooked } from './asCooked.ts';

/** Alkali with the acid of the pale route; water with its hardness; amounts count for each kg of sugar. */
export const factorNames = ['alkali', 'holdTime', 'temperature', 'water', 'nitrogen', 'kit', 'batch'] as const;
export type Factor = (typeof factorNames)[number];

/** A cook to be cooked by the model. */
export interface Mixed {
  readonly kit: Kit;
  readonly charge: Charge;
  readonly steps: readonly Step[];
}

/** @param from which of the two each factor is taken from */
export function mixed(from: (factor: Factor) => AsCooked): Mixed {
  const sucroseKg = from('batch').charge.sucroseKg;
  const amount = (factor: Factor, name: keyof Charge) =>
    (from(factor).charge[name] / from(factor).charge.sucroseKg) * sucroseKg;
  const charge = {
    sucroseKg,
    waterKg: amount('water', 'waterKg'),
    maltExtractKg: amount('nitrogen', 'maltExtractKg'),
    citricAcidKg: amount('alkali', 'citricAcidKg'),
  };
  // What a kit is called changes nothing.
  const kit = { ...from('kit').kit, name: '', water: from('water').kit.water };
  return { kit, charge, steps: steps(from, sucroseKg) };
}

/** Which steps there are and how long they are held comes from one cook; bands, alkali and dial from where each factor is taken. */
function steps(from: (factor: Factor) => AsCooked, sucroseKg: number): readonly Step[] {
  const bands = named(from('temperature').steps);
  const dials = named(from(isOneKit(from('temperature'), from('kit')) ? 'temperature' : 'kit').steps);
  const dosed = from('alkali');
  const doses = named(dosed.steps);
  const scale = sucroseKg / dosed.charge.sucroseKg;
  const held = [...named(from('holdTime').steps)];
  const homeless = [...doses].flatMap(([name, { alkali }]) => (held.some(([other]) => other === name) ? [] : alkali));
  const browns = held.findIndex(([, { kind }]) => kind === 'brown');
  const home = browns < 0 ? held.findLastIndex(([, { end }]) => 'heldMinutes' in end) : browns;
  return held.map(([name, step], i) => {
    const band = bands.get(name) ?? step;
    const dial = dials.get(name) ?? step;
    const parts = [...(doses.get(name)?.alkali ?? []), ...(i === home ? homeless : [])];
    return {
      ...step,
      bandC: band.bandC,
      end: 'reachedC' in step.end && 'reachedC' in band.end ? band.end : step.end,
      approachNotch: dial.approachNotch,
      holdNotch: dial.holdNotch,
      waitS: step.letDown ? step.waitS : Math.max(step.waitS, doses.get(name)?.waitS ?? 0),
      alkali: parts.map((part) => scaled(part, scale)),
    };
  });
}

/** On one kit the dial is set by how hot it shall be. */
function isOneKit({ kit: one }: AsCooked, { kit: other }: AsCooked): boolean {
  const told = (kit: Kit) => JSON.stringify({ ...kit, name: '', water: null });
  return told(one) === told(other);
}

/** By their kind, and which of that kind they are. */
function named(list: readonly Step[]): Map<string, Step> {
  const counts = new Map<string, number>();
  return new Map(
    list.map((step) => {
      const nth = (counts.get(step.kind) ?? 0) + 1;
      counts.set(step.kind, nth);
      return [`${step.kind} ${nth}`, step];
    }),
  );
}

const scaled = (part: AlkaliPart, by: number): AlkaliPart => ({
  ...part,
  alkaliKg: part.alkaliKg * by,
  waterKg: part.waterKg * by,
});

/** The factors in which two cooks are not the same, to six figures: amounts for each kg bear the rounding of a division. */
export function differing(a: AsCooked, b: AsCooked): readonly Factor[] {
  const told = (mix: Mixed) =>
    JSON.stringify(mix, (_, value) => (typeof value === 'number' ? Number(value.toPrecision(6)) : value));
  const base = told(mixed(() => a));
  return factorNames.filter((name) => told(mixed((factor) => (factor === name ? b : a))) !== base);
}
