import { CommanderError } from 'commander';
import { CrosscoatError } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { makeProgram } from './program.ts';

/**
 * Runs one command line (without the program's own name).
 * @returns the exit code: 0 done, 1 faults with `--strict`, 2 bad input, 3 a fault in
 * the program itself.
 */
export async function main(argv: readonly string[], io: Io): Promise<number> {
  let code: number = EXIT.done;
  const program = makeProgram(io, (given) => {
    code = given;
  });
  if (argv.length === 0) {
    program.outputHelp();
    return EXIT.done;
  }
  try {
    await program.parseAsync(argv, { from: 'user' });
    return code;
  } catch (error) {
    // Commander has said what is wrong by itself.
    if (error instanceof CommanderError) return error.exitCode === 0 ? EXIT.done : EXIT.badInput;
    if (error instanceof CrosscoatError && error.code !== 'internal') {
      io.err(`crosscoat: ${error.message}\n`);
      return EXIT.badInput;
    }
    const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
    io.err(`crosscoat: a fault in the program, not in your input; please report it.\n${trace}\n`);
    return EXIT.bug;
  }
}
