/** What hue index a sugar is given before a photo or a spectrum tells: a judgement, kept as parameters. */
import type { Parameters } from '../reactions/parameter.ts';

const judgement =
  'judgement between one sheet of plain caramel (H 7.0), average beer (5.3) and darker caramels (3.5 to 5)';

export const hueIndexParameters = {
  plain: {
    meaning: 'hue index of pigment from sugar alone',
    centre: 6.5,
    sd: 0.7,
    spread: 'normal',
    within: [3, 8],
    unit: '1',
    source: judgement,
    mark: 'assumed',
    sdReason: 'Class I caramels are said to span 6.5 to 7.5, kitchen sugars are browned with amino acids too',
  },
  maillard: {
    meaning: 'hue index of pigment that is mostly melanoidin',
    centre: 5.8,
    sd: 0.7,
    spread: 'normal',
    within: [3, 8],
    unit: '1',
    source: judgement,
    mark: 'assumed',
    sdReason: 'between plain caramel and average beer',
  },
  darkEnd: {
    meaning: 'hue index that very dark roasts move towards',
    centre: 5,
    sd: 0.7,
    spread: 'normal',
    within: [3, 8],
    unit: '1',
    source: 'caramels of higher tinctorial power have a lower hue index (seen quoted, without numbers)',
    mark: 'assumed',
    sdReason: 'Class III and IV caramels are remembered at 3.5 to 5',
  },
  halfway: {
    meaning: 'specific absorbance at which half of that move is made',
    centre: 0.3,
    sd: 0.5,
    spread: 'lognormal',
    unit: 'L/(g cm)',
    source: 'kitchen sugars end near 0.12, bought plain caramel near 1',
    mark: 'assumed',
    sdReason: 'nobody has published hue indices of kitchen sugars',
  },
} as const satisfies Parameters<string>;

/**
 * Hue index expected of a cooked sugar, with its standard deviation.
 *
 * @param specificAbsorbance at 430 nm, L/(g cm), 0 or more
 * @param maillardShare share of the pigment that came from sugar with amino acids, 0 to 1
 * All assumed: replace by what photos of the user's own sugars say.
 */
export function expectedHueIndex(specificAbsorbance: number, maillardShare: number): { mean: number; sd: number } {
  if (!(specificAbsorbance >= 0))
    throw new RangeError(`specific absorbance ${specificAbsorbance} L/(g cm) is not 0 or more`);
  if (!(maillardShare >= 0 && maillardShare <= 1))
    throw new RangeError(`Maillard share ${maillardShare} is not within 0 to 1`);
  const { plain, maillard, darkEnd, halfway } = hueIndexParameters;
  const pale = plain.centre + maillardShare * (maillard.centre - plain.centre);
  const moved = specificAbsorbance / (specificAbsorbance + halfway.centre);
  return { mean: pale + moved * (darkEnd.centre - pale), sd: plain.sd };
}
