import type { HandSpec, Job } from '../../job/schema.ts';
import type { ReportedHands, ReportedHandsTable } from '../../report/handsText.ts';
import { settleSide, type StrokeChoice } from '../compare/sideJob.ts';
import { coatOf } from '../settle.ts';
import type { CoatSetting } from '../result.ts';
import { rankHands } from './judgeHands.ts';
import { HANDS_CELL_MM } from './sprayHands.ts';

/** A coat as one set-up lays it, on the cells on which hands are sprayed. @throws CrosscoatError as `settleCoat`. */
export function handsSetting(job: Job, coatId: string, setUpId: string, strokes: StrokeChoice): CoatSetting {
  return settleSide(job, coatId, setUpId, strokes, HANDS_CELL_MM);
}

/** One set-up's verdict before it has a rank. */
export type JudgedHands = Omit<ReportedHands, 'rank'>;

/** The verdicts of some set-ups put in their order. */
export function handsTable(job: Job, coatId: string, judged: readonly JudgedHands[], asked: { readonly hand: HandSpec; readonly seed: number; readonly strokes: StrokeChoice }): ReportedHandsTable {
  const rows = rankHands(judged.map(({ verdict }) => verdict)).map(({ place, rank }): ReportedHands => ({ ...(judged[place] as JudgedHands), rank }));
  return { coatName: coatOf(job, coatId).name, handName: handWords(asked.hand), seed: asked.seed, strokes: asked.strokes, rows };
}

function handWords(hand: HandSpec): string {
  return hand.kind === 'own' ? hand.name : hand.kind;
}
