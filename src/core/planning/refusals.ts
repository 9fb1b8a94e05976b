/** What a request may not ask for, because it could hurt someone: each refusal names the limit and what is allowed. */
import { alkaliBlockedBy, limits, type Refusal } from '../advice/limits.ts';
import type { Kit } from '../pan/kit.ts';
import type { Amounts } from './amounts.ts';
import type { PanFit } from './panFit.ts';
import type { PlanRequest } from './request.ts';

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
  if (request.route === 'deep' && request.roastC + 3 > limits.roastTemperature.value) {
    refused.push({
      limit: limits.roastTemperature.id,
      field: 'roastC',
      message: `a roast at ${request.roastC} C may touch ${request.roastC + 3} C; allowed is ${limits.roastTemperature.value} C, so ask for ${limits.roastTemperature.value - 3} C at most: ${limits.roastTemperature.reason}`,
    });
  }
  if (amounts.alkali) refused.push(...alkaliRefusals(request, kit, amounts.alkali.equivalents / sucroseKg));
  return refused;
}

function alkaliRefusals(request: PlanRequest, kit: Kit, eqPerKg: number): Refusal[] {
  const refused: Refusal[] = [];
  const { alkaliPerSugar, alkaliTemperature, solutionStrength } = limits;
  if (alkaliBlockedBy.includes(kit.pan.material)) {
    const why =
      kit.pan.material === 'aluminium'
        ? 'alkali dissolves aluminium and gives off hydrogen'
        : 'alkali may strip a coating of unknown kind';
    refused.push({
      limit: 'LIM-PAN',
      field: 'pan.material',
      message: `${why}; use stainless steel or sound enamel, or ask for the pale route`,
    });
  }
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
