/** From what was written of a sugar to the sugar: a lot by its record, or one that was bought, by what its packet prints. */
import type { LotRecord } from '../../api/lot.ts';
import { boughtSugar } from '../../core/beer/boughtSugar.ts';
import { solidsFromLitreDegrees, solidsFromPoints } from '../../core/beer/extractYield.ts';
import { fermentabilityFromForcedFerment } from '../../core/beer/fermentability.ts';
import type { WhenAdded } from '../../core/beer/glass.ts';
import { mineralsOfAlkali, noMinerals } from '../../core/beer/minerals.ts';
import { platoFromGravity } from '../../core/beer/plato.ts';
import { requireSugar, type Sugar } from '../../core/beer/sugar.ts';
import { type GlassLot, sugarOfLot } from '../../core/beer/sugarOfLot.ts';
import { certain } from '../../core/beer/uncertain.ts';
import { expectedHueIndex } from '../../core/colour/hueIndex.ts';
import { specificFromRating } from '../../core/colour/rating.ts';
import { ebcFromSrm, specificFromIcumsa } from '../../core/colour/scales.ts';
import type { AlkaliGiven } from '../../core/lot/lot.ts';
import type { Range } from '../../core/twin/range.ts';
import { checked, readJson } from '../plan/readDocument.ts';
import { Stop } from '../stop.ts';
import { onlyOneOf, type SugarField, type SugarGiven, sugarGiven } from './sugarText.ts';

export interface WrittenSugar {
  readonly sugar: Sugar;
  /** None when it is asked for. */
  readonly massKg: number | undefined;
  readonly added: WhenAdded;
}

/** What a share that somebody measured may be off by (assumed). */
const measuredReach = 0.02;
/** Inversion that nobody told of, for the 5 % that it moves minerals by. */
const unknownInverted = 0.5;
/** Hue index to turn ICUMSA units by when nothing else is known: at 420 nm it moves the colour by 2 % (see `scales.ts`). */
const usualHueIndex = expectedHueIndex(0.03, 0.5).mean;
const ofLot = ['solids', 'points', 'degrees', 'ebc', 'srm', 'icumsa', 'basis', 'inverted'] as const;

export async function sugarFrom(written: string, flag: string): Promise<WrittenSugar> {
  const given = sugarGiven(written, flag);
  onlyOneOf(given, ['ferments', 'forced'], flag);
  try {
    const sugar = given.lot === undefined ? bought(given, flag) : await ofShelf(given, given.lot, flag);
    requireSugar(sugar);
    return { sugar, massKg: given.mass, added: given.added ?? 'kettle' };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new Stop({ kind: 'outsideRange', field: flag, value: written, message: `${flag}: ${error.message}` });
  }
}

async function ofShelf(given: SugarGiven, file: string, flag: string): Promise<Sugar> {
  for (const field of ofLot) {
    if (given[field] !== undefined) throw stop(flag, field, 'is known of a lot already: leave it out');
  }
  const { lotRecordSchema, newLotSchema } = await import('../../api/lot.ts');
  const document = readJson(file, `${flag} lot`);
  const isRecord = typeof document === 'object' && document !== null && 'lot' in document;
  const lot: GlassLot = isRecord
    ? glassLot(await checked(lotRecordSchema, document, `${flag} lot`))
    : await checked(newLotSchema, document, `${flag} lot`);
  const sugar = sugarOfLot(lot, {
    alkali: alkaliOf(given, flag),
    fermentable: fermentableOf(given),
    pricePerKg: given.price,
  });
  return { ...sugar, name: given.name ?? sugar.name };
}

/** A lot with what was noted of it. */
function glassLot({ lot, notes }: LotRecord): GlassLot {
  return { ...lot, notes: notes.map(({ note }) => note) };
}

function bought(given: SugarGiven, flag: string): Sugar {
  const solids = solidsOf(given, flag);
  const alkali = alkaliOf(given, flag);
  return boughtSugar({
    name: given.name ?? 'bought sugar',
    solids,
    specific430AsIs: colourOf(given, solids, flag),
    inverted: given.inverted,
    fermentable: fermentableOf(given),
    minerals:
      alkali &&
      (alkali.gramsPerKgSucrose > 0
        ? mineralsOfAlkali(alkali, certain(solids), given.inverted ?? unknownInverted)
        : noMinerals),
    pricePerKg: given.price,
  });
}

function solidsOf(given: SugarGiven, flag: string): number {
  const said = onlyOneOf(given, ['solids', 'points', 'degrees'], flag);
  if (said === undefined) throw stop(flag, 'solids', 'is missing: say solids, points or degrees, or lot');
  if (given.points !== undefined) return solidsFromPoints(given.points);
  if (given.degrees !== undefined) return solidsFromLitreDegrees(given.degrees);
  return given.solids ?? Number.NaN;
}

/** Specific absorbance of the sugar as it is. */
function colourOf(given: SugarGiven, solids: number, flag: string): number {
  const said = onlyOneOf(given, ['ebc', 'srm', 'icumsa'], flag);
  if (said === undefined) throw stop(flag, 'ebc', 'is missing: say ebc, srm or icumsa, or lot');
  if (given.icumsa !== undefined) return solids * specificFromIcumsa(given.icumsa, usualHueIndex);
  const ebc = given.srm === undefined ? (given.ebc ?? Number.NaN) : ebcFromSrm(given.srm);
  return specificFromRating(ebc, given.basis ?? 'tenPercentByWeight');
}

function fermentableOf({ ferments, forced }: SugarGiven): Range | undefined {
  if (forced !== undefined) {
    return fermentabilityFromForcedFerment(platoFromGravity(forced[0]), platoFromGravity(forced[1]));
  }
  if (ferments === undefined) return undefined;
  return { low: Math.max(0, ferments - measuredReach), mid: ferments, high: Math.min(1, ferments + measuredReach) };
}

function alkaliOf({ alkali, dose }: SugarGiven, flag: string): AlkaliGiven | undefined {
  if (alkali === undefined) {
    if (dose !== undefined) throw stop(flag, 'dose', 'is of use with alkali=naoh or alkali=lime alone');
    return undefined;
  }
  if (alkali === 'none') return { substance: 'sodiumHydroxide', gramsPerKgSucrose: 0 };
  if (dose === undefined) throw stop(flag, 'dose', 'is missing: g of alkali for each kg of sugar in the pan');
  return { substance: alkali === 'naoh' ? 'sodiumHydroxide' : 'calciumHydroxide', gramsPerKgSucrose: dose };
}

function stop(flag: string, field: SugarField, trouble: string): Stop {
  return new Stop({ kind: 'misused', field: `${flag} ${field}`, message: `${flag} ${field} ${trouble}` });
}
