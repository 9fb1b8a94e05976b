/** Numbers as people write them: `1.1`, `1,1`, `3/4`, `1 1/2`, `1½`, `1 000`. */

/** `½`, `¾`, `⅜` spelled with a slash, set apart from a whole number in front of them. */
export function spellOutFractions(text: string): string {
  return text.replace(/[¼-¾⅐-⅞]/g, (sign) => ` ${sign.normalize('NFKC').replace('⁄', '/')}`);
}

const plain = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i;
const decimalComma = /^[+-]?\d*,\d+$/;
/** Read as 1.234 by half of the world and as 1234 by the other half. */
const commaOrThousand = /^[+-]?[1-9]\d{0,2},\d{3}$/;
const groupedBySpaces = /^[+-]?\d{1,3}(\s\d{3})+([.,]\d+)?$/;
const groupedByCommas = /^[+-]?\d{1,3}(,\d{3})+\.\d+$|^[+-]?\d{1,3}(,\d{3}){2,}$/;
const groupedByPoints = /^[+-]?\d{1,3}(\.\d{3})+,\d+$|^[+-]?\d{1,3}(\.\d{3}){2,}$/;
const commonFraction = /^([+-]?)(?:(\d+)\s+)?(\d+)\s?\/\s?(\d+)$/;

/**
 * The number that `text` writes, or why it can't be taken.
 *
 * A point is always the decimal sign (`1.000` is one). A comma is the decimal sign too, except where it could as well part
 * thousands: `1,250` is refused, `0,250` and `1,25` are not. Groups that can mean one thing only (`1 250`, `1,250.5`) pass.
 */
export function writtenNumber(text: string): number | { readonly trouble: string } {
  const value = valueWritten(text.trim().replace(/[\u2212\u2013]/g, '-'));
  if (typeof value !== 'number') return value;
  return Number.isFinite(value) ? value : { trouble: 'is too large, or divides by nothing' };
}

function valueWritten(text: string): number | { readonly trouble: string } {
  if (plain.test(text)) return Number(text);
  if (commaOrThousand.test(text)) {
    return {
      trouble: `may mean ${text.replace(',', '.')} or ${text.replace(',', '')}: write it with a point or without the comma`,
    };
  }
  if (decimalComma.test(text)) return Number(text.replace(',', '.'));
  if (groupedBySpaces.test(text)) return Number(text.replace(/\s/g, '').replace(',', '.'));
  if (groupedByCommas.test(text)) return Number(text.replaceAll(',', ''));
  if (groupedByPoints.test(text)) return Number(text.replaceAll('.', '').replace(',', '.'));
  const parts = commonFraction.exec(text);
  if (parts === null) return { trouble: 'is not understood' };
  const [, sign, whole = '0', above, below] = parts;
  return (sign === '-' ? -1 : 1) * (Number(whole) + Number(above) / Number(below));
}
