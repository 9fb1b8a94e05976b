/** Uncertain numbers of the model as data: value, spread, unit, source and how well the source is known. */

/** How a number came to us: seen in its source, in a careful transcription, remembered, derived by arithmetic, or assumed (calibrated). */
export type Mark = 'seen' | 'seen in a transcription' | 'from memory' | 'derived' | 'assumed';

export interface Parameter {
  readonly meaning: string;
  /** Centre of the spread: the mean of a normal, the median of a lognormal. */
  readonly centre: number;
  /** Standard deviation of the value (normal) or of its logarithm (lognormal). */
  readonly sd: number;
  readonly spread: 'normal' | 'lognormal';
  /** Values are kept within these limits, which physics or the scheme demands. */
  readonly within?: readonly [number, number];
  readonly unit: string;
  readonly source: string;
  readonly mark: Mark;
  readonly sdReason: string;
}

export type Parameters<Name extends string> = Readonly<Record<Name, Parameter>>;
export type Values<Name extends string> = Readonly<Record<Name, number>>;

/** The value that lies `z` standard deviations from a parameter's centre. */
export function valueAt(parameter: Parameter, z: number): number {
  const { centre, sd, spread, within } = parameter;
  const value = spread === 'normal' ? centre + sd * z : centre * Math.exp(sd * z);
  return within ? Math.min(within[1], Math.max(within[0], value)) : value;
}

/** One value for each parameter: its centre, or a draw when a source of standard normal numbers is given. */
export function valuesOf<Name extends string>(
  parameters: Parameters<Name>,
  normal: () => number = () => 0,
): Values<Name> {
  const values = {} as Record<Name, number>;
  for (const name in parameters) values[name] = valueAt(parameters[name], normal());
  return values;
}
