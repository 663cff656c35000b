import type { JSX } from 'preact';
import { CrosscoatError, genericMixSpec, parseRatio, partDensities, ratioText } from '../../../sim/index.ts';
import { keepDraft, leaveField } from '../../app/fieldText.ts';
import { questionOf, setToday } from '../../app/today/todaySheet.ts';
import { state } from '../../app/state.ts';
import { NumberBox } from '../fields/NumberBox.tsx';

const POINTER = '/view/today-ratio';

/** How far it is thinned, as people write it: `3:1`, `8:1:1` with retarder, `150 %`. */
export function RatioField(): JSX.Element {
  const draft = state.drafts.value[POINTER];
  const problem = draft?.problem ?? null;
  const { thinnerPerFinish } = state.today.value;
  return (
    <NumberBox
      id="today-ratio"
      label="Finish to thinner"
      text={draft?.text ?? (thinnerPerFinish === null ? '' : ratioText(thinnerPerFinish))}
      unit="parts"
      problem={problem === null ? null : `${problem}. The last good value still counts.`}
      hint="By volume: 3:1 is three of finish to one of thinner; 8:1:1 has retarder too. Empty: the middle of what is recommended."
      type={typeRatio}
      leave={() => leaveField(POINTER)}
    />
  );
}

function typeRatio(text: string): void {
  if (text.trim() === '') {
    keepDraft(POINTER, { text, problem: null });
    setToday({ thinnerPerFinish: null });
    return;
  }
  const { finish, thinner } = questionOf(state.today.peek());
  try {
    const { thinnerPerFinish, retarderFraction } = parseRatio(text, partDensities(genericMixSpec(finish, thinner, 1)));
    keepDraft(POINTER, { text, problem: null });
    setToday({ thinnerPerFinish, ...(retarderFraction > 0 ? { retarder_percent: Math.min(50, Number((retarderFraction * 100).toFixed(2))) } : {}) });
  } catch (error) {
    if (!(error instanceof CrosscoatError)) throw error;
    keepDraft(POINTER, { text, problem: error.message });
  }
}
