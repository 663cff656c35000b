import { batch, computed, effect, signal, untracked } from '@preact/signals';
import type { Field, ReportedComparison } from '../../../sim/index.ts';
import { download } from '../../storage/download.ts';
import { isDropped, Stale } from '../../worker/client.ts';
import type { CompareReply } from '../../worker/setUpMessages.ts';
import { coat } from '../document.ts';
import { latestOnly } from '../latest.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { askPool, cancelPool } from './pool.ts';
import { lookAt, setUps } from './setUps.ts';

/** Shown at once at most. */
export const MOST_BESIDE = 4;
/** Where nothing was chosen, so many of the job's set-ups. */
const FIRST_FEW = 3;

/** The comparison in view; kept nowhere, since the job gives it again. */
export const besideSheet = {
  reply: signal<CompareReply | null>(null),
  /** Place in the times of the reply. */
  index: signal(0),
  fields: signal<readonly (Field | null)[]>([]),
  /** Height of the section line, share of the panel from below. */
  section: signal(0.5),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** Set-ups that are set side by side, in the job's order. */
export const chosenSetUps = computed<readonly string[]>(() => {
  const ids = state.job.value.setUps.map(({ id }) => id);
  const { setUps: chosen } = state.setUps.value.beside;
  const kept = chosen === null ? ids.slice(0, FIRST_FEW) : ids.filter((id) => chosen.includes(id));
  return kept.slice(0, MOST_BESIDE);
});

/** Takes a set-up into the comparison, or out of it. */
export function chooseBeside(id: string, on: boolean): void {
  const others = chosenSetUps.peek().filter((each) => each !== id);
  lookAt({ beside: { ...state.setUps.peek().beside, setUps: on ? [...others, id] : others } });
}

/** Compares again whenever job, coat or choice change. @returns what stops that. */
export function followBeside(): () => void {
  const stops = [
    effect(() => {
      const { strokes } = state.setUps.value.beside;
      const asked = { job: state.job.value, coat: coat.value.id, setUps: chosenSetUps.value, strokes };
      untracked(() => ask(asked));
    }),
    effect(() => {
      const { map } = state.setUps.value.beside;
      const index = besideSheet.index.value;
      if (besideSheet.reply.value !== null) askFields({ index, map });
    }),
  ];
  return () => stops.forEach((stop) => stop());
}

type Asked = { readonly job: typeof state.job.value; readonly coat: string; readonly setUps: readonly string[]; readonly strokes: ReportedComparison['strokes'] };

function ask(asked: Asked): void {
  if (asked.setUps.length === 0) {
    cancelPool(0);
    besideSheet.reply.value = null;
    return;
  }
  besideSheet.working.value = true;
  compare(asked);
}

const compare = latestOnly(async (asked: Asked) => {
  try {
    const reply = await askPool(0, 'compare', asked);
    batch(() => {
      besideSheet.reply.value = reply;
      besideSheet.index.value = reply.times_s.length - 1;
      besideSheet.fields.value = [];
      besideSheet.problem.value = null;
    });
  } catch (thrown) {
    if (isDropped(thrown)) return;
    batch(() => {
      besideSheet.reply.value = null;
      besideSheet.problem.value = problemOf('These set-ups could not be compared', thrown);
    });
  } finally {
    besideSheet.working.value = false;
  }
});

const askFields = latestOnly(async (asked: { readonly index: number; readonly map: typeof state.setUps.value.beside.map }) => {
  try {
    const { index, fields } = await askPool(0, 'comparedAt', asked);
    if (index === besideSheet.index.peek()) besideSheet.fields.value = fields;
  } catch (thrown) {
    if (!isDropped(thrown)) setUps.problem.value = problemOf('The maps of this time could not be made', thrown);
  }
});

/** Saves the comparison as one HTML file, to be read in any browser and printed. */
export async function saveReport(): Promise<void> {
  try {
    const { html } = await askPool(0, 'setUpsReport', { job: state.job.peek(), units: state.units.peek() });
    download(new Blob([html], { type: 'text/html' }), 'set-ups.html');
  } catch (thrown) {
    if (!(thrown instanceof Stale)) setUps.problem.value = problemOf('The report was not made', thrown);
  }
}
