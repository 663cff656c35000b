import {
  debriefJson, debriefSession, debriefText, parseRubric, USUAL_RUBRIC, whatIf, WHAT_IFS,
  type Debrief, type ReportedWhatIf, type RubricSpec, type SessionSpec, type UnitSystem,
} from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { makeProgress } from './progress.ts';
import { nameOf, readText } from './readText.ts';
import { checkStandardInput, readSession, type SessionOptions } from './sessionSource.ts';

/** Options of `crosscoat debrief` as commander gives them. */
export interface DebriefOptions extends SessionOptions {
  readonly rubric?: string;
  readonly whatIf: boolean;
  readonly units: UnitSystem;
  readonly strict?: true;
  readonly json?: true;
}

/** A rubric is a few dozen numbers. */
const RUBRIC_FILE = { what: 'rubric file', mostBytes: 1e6, advice: 'a rubric holds one short row a measure; give that file' };

/** Looks a practice session through, marks it, and says what each habit cost. @returns the exit code. */
export async function debrief(io: Io, path: string | undefined, options: DebriefOptions): Promise<number> {
  checkStandardInput([path, options.strokes, options.job, options.rubric]);
  const rubric = options.rubric === undefined ? USUAL_RUBRIC : parseRubric(await readText(io, options.rubric, RUBRIC_FILE), nameOf(options.rubric));
  const session = await readSession(io, path, options);
  const { debriefed, whatIfs } = lookThrough(io, session, rubric, options);
  await io.out(options.json === true ? `${JSON.stringify(debriefJson(debriefed, whatIfs, options.units), null, 2)}\n` : debriefText(debriefed, whatIfs, options.units));
  return options.strict === true && !debriefed.score.isPassed ? EXIT.faults : EXIT.done;
}

/** Share of the work that is done with the debrief itself, as the five questions after it take as long again and more. */
const DEBRIEF_SHARE = 0.4;

function lookThrough(io: Io, session: SessionSpec, rubric: RubricSpec, options: DebriefOptions): { debriefed: Debrief; whatIfs: readonly ReportedWhatIf[] } {
  const progress = options.json === true ? null : makeProgress(io, 'looking the session through');
  try {
    const debriefed = debriefSession(session, rubric);
    const habits = options.whatIf ? WHAT_IFS : [];
    const whatIfs = habits.map((habit, i) => {
      progress?.show(DEBRIEF_SHARE + (1 - DEBRIEF_SHARE) * (i / habits.length));
      return whatIf(debriefed, habit);
    });
    return { debriefed, whatIfs };
  } finally {
    progress?.end();
  }
}
