import {
  filmFigures,
  filmsAtPlaces,
  inTargetFraction,
  judgeCoat,
  layCoat,
  makePanel,
  readRecording,
  settleCoat,
  strokeLines,
  strokesOf,
  type CoatResult,
  type CoatSetting,
  type CoatStrokes,
  type LaidCoat,
  type Recording,
} from '../../sim/index.ts';
import { fetchedOnce } from './fetchedOnce.ts';
import { gunScene } from './gunScene.ts';
import type { makeLifeJudge } from './lifeVerdict.ts';
import type { CoatRequest, FilmReply } from './protocol.ts';
import { Overtaken, type Handlers } from './serve.ts';
import { nextTurn } from './steps.ts';
import { thinLine } from './thinLine.ts';

/** Lines are drawn no finer than this. */
const NEAR_m = 0.008;

/** A version of the job, laid. */
interface Laid {
  readonly version: number;
  readonly setting: CoatSetting;
  readonly strokes: CoatStrokes;
  readonly laid: LaidCoat;
}

/**
 * The worker's side: what it does for each message. It keeps the recordings it was given and the
 * last version it laid. Between steps it lets newer messages in, and gives up an overtaken version.
 */
export function makeHandlers(): Handlers {
  const recordings = new Map<string, Recording>();
  let newest = 0;
  let last: Laid | null = null;
  let judged: { readonly version: number; readonly result: CoatResult } | null = null;

  const pause = async (version: number): Promise<void> => {
    newest = Math.max(newest, version);
    await nextTurn();
    if (version < newest) throw new Overtaken();
  };

  const lay = async ({ version, job, coat }: CoatRequest): Promise<Laid> => {
    await pause(version);
    if (last?.version === version) return last;
    const setting = settleCoat(job, coat);
    const recording = setting.coat.recording;
    const strokes = strokesOf(setting, recording === undefined ? null : (recordings.get(recording) ?? null));
    await pause(version);
    last = { version, setting, strokes, laid: layCoat(setting, strokes) };
    return last;
  };

  const judge = async (request: CoatRequest, cures: boolean): Promise<CoatResult> => {
    const { setting, strokes, laid } = await lay(request);
    if (judged?.version === request.version && cures) return judged.result;
    await pause(request.version);
    const result = judgeCoat(setting, strokes, laid, { cures });
    if (cures) judged = { version: request.version, result };
    return result;
  };

  // The first film needs nothing of these: their script is fetched when they are asked for.
  const life = fetchedOnce(async () => (await import('./lifeHandlers.ts')).makeLifeHandlers({ lay, pause, recordings }));

  let judgeLifeOf: ReturnType<typeof makeLifeJudge> | null = null;

  const lesson = fetchedOnce(async () => (await import('./lessonHandlers.ts')).makeLessonHandlers());
  const practice = fetchedOnce(async () => (await import('./practiceHandlers.ts')).makePracticeHandlers());
  const cards = fetchedOnce(async () => (await import('./cardHandlers.ts')).makeCardHandlers());
  const windows = fetchedOnce(async () => (await import('./windowHandlers.ts')).makeWindowHandlers());
  const fits = fetchedOnce(async () => (await import('./fitHandlers.ts')).makeFitHandlers());
  const handsOf = fetchedOnce(async () => (await import('./handsHandlers.ts')).makeHandsHandlers());
  const comparisons = fetchedOnce(async () => (await import('./compareHandlers.ts')).makeCompareHandlers());
  const schemes = fetchedOnce(async () => (await import('./schemeHandlers.ts')).makeSchemeHandlers());
  const records = fetchedOnce(async () => (await import('./recordHandlers.ts')).makeRecordHandlers());
  const surveys = fetchedOnce(async () => (await import('./surveyHandlers.ts')).makeSurveyHandlers());

  return {
    surveyTruth: async (request) => (await surveys()).surveyTruth(request),
    surveyWhere: async (request) => (await surveys()).surveyWhere(request),
    record: async (request) => (await records()).record(request),
    jobCard: async (request) => (await schemes()).jobCard(request),
    schemeSolvent: async (request) => (await schemes()).schemeSolvent(request),
    hingeBalances: async (request) => (await schemes()).hingeBalances(request),
    planScheme: async (request) => (await schemes()).planScheme(request),
    cardFit: async (request) => (await cards()).cardFit(request),
    cardPhoto: async (request) => (await cards()).cardPhoto(request),
    windowMap: async (request) => (await windows()).windowMap(request),
    windowAround: async (request) => (await windows()).windowAround(request),
    workOut: async (request) => (await fits()).workOut(request),
    hands: async (request) => (await handsOf()).hands(request),
    compare: async (request) => (await comparisons()).compare(request),
    comparedAt: async (request) => (await comparisons()).comparedAt(request),
    setUpsReport: async (request) => (await comparisons()).setUpsReport(request),
    debrief: async (request) => (await practice()).debrief(request),
    whatIf: async (request) => (await practice()).whatIf(request),
    sessionAt: async (request) => (await practice()).sessionAt(request),
    classRow: async (request) => (await practice()).classRow(request),
    lesson: async (request) => (await lesson()).lesson(request),
    lessonAt: async (request) => (await lesson()).lessonAt(request),
    liveOpen: async (request) => (await life()).liveOpen(request),
    liveAt: async (request) => (await life()).liveAt(request),
    liveClose: async (request) => (await life()).liveClose(request),
    recording: ({ id, name, text }) => {
      const recording = readRecording([text], name);
      recordings.set(id, recording);
      const { path, warnings } = recording;
      const duration_s = (path.t_s[path.count - 1] ?? 0) - (path.t_s[0] ?? 0);
      return Promise.resolve({ reply: { id, rows: path.count, duration_s, warnings } });
    },
    panel: ({ panel, pointer }) => {
      const { area_m2 } = makePanel(panel, pointer).panel;
      return Promise.resolve({ reply: { area_m2 } });
    },
    film: async (request) => ({ reply: filmReply(await lay(request)) }),
    verdict: async ({ cures, ...request }) => {
      const { verdict } = await judge(request, cures);
      return { reply: { version: request.version, verdict, curesTried: cures } };
    },
    lifeVerdict: async ({ cures, ...request }) => {
      const result = await judge(request, true);
      judgeLifeOf ??= (await import('./lifeVerdict.ts')).makeLifeJudge(recordings);
      await pause(request.version);
      return { reply: { version: request.version, verdict: judgeLifeOf(result, cures), curesTried: cures } };
    },
    replay: async ({ until_s, ...request }) => {
      const { setting, strokes } = await lay(request);
      const { film } = layCoat(setting, strokes, { until_s });
      const gun = gunScene(strokes.path, setting.spray, until_s);
      const transfer = [film.wet_m, film.dry_m, film.arrivedDry_m, film.passes].map(({ buffer }) => buffer);
      return { reply: { version: request.version, time_s: until_s, film, gun }, transfer };
    },
    strokesAt: async ({ at_m, ...request }) => {
      const { setting, strokes } = await lay(request);
      const films = filmsAtPlaces(setting, strokes, Float64Array.from(at_m));
      const each = [...films.byStroke].map(([stroke, wet_m]) => ({ stroke, wet_m: wet_m[0] ?? 0 }));
      return { reply: { version: request.version, at_m, strokes: each.filter(({ wet_m }) => wet_m > 0) } };
    },
    exportFile: async ({ kind, field, units, ...request }) => {
      const { exportBlob } = await import('./exportBlob.ts');
      const result = await judge(request, true);
      return { reply: { blob: await exportBlob(kind, result, field, units) } };
    },
  };
}

/** Film arrays are copied, not handed over: the worker judges and probes the same film later. */
function filmReply({ version, setting, strokes, laid }: Laid): FilmReply {
  const { coat, panel, panelGrid, setUp, target, warnings } = setting;
  const { path, source, measures } = strokes;
  const { film } = laid;
  return {
    version,
    setting: { coat, panel, panelGrid, setUp, target, warnings },
    strokes: { source, measures, warnings: strokes.warnings },
    laid,
    lines: strokeLines(path, strokes.strokes).map(({ index, line }) => ({ index, line: thinLine(line, NEAR_m) })),
    start_s: path.t_s[0] ?? 0,
    end_s: path.t_s[path.count - 1] ?? 0,
    figures: {
      wet: filmFigures(film.wet_m, panelGrid),
      dry: filmFigures(film.dry_m, panelGrid),
      inTargetFraction: inTargetFraction(film, panelGrid, target),
    },
  };
}
