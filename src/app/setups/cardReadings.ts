import { LONGEST_READINGS } from '../../../sim/index.ts';
import { changeJob, closeStep } from '../document.ts';
import { dropDraft, keepDraft } from '../fieldText.ts';
import { pointerOf, valueAt, type JobPath } from '../path.ts';
import { state } from '../state.ts';
import { withCardValue } from './cardParts.ts';
import { shownIndex } from './setUps.ts';

/** Readings to show the form by: invented, of a fan about 250 mm wide. */
export const EXAMPLE_READINGS = `x_mm,film_um
-135,0
-120,1
-105,3
-90,8
-75,13
-60,20
-45,26
-30,30
-15,33
0,35
15,33
30,31
45,25
60,21
75,13
90,7
105,3
120,0
135,0
`;

function readingsPath(setUp: number): JobPath {
  return ['setUps', setUp, 'card', 'readings'];
}

/** The readings of the set-up shown, as they stand in their box, and why they are not kept, if so. */
export function readingsText(setUp: number): { readonly text: string; readonly problem: string | null } {
  const draft = state.drafts.value[pointerOf(readingsPath(setUp))];
  if (draft !== undefined) return draft;
  const text = valueAt(state.job.value, readingsPath(setUp));
  return { text: typeof text === 'string' ? text : '', problem: null };
}

/** Takes the readings as typed, right or wrong: the job keeps any text, and an empty box leaves them out. */
export function typeReadings(setUp: number, text: string): void {
  const pointer = pointerOf(readingsPath(setUp));
  if (text.length > LONGEST_READINGS) {
    keepDraft(pointer, { text, problem: `${text.length} letters are more than the ${LONGEST_READINGS} that a card holds; leave rows out. The card keeps the readings before` });
    return;
  }
  dropDraft(pointer);
  changeJob('Readings', withCardValue(state.job.peek(), setUp, ['readings'], text === '' ? undefined : text), pointer);
}

/** Puts other readings on the card, as one step. */
export function putReadings(label: string, text: string): void {
  const setUp = shownIndex.peek();
  closeStep();
  dropDraft(pointerOf(readingsPath(setUp)));
  changeJob(label, withCardValue(state.job.peek(), setUp, ['readings'], text));
}
