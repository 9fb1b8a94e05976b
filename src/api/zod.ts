/**
 * The validator as every part of Umberpan uses it: without run-time code generation, which the pages' content security policy
 * refuses, and with our words where a schema has none of its own.
 */
import { z } from 'zod';
import { refusalOf } from './refusalWords.ts';

z.config({ jitless: true, customError: refusalOf });

export { z };
