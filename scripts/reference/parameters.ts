/** Every uncertain number of the model. */
import { beerParameters } from '../../src/core/beer/parameters.ts';
import { hueIndexParameters } from '../../src/core/colour/hueIndex.ts';
import { defaultKit } from '../../src/core/pan/kit.ts';
import { kitParameters } from '../../src/core/pan/kitParameters.ts';
import type { Parameter, Parameters } from '../../src/core/reactions/parameter.ts';
import { reactionParameters } from '../../src/core/reactions/parameters.ts';
import { page, table } from './markdown.ts';

export function parametersPage(): string {
  return page(
    'Parameters',
    'Every uncertain number of the model: its centre and spread, where it comes from, and how well that is known. *Normal* spreads are given by their standard deviation, *lognormal* ones by that of the logarithm. What a mark means is told in [how far to trust it](../explanation/trust.md).',
    [
      section('Reactions', reactionParameters),
      section(
        'Stove, pan, spoon and thermometer (a ceramic ring and a digital thermometer)',
        kitParameters(defaultKit),
      ),
      section('Hue of the pigment', hueIndexParameters),
      section('Beer', beerParameters),
    ],
  );
}

function section(title: string, parameters: Parameters<string>): string {
  const rows = Object.entries(parameters).map(([name, parameter]) => [
    `\`${name}\``,
    parameter.meaning,
    centreOf(parameter),
    spreadOf(parameter),
    parameter.mark,
    `${parameter.source}. Spread: ${parameter.sdReason}`,
  ]);
  return `## ${title}\n\n${table(['name', 'what it is', 'centre', 'spread', 'mark', 'source'], rows)}`;
}

function centreOf({ centre, unit }: Parameter): string {
  const digits = Number(centre.toPrecision(4));
  return unit === '1' ? String(digits) : `${digits} ${unit}`;
}

function spreadOf({ sd, spread, within }: Parameter): string {
  const limits = within ? `, within ${within.join(' to ')}` : '';
  return `${spread} ${Number(sd.toPrecision(3))}${limits}`;
}
