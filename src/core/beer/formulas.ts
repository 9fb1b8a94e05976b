/** By which published formula each number of the glass is made, to be told beside it. */

export const formulas = {
  gravity: 'ASBC polynomial to 1.079, NBS Circular C440 (1942) above',
  inversion: 'sucrose takes up 5.26 % of its mass in water when it is inverted (molar masses)',
  extracts: 'real extract 0.1808 OE + 0.8192 AE (de Clerck, from memory)',
  alcohol: 'Balling 1843-65: 2.0665 g of extract for 1 g of alcohol',
  alcoholBeside: 'regression on 532 brews, Cutaia, Reid & Speers 2009, J. Inst. Brew. 115:318',
  attenuation: 'real: ASBC Beer-6B; apparent: (OE - AE)/OE',
  colour: 'absorbances add (Beer-Lambert); EBC = 25 A430 (Analytica-EBC 9.6), SRM = 12.7 A430 (ASBC Beer-10A)',
  colourBeside: 'Morey, mid-1990s: SRM = 1.4922 MCU^0.6859, fitted to malt',
  energy: 'ASBC Beer-33: 6.9 A + 4.0 (RE - 0.1) kcal/100 g (from memory)',
  carbonDioxide:
    'residual: 10 P exp(-10.73797 + 2617.25/T) (Haffmans, from memory); from sugar: Balling, to stoichiometry',
} as const;
