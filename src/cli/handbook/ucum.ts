/** Units of the core's parameters as UCUM codes, and UCUM codes as people read them. */

/** `L/(mol min)` becomes `L/(mol.min)`, `meq/(g pH)` becomes `meq/(g.[pH])`. */
export function ucumOf(unit: string): string {
  return unit.replace(/ pH\b/g, '.[pH]').replaceAll(' ', '.');
}

const shownUnits: Readonly<Record<string, string>> = {
  '1': '',
  Cel: '°C',
  '{EBC}': 'EBC',
  '{SRM}': 'SRM',
  '{IU}': 'IU',
  '[pH]': 'pH',
};

export function shownUnit(code: string): string {
  return shownUnits[code] ?? code.replaceAll('[pH]', 'pH').replaceAll('.', ' ').replace('m3', 'm³').replace('m2', 'm²');
}
