import type { Job, PlanSpec } from '../../job/schema.ts';
import { fanWidth_m } from '../fan.ts';
import { settleCoat } from '../settle.ts';
import { strokesOf } from '../strokes.ts';
import type { CoatStrokes } from '../result.ts';
import type { PointFilm, SprayPoint, WindowFault } from '../window/sprayPoint.ts';
import type { ChosenTry } from './choose.ts';
import { differences, type FitDifference } from './differences.ts';
import { FIT_CELL_MM } from './fitKinds.ts';
import { fitPlan, jobWithChoice, type FitChoice } from './fitPlan.ts';
import { pastLimits, type FitTry } from './fitTries.ts';
import { leastHandRoom, type HandRoom } from './handRoom.ts';
import { layChoice, type LaidChoice } from './layChoice.ts';
import { nearestFault, type Rooms } from './rooms.ts';
import type { Wish } from './wish.ts';

/** What one coat takes by its plan, whole strokes and turns. */
export interface FitTravel {
  readonly strokes: number;
  readonly passes: number;
  /** From the first movement to the last. */
  readonly time_s: number;
  readonly sprayed_m3: number;
  /** Sprayed and not lying wet on the panel, as predicted from the middle of a large panel. */
  readonly lost_m3: number;
}

/** A way to lay each coat of a wish. */
export interface Proposal extends FitChoice {
  readonly setUpName: string;
  readonly mixName: string | null;
  /** The fan's full width at the point's distance, of which the overlap is a share. */
  readonly fanWidth_m: number;
  /** What the set-up and the mix state, against which the point's fluid and thinner are changes. */
  readonly statedFluidRate_m3_s: number;
  readonly statedThinnerRatio: number;
  readonly plan: PlanSpec;
  /** Predicted, one coat. */
  readonly film: PointFilm;
  /** All coats together, predicted. */
  readonly wetInAll_m: number;
  readonly dryInAll_m: number;
  readonly weightInAll_kg_m2: number;
  readonly travel: FitTravel;
  readonly rooms: Rooms;
  readonly hand: readonly HandRoom[];
  /** The fault that lies nearest. */
  readonly nearest: WindowFault;
  /** The least of all rooms; negative where a limit is missed, by its share. */
  readonly margin: number;
  readonly past: FitTry['past'];
  /** In what it differs from the best; empty for the best itself. */
  readonly differs: readonly FitDifference[];
  /** The job with the coat laid so. */
  readonly job: Job;
}

/** A proposal as the direct model lays it. */
export interface CheckedProposal extends Proposal {
  readonly laid: LaidChoice;
}

/** A proposal and the strokes of its plan. */
export interface Drawn {
  readonly proposal: Proposal;
  readonly strokes: CoatStrokes;
}

/** Draws the plan of a try on its panel and counts its strokes, its time and its liquid. */
export function drawProposal(job: Job, coatId: string, one: ChosenTry, best: ChosenTry, wish: Wish): Drawn {
  const { kind, film, rooms, hand } = one;
  const { setting, setUpId, mixId, cross } = kind;
  const { coatCount = 1 } = wish;
  const plan = { ...fitPlan(setting, one.point), cross };
  // The plan's speed is rounded to a millimetre a second; a limit that the exact one keeps is kept.
  const { point } = one;
  const choice: FitChoice = { setUpId, mixId, cross, point, target: setting.target };
  const changed = jobWithChoice(job, coatId, choice, plan);
  const strokes = strokesOf(settleCoat(changed, coatId, { cell_mm: FIT_CELL_MM }));
  const travel = travelOf(strokes, point, film, setting.panel.area_m2);
  const nearest = nearestFault(rooms);
  const past = { ...pastLimits(point, travel, wish), 'over-thick': one.past['over-thick'] };
  const worst = Math.max(...Object.values(past));
  const room = Math.min(rooms[nearest], leastHandRoom(hand));
  const proposal = {
    ...choice,
    setUpName: setting.setUp.name,
    mixName: mixId === null ? null : setting.mix.name,
    fanWidth_m: fanWidth_m(setting.setUp, point.distance_m),
    statedFluidRate_m3_s: setting.setUp.fluidRate_m3_s,
    statedThinnerRatio: setting.mix.thinnerRatio,
    plan,
    film,
    wetInAll_m: coatCount * film.wetMean_m,
    dryInAll_m: coatCount * film.dryMean_m,
    weightInAll_kg_m2: coatCount * film.dryMean_m * setting.mix.finish.solidsDensity_kg_m3.value,
    travel,
    rooms,
    hand,
    nearest,
    margin: worst > 0 ? Math.min(room, -worst) : room,
    past,
    differs: one === best ? [] : differences(one, best),
    job: changed,
  };
  return { proposal, strokes };
}

function travelOf({ path, strokes, measures }: CoatStrokes, point: SprayPoint, film: PointFilm, area_m2: number): FitTravel {
  const fluidOn_s = measures.reduce((sum, { duration_s }) => sum + duration_s, 0);
  const sprayed_m3 = fluidOn_s * point.fluidRate_m3_s;
  const time_s = path.count > 0 ? (path.t_s[path.count - 1] as number) - (path.t_s[0] as number) : 0;
  return { strokes: strokes.length, passes: new Set(strokes.map(({ pass }) => pass)).size, time_s, sprayed_m3, lost_m3: sprayed_m3 - film.wetMean_m * area_m2 };
}

/** Lays a proposal and watches it once. @throws `cancelled`. */
export function checkProposal({ proposal, strokes }: Drawn, coatId: string, options: { readonly shouldStop?: () => boolean }): CheckedProposal {
  return { ...proposal, laid: layChoice(proposal.job, coatId, strokes, options) };
}
