/** The validator as every part of Umberpan uses it: without run-time code generation, which the pages' content security policy refuses. */
import { z } from 'zod';

z.config({ jitless: true });

export { z };
