import { climateVerdict, type ClimateReason } from '../../air/climateVerdict.ts';
import { filmIn } from '../../air/dayVerdicts.ts';
import { CELSIUS_0_K } from '../../base/units.ts';
import type { Job } from '../../job/schema.ts';
import { backingById } from '../../materials/backings.ts';
import type { DayHour } from '../../scheme/dayPlan.ts';
import type { DayChain, DayTask } from '../../scheme/dayTask.ts';
import type { MayBegin } from '../../scheme/firstStart.ts';
import type { PlanAir } from './daysAir.ts';

/** What the air says of a coat, or of dope that tapes are set in, at a time. */
export type AirWord = Pick<DayHour, 'verdict' | 'words'>;

/** The air is looked at so often, min: hourly readings say no more. */
const LOOK_min = 30;

/**
 * Asks the air of the days about the wet work of a plan, coats and the dope that tapes, patches and rings are set in: the published
 * windows taken together, and the fresh film against the dew point (`climateVerdict`). Dry work goes in any air. The part's own temperature is not known ahead. Answers are kept, since many orders of the steps ask again.
 */
export function daysVerdict(job: Job, air: PlanAir): (task: DayTask, minute: number) => AirWord {
  const known = new Map<string, AirWord>();
  return (task, minute) => {
    const { wet } = task;
    if (wet === null) return { verdict: 'go', words: '' };
    const faces = facesOf(job, task.schemeId);
    const at = Math.floor(minute / LOOK_min) * LOOK_min;
    const key = `${wet.mixId ?? `coat:${wet.coatId ?? ''}`}/${faces}/${air.known(at)}`;
    const word = known.get(key) ?? wordOf(climateVerdict(filmIn(air.at(at), { mix: wet.mix, faces, ceiling_K: job.air.ceiling_C + CELSIUS_0_K }), null));
    known.set(key, word);
    return word;
  };
}

/** Wet work may begin where the air allows it from its begin to its end. Answers are kept. */
export function mayBeginBy(wordAt: (task: DayTask, minute: number) => AirWord): MayBegin {
  const known = new Map<DayTask, Map<number, true | string>>();
  return (task, minute) => {
    const ofTask = known.get(task) ?? new Map<number, true | string>();
    known.set(task, ofTask);
    const word = ofTask.get(minute) ?? throughout(task, minute, wordAt);
    ofTask.set(minute, word);
    return word;
  };
}

function throughout(task: DayTask, minute: number, wordAt: (task: DayTask, minute: number) => AirWord): true | string {
  for (let at = minute; at < minute + task.work_min + LOOK_min; at += LOOK_min) {
    const word = wordAt(task, Math.min(at, minute + task.work_min));
    if (word.verdict === 'wait') return word.words;
  }
  return true;
}

/** Faces that a scheme's panels show to the air: of the one whose wet film is chilled most, one with a single face where there is any, as it takes less heat from the air. */
export function facesOf(job: Job, schemeId: string): 1 | 2 {
  const panelIds = job.schemes?.find(({ id }) => id === schemeId)?.panels ?? [];
  const panels = job.part.panels.filter(({ id }) => panelIds.includes(id));
  return panels.some(({ backing }) => backingById(backing).faces === 1) ? 1 : 2;
}

/** The first wet work of a chain that has not begun at a time; null where none is left. */
export function nextWet({ tasks }: DayChain, starts: ReadonlyMap<string, number>, minute: number): DayTask | null {
  return tasks.find((task) => task.wet !== null && (starts.get(task.id) ?? Infinity) >= minute) ?? null;
}

function wordOf({ verdict, reasons }: { readonly verdict: AirWord['verdict']; readonly reasons: readonly ClimateReason[] }): AirWord {
  const counted = reasons.filter((reason) => reason.verdict === verdict).map(reasonWords);
  return { verdict, words: counted.join(', ') };
}

function reasonWords({ of, is }: ClimateReason): string {
  switch (of) {
    case 'temperature':
      return is === 'low' ? 'air too cold' : 'air too warm';
    case 'humidity':
      return is === 'low' ? 'air too dry' : 'air too humid';
    case 'surfaceMargin':
      return 'part near the dew point';
    case 'blushMargin':
      return 'wet film near the dew point (blush)';
  }
}
