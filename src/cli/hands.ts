import {
  handsJson, handsSetting, handsTable, handsText, judgeHands, MOST_HANDS, sprayHands, type CoatSpec, type HandSpec, type Job, type JudgedHands, type StrokeChoice, type UnitSystem,
} from '../../sim/index.ts';
import { coatAsked } from './chosenCoats.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { seedOf, setUpsAsked, wholeNumber } from './optionValues.ts';
import { makeProgress } from './progress.ts';
import { readJob } from './readInputs.ts';

/** Options of `crosscoat hands` as commander gives them. */
export interface HandsCliOptions {
  readonly count: string;
  readonly seed?: string;
  readonly hand?: 'beginner' | 'practised';
  readonly setups?: string;
  readonly coat?: string;
  readonly strokes: StrokeChoice;
  readonly units: UnitSystem;
  readonly json?: true;
}

/** Sprays a coat by many simulated hands with each set-up and ranks them by what they forgive. @returns the exit code. */
export async function hands(io: Io, jobPath: string, options: HandsCliOptions): Promise<number> {
  const { job } = await readJob(io, jobPath);
  const coat = coatAsked(job, options.coat);
  const asked = {
    hand: handAsked(coat, options.hand),
    seed: options.seed === undefined ? job.seed : seedOf(options.seed),
    strokes: options.strokes,
    count: wholeNumber('--count', options.count, 1, MOST_HANDS),
  };
  const table = handsTable(job, coat.id, sprayed(io, job, coat.id, asked, options), asked);
  await io.out(options.json === true ? `${JSON.stringify(handsJson(table), null, 2)}\n` : handsText(table, options.units));
  return EXIT.done;
}

/** The hand that is named, else the coat's own; a steady one, which makes no errors, gives way to a practised one. */
function handAsked({ hand }: CoatSpec, kind: HandsCliOptions['hand']): HandSpec {
  if (kind !== undefined) return { kind };
  return hand.kind === 'steady' ? { kind: 'practised' } : hand;
}

function sprayed(io: Io, job: Job, coatId: string, asked: { readonly hand: HandSpec; readonly seed: number; readonly strokes: StrokeChoice; readonly count: number }, options: HandsCliOptions): JudgedHands[] {
  const ids = setUpsAsked(job, options.setups);
  const progress = options.json === true ? null : makeProgress(io, 'spraying');
  try {
    return ids.map((id, i) => {
      const setting = handsSetting(job, coatId, id, asked.strokes);
      const onHand = (done: number): void => progress?.show((i + done / asked.count) / ids.length);
      return { setUp: { id: setting.setUp.id, name: setting.setUp.name }, speed_m_s: setting.plan.speed_m_s, verdict: judgeHands(sprayHands(setting, { ...asked, onHand })) };
    });
  } finally {
    progress?.end();
  }
}
