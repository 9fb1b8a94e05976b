/** How a command ends other than done: one error for everything a person or a script can act on, with its exit code. */
import type { Command } from 'commander';

/** What is wrong, by kind, and the exit code of each. */
export const exitCodes = { failed: 1, misused: 2, outsideRange: 2, refused: 7 } as const;

export interface Problem {
  readonly kind: keyof typeof exitCodes;
  readonly message: string;
  /** The option or the file's field that it is about, and what was given. */
  readonly field?: string;
  readonly value?: string;
  readonly allowed?: string;
  /** Limits of safety that the request breaks. */
  readonly refusals?: readonly { readonly limit: string; readonly field: string; readonly message: string }[];
}

export class Stop extends Error {
  override readonly name = 'Stop';
  readonly problem: Problem;

  constructor(problem: Problem) {
    super(problem.message);
    this.problem = problem;
  }
}

/** Ends as misused over what was given for an option. */
export function misused(field: string, value: string, trouble: string, allowed: string): never {
  throw new Stop({
    kind: 'misused',
    field,
    value,
    allowed,
    message: `${field}: '${value}' ${trouble}; allowed: ${allowed}`,
  });
}

/** An action whose problems go to stderr, as one line of JSON when `--json` was asked for, and to the exit code. */
export function stopping<Options extends { readonly json?: boolean | undefined }>(
  run: (options: Options, command: Command) => void | Promise<void>,
) {
  return async (_: unknown, command: Command): Promise<void> => {
    // A parent takes up options of its name first, wherever they stand.
    const options = command.optsWithGlobals() as Options;
    try {
      await run(options, command);
    } catch (error) {
      if (!(error instanceof Stop)) throw error;
      console.error(options.json ? JSON.stringify({ error: error.problem }) : error.message);
      process.exitCode = exitCodes[error.problem.kind];
    }
  };
}
