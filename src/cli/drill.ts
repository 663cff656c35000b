import { CrosscoatError, drillById, drillJson, drillList, DRILLS, drillText, serialiseJob, type Drill, type UnitSystem } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';

/** Options of `crosscoat drill` as commander gives them. */
export interface DrillOptions {
  readonly job?: true;
  readonly units: UnitSystem;
  readonly json?: true;
}

/** Lists the drills, or says what one asks for, or prints its job. @returns the exit code. */
export async function drill(io: Io, asked: string | undefined, options: DrillOptions): Promise<number> {
  if (asked === undefined) {
    if (options.job === true) throw new CrosscoatError('schema', '--job prints the job of one drill and none is named; give its id, such as crosscoat drill half-overlap --job');
    await io.out(options.json === true ? json(DRILLS.map(({ id, title }, i) => ({ number: i + 1, id, title }))) : drillList(DRILLS));
    return EXIT.done;
  }
  const chosen = chosenDrill(asked);
  const number = DRILLS.indexOf(chosen) + 1;
  if (options.job === true) await io.out(serialiseJob(chosen.job()));
  else await io.out(options.json === true ? json(drillJson(chosen, number)) : drillText(chosen, number, options.units));
  return EXIT.done;
}

/** A drill by its id, or by its number in the list. @throws `not-found`. */
export function chosenDrill(asked: string): Drill {
  const numbered = /^\d+$/.test(asked) ? DRILLS[Number(asked) - 1] : undefined;
  return numbered ?? drillById(asked);
}

function json(value: unknown): string {
  return `${JSON.stringify(value, null, 2)}\n`;
}
