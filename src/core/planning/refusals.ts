/** What a request may not ask for, because it could hurt someone: each refusal names the limit and what is allowed. */
import { alkaliBlockedBy, limits, type Refusal, rules } from '../advice/limits.ts';
import type { Kit } from '../pan/kit.ts';
import { type Amounts, amountsFor } from './amounts.ts';
import { holdBefore } from './holds.ts';
import type { PanFit } from './panFit.ts';
import type { PlanRequest } from './request.ts';

const waterKgPerM3 = 1000;
const grams = (kg: number): string => (kg * 1000).toFixed(0);

/** Every limit that the request breaks in this kit. */
export function refusalsOf(request: PlanRequest, kit: Kit, amounts: Amounts, fit: PanFit): readonly Refusal[] {
  const refused: Refusal[] = [];
  const { sucroseKg } = amounts.charge;
  if (fit.fill > limits.fillWithDosing.value) {
    refused.push({
      limit: limits.fillWithDosing.id,
      field: 'massKg',
      message: `the syrup would fill ${(fit.fill * 100).toFixed(0)} % of the pan's height; allowed is 25 %, because ${limits.fillWithDosing.reason}. This pan takes up to ${grams((request.massKg * fit.mostSugarKg) / sucroseKg)} g of finished sugar`,
    });
  }
  if (amounts.alkali && alkaliBlockedBy.includes(kit.pan.material)) {
    const why =
      kit.pan.material === 'aluminium'
        ? 'alkali dissolves aluminium and gives off hydrogen'
        : 'alkali may strip a coating of unknown kind';
    refused.push({
      limit: rules.panMaterial.id,
      field: 'pan.material',
      message: `${why}; allowed are stainless steel and sound enamel, or the pale route`,
    });
  }
  if (kit.spoonM3 * waterKgPerM3 > limits.hotSpoonful.value) {
    refused.push({
      limit: limits.hotSpoonful.id,
      field: 'spoonM3',
      message: `a spoon of ${(kit.spoonM3 * 1e6).toFixed(1)} mL is too large; allowed is ${((limits.hotSpoonful.value / waterKgPerM3) * 1e6).toFixed(1)} mL: ${limits.hotSpoonful.reason}`,
    });
  }
  return [...refused, ...requestRefusals(request)];
}

/** The limits that the request breaks in any kit. */
export function requestRefusals(request: PlanRequest): readonly Refusal[] {
  const refused: Refusal[] = [];
  const { roastTemperature } = limits;
  if (request.route === 'deep' && request.roastC + 3 > roastTemperature.value) {
    refused.push({
      limit: roastTemperature.id,
      field: 'roastC',
      message: `a roast at ${request.roastC} C may touch ${request.roastC + 3} C; allowed is ${roastTemperature.value} C, so ask for ${roastTemperature.value - 3} C at most: ${roastTemperature.reason}`,
    });
  }
  if (request.route === 'deep' && request.roastC < request.brownC) {
    refused.push({
      limit: rules.order.id,
      field: 'roastC',
      message: `a roast at ${request.roastC} C would be cooler than the browning before it; allowed is ${request.brownC} C and more`,
    });
  }
  if (request.route !== 'pale') refused.push(...alkaliRefusals(request));
  return [...refused, ...furtherRefusals(request)];
}

/** A hold is left by heating on: to cool a syrup of over 120 C takes water that may not be thrown into it. */
function furtherRefusals(request: PlanRequest): Refusal[] {
  const { roastTemperature } = limits;
  return (request.moreHolds ?? []).flatMap(({ celsius }, at) => {
    const field = `moreHolds.${at}.celsius`;
    const before = holdBefore(at, request);
    const refused: Refusal[] = [];
    if (celsius + 3 > roastTemperature.value) {
      refused.push({
        limit: roastTemperature.id,
        field,
        message: `a hold at ${celsius} C may touch ${celsius + 3} C; allowed is ${roastTemperature.value} C, so ask for ${roastTemperature.value - 3} C at most: ${roastTemperature.reason}`,
      });
    }
    if (celsius < before) {
      refused.push({
        limit: rules.order.id,
        field,
        message: `a hold at ${celsius} C would be cooler than the one before it; allowed is ${before} C and more`,
      });
    }
    return refused;
  });
}

function alkaliRefusals(request: PlanRequest): Refusal[] {
  const refused: Refusal[] = [];
  const { alkaliPerSugar, alkaliTemperature, solutionStrength } = limits;
  const eqPerKg = amountsFor(request, 1).alkali?.equivalents ?? 0;
  if (eqPerKg > alkaliPerSugar.value + 1e-9) {
    const most = ((request.alkaliGPerKg * alkaliPerSugar.value) / eqPerKg).toFixed(1);
    refused.push({
      limit: alkaliPerSugar.id,
      field: 'alkaliGPerKg',
      message: `${request.alkaliGPerKg} g/kg is too much alkali; allowed is ${most} g for each kg of sugar: ${alkaliPerSugar.reason}`,
    });
  }
  if (request.invertC + 3 > alkaliTemperature.value) {
    refused.push({
      limit: alkaliTemperature.id,
      field: 'invertC',
      message: `alkali would go in at up to ${request.invertC + 3} C; allowed is ${alkaliTemperature.value} C, so hold at ${alkaliTemperature.value - 3} C at most: ${alkaliTemperature.reason}`,
    });
  }
  if (request.solutionStrength > solutionStrength.value + 1e-9) {
    refused.push({
      limit: solutionStrength.id,
      field: 'solutionStrength',
      message: `${(request.solutionStrength * 100).toFixed(0)} % is too strong; allowed is ${solutionStrength.value * 100} %: ${solutionStrength.reason}`,
    });
  }
  return refused;
}
