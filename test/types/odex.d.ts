// Types of the oracle that the pan's integrator is checked against; the package's own sources do not pass strict checks.

export type Derivative = (x: number, y: number[]) => number[];
export type OutputFunction = (
  step: number,
  xBefore: number,
  x: number,
  y: number[],
  dense?: (component: number, x: number) => number,
) => boolean | undefined;

export class Solver {
  constructor(dimension: number);
  absoluteTolerance: number | number[];
  relativeTolerance: number | number[];
  denseOutput: boolean;
  initialStepSize: number;
  maxStepSize: number;
  maxSteps: number;
  grid(spacing: number, out: (x: number, y: number[]) => unknown): OutputFunction;
  solve(
    derivative: Derivative,
    x: number,
    y: number[],
    xEnd: number,
    output?: OutputFunction,
  ): { y: number[]; outcome: number; nStep: number; nEval: number };
}
