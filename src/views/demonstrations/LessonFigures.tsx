import type { JSX } from 'preact';
import { demonstrationTable } from '../../../sim/index.ts';
import { clockText } from '../../app/timeWords.ts';
import { state } from '../../app/state.ts';
import { chosen, lesson } from './lessonStage.ts';

/** Every figure at the time shown, folded away on screen. */
export function LessonFigures(): JSX.Element {
  return (
    <details class="lessons-figures">
      <summary>All figures at this time</summary>
      <FigureTable />
    </details>
  );
}

/** The figures of each side at the time shown. */
export function FigureTable(): JSX.Element {
  const sides = lesson.figures.value;
  if (sides === null) return <p>{lesson.playing.value ? 'Pause to read the figures.' : 'The figures are on their way…'}</p>;
  const [head = [], ...rows] = demonstrationTable(chosen.value.knob, sides, state.units.value);
  return (
    <div class="scroll-box" tabIndex={0} role="region" aria-label="Figures">
      <table>
        <caption>After {clockText(sides[0]?.time_s ?? 0)}</caption>
        <thead>
          <tr>{head.map((text, i) => <th key={i} scope="col">{text === '' ? <span class="hidden-words">Figure</span> : text}</th>)}</tr>
        </thead>
        <tbody>
          {rows.map(([name = '', ...cells]) => (
            <tr key={name}><th scope="row">{name}</th>{cells.map((text, i) => <td key={i}>{text}</td>)}</tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
