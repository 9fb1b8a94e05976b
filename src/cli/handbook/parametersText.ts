/** Every uncertain number of the model, for a person and as a document. */
import { hueIndexParameters } from '../../core/colour/hueIndex.ts';
import { defaultKit, type StoveKind, type ThermometerKind } from '../../core/pan/kit.ts';
import { modelParameters } from '../../core/pan/model.ts';
import type { Parameter } from '../../core/reactions/parameter.ts';
import { wrapped } from '../table.ts';
import { ucumOf } from './ucum.ts';

/** Those of the reactions, of a kit with this stove and thermometer, and of colour. */
export function namedParameters(stove: StoveKind, thermometer: ThermometerKind): [string, Parameter][] {
  const kit = { ...defaultKit, stove: { ...defaultKit.stove, kind: stove }, thermometer: { kind: thermometer } };
  const colour = Object.entries<Parameter>(hueIndexParameters).map(([name, each]): [string, Parameter] => [
    `hueIndex.${name}`,
    each,
  ]);
  return [...Object.entries<Parameter>(modelParameters(kit)), ...colour];
}

/** `mean` is that of the spread; `sd` is of the value, or of its natural logarithm when the spread is lognormal. */
export function parameterDocument([name, parameter]: [string, Parameter]) {
  const { meaning, centre, sd, spread, within, unit, source, mark, sdReason } = parameter;
  const mean = spread === 'lognormal' ? centre * Math.exp(sd ** 2 / 2) : centre;
  return {
    name,
    meaning,
    mean,
    centre,
    sd,
    spread,
    ...(within && { within }),
    unit: ucumOf(unit),
    source,
    mark,
    sdReason,
  };
}

export function parameterText([name, { meaning, centre, sd, spread, unit, source, mark, sdReason }]: [
  string,
  Parameter,
]): string {
  const about = spread === 'lognormal' ? `×/÷ ${Number(Math.exp(sd).toPrecision(3))}` : `± ${sd}`;
  const prose = (text: string) => `    ${wrapped(text, '    ')}`;
  return [
    `${name}  ${centre} ${about}${unit === '1' ? '' : ` ${unit}`}  (${mark})`,
    prose(meaning),
    prose(`source: ${source}`),
    prose(`spread: ${sdReason}`),
  ].join('\n');
}
