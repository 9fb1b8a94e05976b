/** From a name or a spelling to its unit. */
import type { Dimension } from './dimension.ts';
import { allUnits, type Unit, type UnitName } from './units.ts';

export function unitsOf(dimension: Dimension): readonly Unit[] {
  return allUnits.filter((unit) => unit.dimension === dimension);
}

export function unitNamed(name: UnitName): Unit {
  const unit = allUnits.find((each) => each.name === name);
  if (unit === undefined) throw new RangeError(`unit ${name} is not in the table`);
  return unit;
}

/** The unit that a spelling means within a dimension: exact case first, then regardless of case; points and degree signs don't count. */
export function unitSpelled(spelling: string, dimension: Dimension): Unit | undefined {
  const candidates = unitsOf(dimension);
  const tidy = tidied(spelling);
  const small = tidy.toLowerCase();
  return (
    candidates.find(({ spellings }) => spellings.includes(tidy)) ??
    candidates.find(({ spellings }) => spellings.some((each) => tidied(each).toLowerCase() === small))
  );
}

/** The first dimension that has a unit so spelled: for telling a person that teaspoons are no mass. */
export function dimensionSpelled(spelling: string): Dimension | undefined {
  return allUnits.find(({ dimension }) => unitSpelled(spelling, dimension) !== undefined)?.dimension;
}

function tidied(spelling: string): string {
  return spelling
    .replace(/^\s*([°º˚]|deg(rees?)?(?![a-z]))/i, '')
    .normalize('NFKC')
    .replace(/^°|\.(?=\s|$)/g, '')
    .trim()
    .replace(/\s+/g, ' ');
}
