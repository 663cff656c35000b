import type { JSX } from 'preact';
import { demonstrationSentence, ESTIMATE_STATEMENT } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';
import { clockText } from '../../app/timeWords.ts';
import { FigureTable } from './LessonFigures.tsx';
import { LessonLegend } from './LessonLegend.tsx';
import { LessonMap } from './LessonMap.tsx';
import { chosen, lesson } from './lessonStage.ts';

/** One page for the class, seen on paper only: the panels at the time shown, figures, sentence, question, caution. */
export function Handout(): JSX.Element | null {
  const reply = lesson.reply.value;
  if (reply === null) return null;
  const demonstration = chosen.value;
  const index = lesson.index.value;
  return (
    <article class="lesson-handout">
      <h1>{demonstration.title}</h1>
      <p><strong>To ask:</strong> {demonstration.question}</p>
      <div class="lessons-panels">
        {reply.sides.map((side, i) => {
          const values = reply.maps[i]?.[index];
          return values === undefined ? null : (
            <figure key={side.id} class="lessons-panel">
              <LessonMap field={reply.field} values={values} title={side.title} />
              <figcaption>{side.title}, after {clockText(reply.times_s[index] ?? 0)}</figcaption>
            </figure>
          );
        })}
      </div>
      <LessonLegend field={reply.field} />
      <p>{demonstrationSentence({ demonstration, sides: reply.sides, moments: [] }, state.units.value)} (After {clockText(reply.sides[0]?.time_s ?? 0)}.)</p>
      <FigureTable />
      <p><strong>Caution:</strong> {demonstration.caution}</p>
      <p class="lesson-small">{ESTIMATE_STATEMENT}</p>
    </article>
  );
}
