/** Which dilution to make when one is too dark or too pale for a picture, in steps that a measuring glass gives. */
import type { MadeUp } from '../note.ts';

const steps = [1.5, 2, 3, 4, 5, 6, 8, 10] as const;
/** Thicker than this, g/mL, a syrup is too stiff to mix and bends light. */
const thickest = 0.4;

export interface NextDilution {
  readonly says: string;
  /** The dilution so made; none where another glass is the better way. */
  readonly made: MadeUp | undefined;
}

/** @param thinBy how many times weaker it should be; less than 1 for stronger */
export function nextDilution({ sugarG, totalMl, fold }: MadeUp, thinBy: number): NextDilution {
  if (thinBy >= 1) {
    const by = steps.find((step) => step >= thinBy - 1e-9) ?? 10;
    const says = `Thin it ${by} fold: 10 mL of it, made up to ${10 * by} mL with water.`;
    return { says, made: { sugarG, totalMl, fold: Number((fold * by).toPrecision(6)) } };
  }
  const by = steps.find((step) => step >= 1 / thinBy - 1e-9) ?? 10;
  if (fold >= by) {
    const less = Number((fold / by).toPrecision(3));
    const says = less === 1 ? 'Take it as it was before it was thinned again.' : `Thin it again only ${less} fold.`;
    return { says, made: { sugarG, totalMl, fold: less } };
  }
  const stronger = Number(((sugarG * by) / fold).toPrecision(3));
  if (stronger > thickest * totalMl)
    return { says: 'It can hardly be made stronger: take a wider glass, or look down a taller one.', made: undefined };
  return {
    says: `Make it ${by} times as strong: ${stronger} g of the sugar, made up to ${totalMl} mL.`,
    made: { sugarG: stronger, totalMl, fold: 1 },
  };
}
