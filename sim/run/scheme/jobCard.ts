import { localTimeOf } from '../../base/localTime.ts';
import type { Job, MixSpec, StepSpec } from '../../job/schema.ts';
import { cupById, type Cup } from '../../materials/cups.ts';
import { solventById } from '../../materials/solvents.ts';
import { cupTime, type CupTime } from '../../mix/cupTime.ts';
import { mixedParts } from '../../mix/mixBatch.ts';
import { partDensities, specRatio } from '../../mix/partDensities.ts';
import { viscosity_Pa_s } from '../../mix/viscosity.ts';
import { firstStrokeSvg } from '../../picture/firstStrokeSvg.ts';
import type { CardDay, CardEntry, CardGun, CardMix, JobCard } from '../../report/reportedCard.ts';
import { schemeAmounts, type CoatAmount } from '../../scheme/amounts.ts';
import type { PlannedScheme, PlannedStep } from '../../scheme/planned.ts';
import type { LaidTask, Timeline } from '../../scheme/timeline.ts';
import type { Panel } from '../../panel/panel.ts';
import { fanWidth_m } from '../fan.ts';
import type { CoatStrokes } from '../result.ts';
import { recordingOf } from '../recordingOf.ts';
import { settleCoat } from '../settle.ts';
import { strokesOf } from '../strokes.ts';
import { jobWithMix } from './sprayedCoat.ts';

/** The cup that the card speaks of where the mix names none. */
const USUAL_CUP = 'ford-4';
/** Strokes need no finer grid than the coarsest that a job may have. */
const CELL_MM = 10;

/** The days that a card is dated by. */
export interface CardDays {
  readonly timeline: Timeline;
  /** Air at a minute of the wall clock, K. */
  readonly temperature_K: (minute: number) => number;
}

/**
 * The job card: every step of the schemes with its mix, gun, film and waits, by the day on which the timeline puts it.
 * @param plans the schemes worked out, of this job. @param days null where none were laid: the steps then stand in order without a day, and
 * `why` says why. Cup seconds are for the air at a step's beginning, without days for the job's air.
 * @throws CrosscoatError for a coat that cannot be settled or planned.
 */
export function jobCard(job: Job, plans: readonly PlannedScheme[], days: CardDays | null, why = ''): JobCard {
  const laid = new Map(days?.timeline.chains.flatMap((chain) => chain.laid.map((task) => [task.task.id, task] as const)) ?? []);
  const entries = plans.flatMap((plan) => schemeEntries(job, plan, laid, days));
  const unplaced = entries.filter(({ start }) => start === null);
  const doubts = [...(why === '' ? [] : [why]), ...(days !== null && unplaced.length > 0 ? [`${unplaced.length} steps found no hour; see the days`] : []), ...new Set(plans.flatMap(({ warnings }) => warnings.map(({ text }) => text)))];
  return { jobName: job.name, partName: job.part.name, seed: job.seed, days: byDay(entries), doubts };
}

function schemeEntries(job: Job, plan: PlannedScheme, laid: ReadonlyMap<string, LaidTask>, days: CardDays | null): CardEntry[] {
  const amounts = new Map(schemeAmounts(plan, job.mixes).coats.map((amount) => [amount.step, amount]));
  const panelNames = plan.scheme.panels.map((id) => job.part.panels.find((panel) => panel.id === id)?.name ?? id);
  const gunOf = gunsOf(job, plan.scheme.id);
  return plan.steps.map((planned, k): CardEntry => {
    const task = laid.get(`${plan.scheme.id}/${planned.spec.id}`);
    const amount = amounts.get(planned);
    return {
      schemeName: plan.scheme.name,
      panelNames,
      sides: plan.scheme.sides,
      number: k + 1,
      step: planned.spec,
      area_m2: planned.area_m2,
      mix: amount === undefined ? null : cardMix(job, amount, days === null || task === undefined ? plan.air.temperature_K : days.temperature_K(task.start)),
      gun: gunOf(planned),
      wet_m: planned.coat?.wet_m ?? null,
      dry_m: planned.coat?.dry_m ?? null,
      after_m: planned.after_m,
      start: task?.start ?? null,
      end: task?.end ?? null,
      // Whole minutes that keep the wait and its end: a clock on the wall shows no fractions.
      waitUntil: wholeMinute(task?.wait?.until, Math.ceil),
      latest: wholeMinute(task?.wait?.latest, Math.floor),
      wait_s: planned.wait_s,
    };
  });
}

function wholeMinute(minute: number | null | undefined, round: (value: number) => number): number | null {
  return minute === null || minute === undefined ? null : round(minute);
}

/** Null where the coat names no mix: its set-up then says what is in the cup, and nothing is poured by the card. */
function cardMix(job: Job, { coat, liquid }: CoatAmount, temperature_K: number): CardMix | null {
  const spec: MixSpec | undefined = job.mixes.find(({ id }) => id === coat.mixId);
  if (spec === undefined) return null;
  const { mix } = coat;
  const viscosity = viscosity_Pa_s(mix.viscosity, mix.volumeSolidsFraction, temperature_K);
  return {
    name: spec.name,
    finishName: mix.finish.name,
    ratio: specRatio(spec),
    retarderName: spec.retarder === undefined ? null : solventById(spec.retarder.solvent).name,
    volumeSolidsFraction: mix.volumeSolidsFraction,
    cup: fittingTime(cupById(spec.cup?.kind ?? USUAL_CUP), viscosity / mix.density_kg_m3),
    temperature_K,
    isRead: spec.cup !== undefined,
    pour: mixedParts(liquid.mixed_m3.value, specRatio(spec), partDensities(spec)),
  };
}

/** Seconds in the cup that was asked for, or in one that fits where that one does not. */
function fittingTime(cup: Cup, viscosity_m2_s: number): CupTime {
  const time = cupTime(cup, viscosity_m2_s);
  return time.seconds === null && time.fitting !== null ? cupTime(time.fitting, viscosity_m2_s) : time;
}

/** Gun and strokes before their picture, which has a name of its own on each step. */
interface LaidGun {
  readonly gun: Omit<CardGun, 'picture'>;
  readonly panel: Panel;
  readonly strokes: CoatStrokes['strokes'];
}

/** Gun and strokes of each step; coats sprayed alike are planned once. */
function gunsOf(job: Job, schemeId: string): (step: PlannedStep) => CardGun | null {
  const known = new Map<string, LaidGun>();
  return ({ spec }) => {
    if (spec.kind !== 'spray') return null;
    const key = JSON.stringify([spec.coat, spec.mix]);
    const { gun, panel, strokes } = known.get(key) ?? laidGun(job, spec);
    known.set(key, { gun, panel, strokes });
    const title = `${panel.name}: first stroke of each pass, with its direction`;
    return { ...gun, picture: firstStrokeSvg({ title, panel, strokes: strokes.map(({ pass, meant }) => ({ pass, line_m: [...meant.start_m, ...meant.end_m] })), id: `arrow-${schemeId}-${spec.id}` }) };
  };
}

function laidGun(job: Job, spec: Extract<StepSpec, { readonly kind: 'spray' }>): LaidGun {
  const setting = settleCoat(spec.mix === undefined ? job : jobWithMix(job, spec.coat, spec.mix), spec.coat, { cell_mm: CELL_MM });
  const { plan, setUp, panel, target, coat } = setting;
  const { strokes, source } = strokesOf(setting, recordingOf(job, coat));
  const fan_m = fanWidth_m(setUp, plan.distance_m);
  const gun = {
    laidBy: JSON.stringify([spec.coat, spec.mix]),
    setUpName: setUp.name,
    distance_m: plan.distance_m,
    fanWidth_m: fan_m,
    speed_m_s: plan.speed_m_s,
    overlapFraction: plan.overlapFraction,
    pitch_m: fan_m * (1 - plan.overlapFraction),
    fluidRate_m3_s: setUp.fluidRate_m3_s,
    capPressure_Pa: setUp.capPressure_Pa,
    lead_m: plan.lead_m,
    lag_m: plan.lag_m,
    strokeCount: strokes.length,
    isCross: plan.cross,
    isRecorded: source === 'recording',
    target: { film: target.film, thickness_m: target.thickness_m, low_m: target.thickness_m * target.minFraction, high_m: target.thickness_m * target.maxFraction },
  };
  return { gun, panel, strokes };
}

/** Steps by the day on which they begin, in order of time; those without a day last. */
function byDay(entries: readonly CardEntry[]): CardDay[] {
  const dated = entries.filter(({ start }) => start !== null).sort((a, b) => (a.start as number) - (b.start as number));
  const days = new Map<string, CardEntry[]>();
  for (const entry of dated) {
    const date = localTimeOf(entry.start as number).slice(0, 10);
    days.set(date, [...(days.get(date) ?? []), entry]);
  }
  const rest = entries.filter(({ start }) => start === null);
  return [...[...days].map(([date, each]) => ({ date, entries: each })), ...(rest.length === 0 ? [] : [{ date: null, entries: rest }])];
}
