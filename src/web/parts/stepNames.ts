import type { StepKind } from '../../core/pan/steps.ts';

/** The steps as they are spoken of. */
export const stepNames: Readonly<Record<StepKind, string>> = {
  dissolve: 'Dissolve',
  climb: 'Climb',
  invert: 'Invert',
  brown: 'Brown',
  roast: 'Roast',
  cast: 'Cast',
  letDown: 'Let down',
};
