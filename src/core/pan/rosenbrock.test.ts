import { expect, test } from 'vitest';
import { acceptedStep, createStageRoom, createStepper, type System } from './rosenbrock.ts';

/** Van der Pol-like pair without any Jacobian: the W-method must keep its order even then. */
const oscillator: System = {
  size: 2,
  scale: new Float64Array([1, 1]),
  derivatives(y, dy) {
    dy[0] = y[1];
    dy[1] = (1 - y[0] * y[0]) * y[1] - y[0];
  },
  factor(_y, d) {
    diagonal = d;
  },
  solve(r) {
    for (let i = 0; i < 2; i++) r[i] /= diagonal;
  },
};
let diagonal = 1;

/** One linear equation, y' = -1000 (y - 1), with its exact Jacobian. */
const stiff: System = {
  size: 1,
  scale: new Float64Array([1]),
  derivatives(y, dy) {
    dy[0] = -1000 * (y[0] - 1);
  },
  factor(_y, d) {
    diagonal = d + 1000;
  },
  solve(r) {
    r[0] /= diagonal;
  },
};

function run(system: System, start: number[], endS: number, steps: number): Float64Array {
  const stepper = createStepper(system, 1);
  let y: Float64Array = Float64Array.from(start);
  let next: Float64Array = new Float64Array(y.length);
  const f = new Float64Array(y.length);
  for (let i = 0; i < steps; i++) {
    system.derivatives(y, f);
    stepper.step(y, f, endS / steps, next);
    [y, next] = [next, y];
  }
  return y;
}

test('the measured order of convergence is 3, also without a Jacobian', () => {
  const exact = run(oscillator, [1, 0.5], 2, 6400);
  const error = (steps: number) => Math.abs(run(oscillator, [1, 0.5], 2, steps)[0] - exact[0]);
  const orders = [Math.log2(error(50) / error(100)), Math.log2(error(100) / error(200))];
  console.log(`measured orders: ${orders.map((o) => o.toFixed(2)).join(', ')}`);
  for (const order of orders) {
    expect(order).toBeGreaterThan(2.7);
    expect(order).toBeLessThan(3.6);
  }
});

test('a stiff decay stays bounded and lands on its limit with steps fifty times its time constant', () => {
  expect(Math.abs(run(stiff, [5], 5, 100)[0] - 1)).toBeLessThan(1e-6);
});

test('steppers that share scratch, and take turns, step exactly as with scratch of their own', () => {
  const room = createStageRoom(2);
  const shared = [createStepper(oscillator, 1, room), createStepper(stiff, 1, room)];
  const apart = [createStepper(oscillator, 1), createStepper(stiff, 1)];
  const turns = ([first, second]: typeof shared) => {
    const states = [Float64Array.of(1, 0.5), Float64Array.of(5)];
    for (let i = 0; i < 20; i++) {
      [first, second].forEach((stepper, which) => {
        const system = which === 0 ? oscillator : stiff;
        const f = new Float64Array(system.size);
        const next = new Float64Array(system.size);
        system.derivatives(states[which], f);
        stepper.step(states[which], f, 0.1, next);
        states[which] = next;
      });
    }
    return states;
  };
  expect(turns(shared)).toEqual(turns(apart));
});

test('a step into states that do not exist is taken back, though the block is linearised about the state evaluated last', () => {
  let slope = 0;
  const draining: System = {
    size: 1,
    scale: new Float64Array([1]),
    derivatives(y, dy) {
      dy[0] = -Math.sqrt(y[0]);
      slope = 0.5 / dy[0];
    },
    factor(_y, d) {
      diagonal = d - slope;
    },
    solve(r) {
      r[0] /= diagonal;
    },
  };
  const y = Float64Array.of(1);
  const f = new Float64Array(1);
  const next = new Float64Array(1);
  draining.derivatives(y, f);
  const { takenS } = acceptedStep(createStepper(draining, 1e-4), y, f, 60, next);
  // y = (1 - t/2)^2 until it is empty.
  expect(Math.abs(next[0] - (1 - takenS / 2) ** 2)).toBeLessThan(1e-3);
  expect(takenS).toBeGreaterThan(0.05);
});
