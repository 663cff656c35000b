import {
  CrosscoatError, debriefSession, handSample, JUDGED_COVER, layCoat, makeField, markAgain, strokeLines, thicknessDomain, whatIf,
  makeMomentField, type Debrief, type Field, type Film, type OtherFilm, type ReportedDebrief,
} from '../../sim/index.ts';
import { gunScene } from './gunScene.ts';
import type { DebriefReply } from './protocol.ts';
import type { Handlers } from './serve.ts';
import { thinLine } from './thinLine.ts';

/** Lines are drawn no finer than this. */
const NEAR_M = 0.004;

/** The messages of practice. Only the session that was last debriefed is kept. */
export function makePracticeHandlers(): Pick<Handlers, 'debrief' | 'whatIf' | 'sessionAt' | 'classRow'> {
  let kept: { readonly id: string; readonly strokes: string; readonly debrief: Debrief } | null = null;

  const keptAs = (id: string): Debrief => {
    if (kept?.id === id) return kept.debrief;
    throw new CrosscoatError('not-found', `practice: the session ${id} is not the one last debriefed; debrief it again`);
  };

  return {
    debrief: ({ session, rubric }) => {
      const { id, strokes } = session;
      const known = kept?.id === id && kept.strokes === strokes ? kept.debrief : null;
      kept = null;
      const debrief = known === null ? debriefSession(session, rubric) : markAgain(known, rubric);
      kept = { id, strokes, debrief };
      return Promise.resolve({ reply: debriefReply(session.id, debrief) });
    },
    whatIf: ({ id, habit }) => {
      const debrief = keptAs(id);
      const { other, ...answer } = whatIf(debrief, habit);
      return Promise.resolve({ reply: { id, reported: { ...answer, other: withoutEnd(other) }, field: filmField(debrief, other) } });
    },
    sessionAt: ({ id, time_s }) => {
      const debrief = keptAs(id);
      const { setting, strokes } = debrief;
      const { film } = layCoat(setting, strokes, { until_s: time_s });
      return Promise.resolve({ reply: { id, time_s, field: targetField(debrief, film), gun: gunScene(strokes.path, setting.spray, time_s) } });
    },
    classRow: ({ session, rubric }) => {
      const debrief = debriefSession(session, rubric);
      const reply = { id: session.id, score: debrief.score, hand: handOf(debrief), map: filmField(debrief, debrief.sprayed) };
      return Promise.resolve({ reply });
    },
  };
}

function debriefReply(id: string, debrief: Debrief): DebriefReply {
  const { strokes, sprayed, planned } = debrief;
  const { path } = strokes;
  return {
    id,
    reported: reportedOf(debrief),
    lines: strokeLines(path, strokes.strokes).map(({ index, line }) => ({ index, line: thinLine(line, NEAR_M) })),
    start_s: path.t_s[0] ?? 0,
    end_s: path.t_s[path.count - 1] ?? 0,
    sprayed: filmField(debrief, sprayed),
    planned: filmField(debrief, planned),
    hand: handOf(debrief),
  };
}

/** What a map of a film shows: it against the target; where the coat laid none, only blowing air, what lies there at the end. */
function filmField(debrief: Debrief, { film, end }: Debrief['sprayed']): Field {
  if (end === null || debrief.strokes.strokes.length > 0) return targetField(debrief, film);
  const { target, air } = debrief.coarse;
  // One legend for every map of the session.
  const held = thicknessDomain((debrief.sprayed.end ?? end).wet_m);
  return makeMomentField('wet-now', end, target, air.dewPoint_K, held);
}

function withoutEnd({ film, figures, inTargetFraction, account, duration_s, areas_m2 }: Debrief['sprayed']): OtherFilm {
  return { film, figures, inTargetFraction, account, duration_s, areas_m2 };
}

/** Film against the target, without the values of cells outside the panel. */
function targetField({ setting }: Debrief, film: Film): Field {
  const field = makeField('target', film, setting.target);
  const { cover } = setting.panelGrid;
  return { ...field, values: field.values.map((value, cell) => ((cover[cell] as number) < JUDGED_COVER ? NaN : value)) };
}

function handOf({ traces, strokes }: Debrief): DebriefReply['hand'] {
  return handSample(traces, strokes.strokes, strokes.measures);
}

/** What a page reads: settings hold functions, which no message can carry, so they stay here. */
function reportedOf({ task, trainee, name, coat, meant, figures, score, chief, sprayed, planned, traces, strokesAsked }: Debrief): ReportedDebrief {
  const { setting, strokes, laid, verdict, life } = coat;
  const { coat: spec, panel, panelGrid, setUp, target, warnings } = setting;
  return {
    task, trainee, name, meant, figures, score, chief, traces, strokesAsked,
    sprayed: withoutEnd(sprayed),
    planned: withoutEnd(planned),
    coat: {
      setting: { coat: spec, panel, panelGrid, setUp, target, warnings },
      strokes: { source: strokes.source, measures: strokes.measures, warnings: strokes.warnings },
      laid,
      verdict,
      ...(life === undefined ? {} : { life }),
    },
  };
}
