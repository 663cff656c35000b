import type { JSX } from 'preact';
import { cupById } from '../../../../sim/index.ts';
import { askMix, sheetMixing, sheetReadings } from '../../../app/scheme/mixSheet.ts';
import { READING_LIMITS } from '../../../app/scheme/mixPrefs.ts';
import { state } from '../../../app/state.ts';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';
import { RatioBox } from './RatioBox.tsx';

const PLACES = [['first', 'First reading'], ['second', 'Second reading']] as const;

/** Two cup readings at two ratios, which set the thinning law in place of common practice. */
export function OwnReadings(): JSX.Element {
  const { cup } = state.scheme.value.mix;
  const taken = sheetReadings.value.filter((reading) => reading !== null && 'value' in reading).length;
  const mixing = sheetMixing.value;
  return (
    <section aria-labelledby="mix-readings">
      <h2 id="mix-readings">Two readings of your own</h2>
      <p>Thin a little to one ratio, read the {cupById(cup).name}, thin on, read again. Two readings at two ratios replace common practice. They are kept here with the cup chosen above.</p>
      <div class="scheme-mix-pair">{PLACES.map(([place, words], i) => <Reading key={place} place={place} words={words} index={i} />)}</div>
      <p role="status">{statusWords(taken, mixing !== null && 'value' in mixing && mixing.value.thinning?.origin === 'readings')}</p>
    </section>
  );
}

function statusWords(taken: number, isUsed: boolean): string {
  if (isUsed) return 'The answer above is by your readings.';
  return taken === 1 ? 'One of two: the answer is still by common practice.' : 'None taken: the answer is by common practice.';
}

function Reading({ place, words, index }: { readonly place: 'first' | 'second'; readonly words: string; readonly index: number }): JSX.Element {
  const reading = state.scheme.value.mix[place];
  const read = sheetReadings.value[index] ?? null;
  const set = (changed: Partial<typeof reading>): void => askMix({ [place]: { ...state.scheme.peek().mix[place], ...changed } });
  return (
    <fieldset class="group">
      <legend>{words}</legend>
      <RatioBox id={`mix-${place}-ratio`} label="Ratio" text={reading.ratio} problem={read !== null && 'problem' in read ? read.problem : null} hint="Finish first, such as 4:1." type={(ratio) => set({ ratio })} />
      <ViewNumberField id={`mix-${place}-seconds`} label="Seconds" unitKey="seconds" value={reading.seconds} low={READING_LIMITS.seconds[0]} high={READING_LIMITS.seconds[1]} hint="To the first break of the stream. Empty: not read." set={(seconds) => set({ seconds })} clear={() => set({ seconds: null })} />
      <ViewNumberField id={`mix-${place}-temperature_C`} label="Temperature" unitKey="temperature_C" value={reading.temperature_C} low={READING_LIMITS.temperature_C[0]} high={READING_LIMITS.temperature_C[1]} set={(temperature_C) => set({ temperature_C })} />
    </fieldset>
  );
}
