import type { CoatSpec, Job, LogEntrySpec, LogKind, MixSpec, SetUpSpec, StepSpec } from '../../job/schema.ts';
import type { Done } from '../../log/recorded.ts';
import { finishById } from '../../materials/finishes.ts';
import { specRatio } from '../../mix/partDensities.ts';
import { ratioWords } from '../../report/ratioWords.ts';
import { roundedText, shown } from '../../report/units.ts';
import { plannedFor, type AboutPlan } from './plannedFor.ts';

/** Longest text of `gun` and of `ratio`. */
const LONGEST_GUN = 500;
const LONGEST_RATIO = 100;

/**
 * A new entry of the log, begun at a moment by a person, with what the plan says of a step or a coat: name, kind, panels, product,
 * ratio, set-up and gun, recording, paper. Nothing that is read at the time (cup, air, comb, batch) is filled in from a plan. With
 * neither step nor coat it is blank.
 */
export function entryFromPlan(job: Job, of: AboutPlan, { at, who }: Done): LogEntrySpec {
  const { scheme, step, coat, mix, setUp } = plannedFor(job, of);
  return {
    id: freshEntryId(job),
    kind: step === null ? (coat === null ? 'other' : 'coat') : kindOf(step),
    name: step?.name ?? coat?.name ?? '',
    ...(step === null ? {} : { step: step.id }),
    ...(coat === null ? {} : { coat: coat.id }),
    panels: [...(scheme?.panels ?? (coat === null ? onlyPanel(job) : [coat.panel]))],
    started: at,
    who,
    ...mixFacts(mix),
    ...gunFacts(coat, setUp),
    ...(coat?.recording === undefined ? {} : { recording: coat.recording }),
    combs: [],
    faults: [],
    ...(step?.kind === 'sand' ? { sanding: { grit: step.grit, wet: step.wet } } : {}),
    photos: [],
    history: [],
  };
}

function freshEntryId({ log = [] }: Job): string {
  let number = log.length + 1;
  while (log.some(({ id }) => id === `entry-${number}`)) number++;
  return `entry-${number}`;
}

function onlyPanel({ part }: Job): string[] {
  return part.panels.length === 1 ? part.panels.map(({ id }) => id) : [];
}

function kindOf(step: StepSpec): LogKind {
  switch (step.kind) {
    case 'brush':
    case 'spray':
      return 'coat';
    case 'fix':
    case 'sand':
      return step.kind;
    case 'mask':
    case 'unmask':
      return 'mask';
  }
}

function mixFacts(mix: MixSpec | null): Pick<LogEntrySpec, 'product' | 'ratio'> {
  if (mix === null) return {};
  return { product: { name: finishById(mix.finish).name }, ratio: ratioWords(specRatio(mix)).slice(0, LONGEST_RATIO) };
}

/** Both systems of units: the text outlives the reader's choice. */
function gunFacts(coat: CoatSpec | null, setUp: SetUpSpec | null): Pick<LogEntrySpec, 'setUp' | 'gun'> {
  if (coat === null || setUp === null) return {};
  const { distance_mm, speed_m_s, overlap_percent, cross } = coat.plan;
  const both = (value: number, quantity: 'length' | 'speed'): string => `${shown(value, quantity, 'metric')} (${shown(value, quantity, 'us')})`;
  const words = `${setUp.name}; as planned ${both(distance_mm / 1000, 'length')} off, ${both(speed_m_s, 'speed')}, overlap ${roundedText(overlap_percent)} %, ${cross ? 'cross coat' : 'one pass'}`;
  return { setUp: setUp.id, gun: words.slice(0, LONGEST_GUN) };
}
