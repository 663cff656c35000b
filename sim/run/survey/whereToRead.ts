import { CrosscoatError } from '../../base/errors.ts';
import type { Job, SurveySpec } from '../../job/schema.ts';
import { makePanel } from '../../panel/makePanel.ts';
import { nearestEdge } from '../../panel/nearestEdge.ts';
import type { Panel } from '../../panel/panel.ts';
import { evenPlaces } from '../../survey/evenPlaces.ts';
import { READINGS_TO_A_SPOT, SPOTS_TO_AN_AREA } from '../../survey/readingGroups.ts';
import type { PlaceKind, PlaceToRead, SamplingPlan } from '../../survey/sampling.ts';
import { samplingNumbers, type SamplingNumbers } from '../../survey/samplingNumbers.ts';
import { predictedAt, predictedFilm, type PredictedFilm } from './predictedFilm.ts';

/** From edges and holes, m. Assumed: half a spot of 4 cm and 5 mm beside it; gauges misread nearer to an edge. */
const MARGIN_M = 0.025;
/** A spot is a circle of 4 cm (SSPC-PA 2, 2012 on). */
const SPOT_RADIUS_M = 0.02;
/** Candidates at most: a finer mesh would move a place by less than a finger's width. */
const MOST_CANDIDATES = 6000;
const LEAST_STEP_M = 0.01;
/** Thinnest and heaviest places beside the rule's own, of each, and how far apart. Assumed: two show more than one of an edge. */
const EXTREMES = 2;
const EXTREMES_APART_M = 0.1;

/** A mesh of places on the panel, away from its edges. */
interface Mesh {
  readonly x_m: readonly number[];
  readonly y_m: readonly number[];
}

/** A place before it has its number. */
type Unnumbered = Omit<PlaceToRead, 'number'>;

/**
 * Where to read a survey's panel: as many places as the rule's own table asks, spread evenly and 25 mm off edges and holes,
 * and beside these the two places that the model says are thinnest and the two heaviest. Those four are not part of the rule's
 * number: chosen places would bias its mean.
 * @param numbers the rule's own where not given.
 * @throws CrosscoatError `not-found` for a panel that is not in the job; `geometry` for one with no room inside the margin.
 */
export function whereToRead(job: Job, survey: SurveySpec, numbers?: SamplingNumbers): SamplingPlan {
  const panel = panelOf(job, survey);
  const asked = numbers ?? samplingNumbers(survey.rule.kind, panel.area_m2);
  const mesh = meshOf(panel);
  if (mesh.x_m.length === 0) throw new CrosscoatError('geometry', `panel "${panel.name}": no place is ${MARGIN_M * 1000} mm off its edges and holes; read where you can, and note the places`);
  const isSpots = survey.rule.kind === 'spots-areas';
  const spread = isSpots ? spotPlaces(mesh, asked) : evenly(mesh, asked.readings);
  const { places: extremes, doubts } = extremePlaces(job, survey, mesh, isSpots);
  const short = (isSpots ? asked.spots : asked.readings) - spread.length;
  return {
    places: [...spread, ...extremes].map((place, i) => ({ number: i + 1, ...place })),
    asked: { areas: asked.areas, spots: asked.spots, readings: asked.readings, source: asked.source },
    margin_m: MARGIN_M,
    spotRadius_m: isSpots ? SPOT_RADIUS_M : 0,
    doubts: [...doubts, ...(short > 0 ? [`The panel has room for ${spread.length} places only; read some of them again.`] : [])],
  };
}

function panelOf(job: Job, survey: SurveySpec): Panel {
  const index = job.part.panels.findIndex(({ id }) => id === survey.panel);
  const spec = job.part.panels[index];
  if (spec === undefined) throw new CrosscoatError('not-found', `survey "${survey.name}": panel "${survey.panel}" is not in the job; choose one that is`);
  return makePanel(spec, `/part/panels/${index}`).panel;
}

/** A square mesh centred on the panel, so that a mirrored panel has the mirrored mesh. */
function meshOf(panel: Panel): Mesh {
  const step = Math.max(LEAST_STEP_M, Math.sqrt((panel.width_m * panel.height_m) / MOST_CANDIDATES));
  const [across, up] = [Math.floor(panel.width_m / step), Math.floor(panel.height_m / step)];
  const places = Array.from({ length: across * up }, (_, i): readonly [number, number] => [
    panel.width_m / 2 + ((i % across) - (across - 1) / 2) * step,
    panel.height_m / 2 + (Math.floor(i / across) - (up - 1) / 2) * step,
  ]).filter(([x, y]) => nearestEdge(panel, x, y).distance_m >= MARGIN_M);
  return { x_m: places.map(([x]) => x), y_m: places.map(([, y]) => y) };
}

function evenly(mesh: Mesh, count: number): Unnumbered[] {
  return inOrder(mesh, evenPlaces(mesh.x_m, mesh.y_m, count).taken).map((index, i) => ({
    kind: 'spread', at_m: at(mesh, index), area: '', spot: String(i + 1), readings: 1, why: 'spread evenly',
  }));
}

/** The panel shared out into areas of a like size, each with its five spots. */
function spotPlaces(mesh: Mesh, { areas }: SamplingNumbers): Unnumbered[] {
  const shares = evenPlaces(mesh.x_m, mesh.y_m, areas);
  return inOrder(mesh, shares.taken).flatMap((middle, a) => {
    const own = shares.taken.indexOf(middle);
    const inside = Array.from(shares.owner.keys()).filter((i) => shares.owner[i] === own);
    const part: Mesh = { x_m: inside.map((i) => mesh.x_m[i] as number), y_m: inside.map((i) => mesh.y_m[i] as number) };
    return inOrder(part, evenPlaces(part.x_m, part.y_m, SPOTS_TO_AN_AREA).taken).map((index, s): Unnumbered => ({
      kind: 'spread', at_m: at(part, index), area: String(a + 1), spot: `${a + 1}.${s + 1}`, readings: READINGS_TO_A_SPOT, why: `spot ${s + 1} of area ${a + 1}, spread evenly`,
    }));
  });
}

/** From the top down, each row from the left, as one reads a panel that hangs. */
function inOrder({ x_m, y_m }: Mesh, taken: readonly number[]): number[] {
  const ROW_M = 0.05;
  const row = (i: number) => Math.round((y_m[i] as number) / ROW_M);
  return [...taken].sort((a, b) => row(b) - row(a) || (x_m[a] as number) - (x_m[b] as number));
}

function at({ x_m, y_m }: Mesh, index: number): readonly [number, number] {
  return [x_m[index] as number, y_m[index] as number];
}

function extremePlaces(job: Job, survey: SurveySpec, mesh: Mesh, isSpots: boolean): { readonly places: Unnumbered[]; readonly doubts: string[] } {
  const coats = survey.coats.filter((id) => job.coats.some((coat) => coat.id === id && coat.panel === survey.panel));
  if (coats.length === 0) return { places: [], doubts: ['The survey names no coat of this panel, so the model cannot say where the film is thinnest and heaviest.'] };
  const predicted = predictedFilm(job, coats);
  const film_m = predictedAt(predicted, mesh.x_m.map((_, i) => at(mesh, i))).map(({ dry_m }) => dry_m);
  const pick = (kind: PlaceKind, sign: 1 | -1): Unnumbered[] => extremesOf(mesh, film_m, sign).map((index, i) => ({
    kind, at_m: at(mesh, index), area: '', spot: `${kind} ${i + 1}`, readings: isSpots ? READINGS_TO_A_SPOT : 1, why: whyOf(kind, i, (film_m[index] as number) / meanFilm(predicted)),
  }));
  return { places: [...pick('thinnest', -1), ...pick('heaviest', 1)], doubts: ['The thinnest and heaviest places come beside the rule’s own number. Keep them in a survey of their own: chosen places would bias the rule’s mean.'] };
}

function meanFilm({ mean_m }: PredictedFilm): number {
  return mean_m > 0 ? mean_m : 1;
}

function whyOf(kind: PlaceKind, i: number, share: number): string {
  return `${i === 0 ? '' : 'next '}${kind} by the model: ${Math.round(share * 100)} % of the mean film`;
}

/** The most extreme places of the mesh, apart from each other. */
function extremesOf(mesh: Mesh, film_m: readonly number[], sign: 1 | -1): number[] {
  const order = film_m.map((_, i) => i).sort((a, b) => sign * ((film_m[b] as number) - (film_m[a] as number)) || a - b);
  const taken: number[] = [];
  for (const index of order) {
    const [x, y] = at(mesh, index);
    if (taken.every((other) => Math.hypot(x - at(mesh, other)[0], y - at(mesh, other)[1]) >= EXTREMES_APART_M)) taken.push(index);
    if (taken.length === EXTREMES) break;
  }
  return taken;
}
