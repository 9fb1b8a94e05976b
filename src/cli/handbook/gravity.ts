/** Handbook: degrees Plato and specific gravity. */
import { gravityFromPlato, platoFromGravity } from '../../core/beer/plato.ts';
import { number } from '../input.ts';
import { entry } from './entry.ts';
import { between, give } from './range.ts';

const source = 'ASBC polynomial to 1.0788, NBS Circular C440 (1942) above';
const errorPlato = 0.004;

export const gravityEntries = [
  entry({
    name: 'plato',
    meaning: 'extract in degrees Plato (per cent of the mass, as sucrose) from specific gravity 20/20 °C',
    unit: '%',
    valid: 'gravity 0.985 to 1.17874',
    source,
    mark: 'seen',
    example: '--gravity 1.0484',
    inputs: { gravity: number('specific gravity 20/20 °C', [0.985, 1.17874]) },
    compute: ({ gravity }) => give(platoFromGravity(gravity), errorPlato, 'stated error'),
  }),
  entry({
    name: 'gravity',
    meaning: 'specific gravity 20/20 °C from degrees Plato',
    unit: '1',
    valid: '-3.87 to 40 degrees Plato',
    source,
    mark: 'seen',
    example: '--plato 12',
    inputs: { plato: number('degrees Plato', [-3.87, 40]) },
    compute: ({ plato }) => ({
      ...between(
        gravityFromPlato(plato),
        gravityFromPlato(Math.max(-3.87, plato - errorPlato)),
        gravityFromPlato(Math.min(40, plato + errorPlato)),
      ),
      rangeMeans: 'stated error' as const,
    }),
  }),
];
