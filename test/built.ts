// Before any test: what is built is what the sources say, so that commands and pages are tested as they are now.
import { buildOutputs } from '../scripts/setup/build.mjs';

export const setup = buildOutputs;
