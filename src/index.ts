/** The core as a library: everything here is pure and runs in Node, a worker or a page. */
export { type Advice, advise } from './core/advice/advise.ts';
export { type Limit, limits, type Refusal } from './core/advice/limits.ts';
export { atTheStart, begun, progressed } from './core/advice/progress.ts';
export { createRehearsal, followAdvice, type Rehearsal } from './core/advice/rehearsal.ts';
export { type CourseColour, courseColour } from './core/colour/courseColour.ts';
export { dropColour } from './core/colour/drop.ts';
export { type Course, dryKg, inverted, pigmentMol, waterShare } from './core/pan/course.ts';
export { createHiddenPan } from './core/pan/hiddenPan.ts';
export { defaultKit, type Kit, kitRanges } from './core/pan/kit.ts';
export { centralValues, drawnValues, modelParameters } from './core/pan/model.ts';
export { type PreparedKit, prepareKit } from './core/pan/preparedKit.ts';
export { type SimulationOptions, simulate } from './core/pan/simulate.ts';
export { drawOf, type Forecast, summarise } from './core/planning/forecast.ts';
export { type Plan, type Planned, planFor } from './core/planning/plan.ts';
export { defaultRequest, type PlanRequest, requestRanges } from './core/planning/request.ts';
export { normalNumbers } from './core/reactions/normal.ts';
export { createTwin, type Twin } from './core/twin/twin.ts';
export { parseQuantity } from './core/units/parseQuantity.ts';
