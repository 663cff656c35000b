import type { JSX } from 'preact';
import { capitalised, knobWords } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';
import { chosen, lesson } from './lessonStage.ts';

/** The one thing that is wrong: a big slider with its number, and two keys that go to the wrong and to the cured value. */
export function KnobControl(): JSX.Element {
  const { knob } = chosen.value;
  const value = lesson.knob.value;
  const words = knobWords(knob, value, state.units.value);
  const turn = (to: number): void => void (lesson.knob.value = to);
  return (
    <div class="lessons-knob" role="group" aria-label="Knob">
      <label for="lesson-knob">{capitalised(knob.name)}</label>
      <output for="lesson-knob">{words}</output>
      <input
        id="lesson-knob"
        type="range"
        min={knob.low}
        max={knob.high}
        step={knob.step}
        value={value}
        aria-valuetext={words}
        onInput={(event) => turn(Number(event.currentTarget.value))}
      />
      <div class="lessons-ends">
        <button type="button" aria-pressed={value === knob.wrong} onClick={() => turn(knob.wrong)}>Wrong: {knobWords(knob, knob.wrong, state.units.value)}</button>
        <button type="button" aria-pressed={value === knob.cured} onClick={() => turn(knob.cured)}>Cured: {knobWords(knob, knob.cured, state.units.value)}</button>
      </div>
    </div>
  );
}
