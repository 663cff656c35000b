import { amountsCsv, amountsJson, amountsOf, amountsText, COTTON_kg_m2, hingeBalances, planScheme, USUAL_AMOUNTS, type AmountsAnswer, type Job, type UnitSystem } from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import { writeFile } from './files.ts';
import type { Io } from './io.ts';
import { quantityOf } from './optionValues.ts';
import { readJob } from './readInputs.ts';

/** Options of `crosscoat amounts` as commander gives them. */
export interface AmountsCliOptions {
  readonly scheme?: string;
  readonly left?: string;
  readonly cloth?: true;
  readonly csv?: string;
  readonly units: UnitSystem;
  readonly json?: true;
}

/** What a scheme takes to buy, what it weighs, what it costs in time and money. @returns the exit code. */
export async function amounts(io: Io, jobPath: string, options: AmountsCliOptions): Promise<number> {
  const { job } = await readJob(io, jobPath);
  const answer = worked(job, options);
  const notes: string[] = [];
  if (options.csv !== undefined) {
    await writeFile(io, options.csv, [amountsCsv(answer, options.units)]);
    notes.push(`${options.csv}: products, liquid and weight, one row each`);
  }
  if (options.json === true) await io.out(`${JSON.stringify({ ...amountsJson(answer), notes }, null, 2)}\n`);
  else await io.out([amountsText(answer, options.units), ...notes.map((note) => `${note}\n`)].join(''));
  return EXIT.done;
}

function worked(job: Job, { scheme, left, cloth }: AmountsCliOptions): AmountsAnswer {
  const plan = planScheme(job, scheme);
  return amountsOf(job, plan, hingeBalances(job, plan), {
    cloth_kg_m2: cloth === true ? COTTON_kg_m2 : null,
    amounts: left === undefined ? USUAL_AMOUNTS : { ...USUAL_AMOUNTS, left_m3: quantityOf('--left', left, ['volume', 'mL', '100mL']) },
  });
}
