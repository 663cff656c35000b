import { CrosscoatError, demonstrationById, judgedAt, lessonFields, runSide, sidesOf, type Demonstration, type DemonstrationSide } from '../../sim/index.ts';
import type { LessonReply } from './protocol.ts';
import type { Handlers } from './serve.ts';

/** Most times that are kept of a demonstration: a megabyte each, by side. */
const MOST_TIMES = 60;

/** The demonstration that was last run. */
interface KeptLesson {
  readonly demonstration: Demonstration;
  readonly times_s: readonly number[];
  readonly sides: readonly DemonstrationSide[];
}

/**
 * The messages of the instructor's stage. The cured side does not change with the knob, so it is run
 * once for a demonstration. Only the newest run is kept.
 */
export function makeLessonHandlers(): Pick<Handlers, 'lesson' | 'lessonAt'> {
  let kept: KeptLesson | null = null;

  return {
    lesson: ({ id, knob, times }) => {
      const demonstration = demonstrationById(id);
      const times_s = lessonTimes_s(demonstration.until_s, times);
      const known = kept?.demonstration === demonstration && kept.times_s.length === times_s.length ? kept.sides : [];
      kept = null;
      const sides = sidesOf(demonstration, knob).map((choice) =>
        (choice.id === 'cured' ? known.find((side) => side.id === choice.id) : undefined) ?? runSide(demonstration, choice, { at_s: times_s }));
      kept = { demonstration, times_s, sides };
      const fields = lessonFields(demonstration.watch, sides);
      const first = fields[0]?.[0];
      if (first === undefined) throw new CrosscoatError('internal', `internal: the demonstration ${id} has no map; please report this`);
      const maps = fields.map((side) => side.map(({ values }) => values.slice()));
      const isClipped = fields.some((side) => side.some((one) => one.isClipped));
      const reply: LessonReply = { sides: sides.map(reportedOf), times_s, field: { ...first, values: new Float32Array(0), isClipped }, maps };
      return Promise.resolve({ reply, transfer: maps.flatMap((side) => side.map(({ buffer }) => buffer)) });
    },
    lessonAt: ({ index }) => {
      const lesson = kept;
      if (lesson === null || !(index >= 0 && index < lesson.times_s.length)) {
        throw new CrosscoatError('range', `lessonAt: there is no time ${index} of a demonstration; run one first`);
      }
      return Promise.resolve({ reply: { sides: lesson.sides.map((side) => judgedAt(side, index)) } });
    },
  };
}

/** Dense while the gun is at work, then farther and farther apart; the last is the end of the watch. */
function lessonTimes_s(until_s: number, times: number): number[] {
  const count = Math.min(MOST_TIMES, Math.max(1, Math.floor(times)));
  return Array.from({ length: count }, (_, i) => until_s * ((i + 1) / count) ** 2);
}

/** Without job, setting and films, which stay here. */
function reportedOf({ id, title, knob, time_s, figures, faults }: DemonstrationSide): LessonReply['sides'][number] {
  return { id, title, knob, time_s, figures, faults };
}
