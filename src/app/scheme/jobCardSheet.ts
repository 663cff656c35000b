import { batch, effect, signal } from '@preact/signals';
import type { Job, UnitSystem } from '../../../sim/index.ts';
import { download } from '../../storage/download.ts';
import { latestOnly } from '../latest.ts';
import type { Problem } from '../problem.ts';
import { state } from '../state.ts';
import { schemeStage } from './scheme.ts';
import { schemeWorker } from './schemePlan.ts';
import { whileWorking } from '../whileWorking.ts';

/** The job card of the job in hand; kept nowhere, since the job gives it again. */
export const jobCardSheet = {
  html: signal(''),
  text: signal(''),
  problem: signal<Problem | null>(null),
  working: signal(false),
};

/** Keeps the card in step with the job and the units while its sheet is shown. @returns a way to stop. */
export function followCard(): () => void {
  const write = latestOnly(writeCard);
  return effect(() => write({ job: state.job.value, units: state.units.value }));
}

async function writeCard(asked: { readonly job: Job; readonly units: UnitSystem }): Promise<void> {
  if ((asked.job.schemes ?? []).length === 0) return show('', '');
  await whileWorking(jobCardSheet, 'The job card could not be written; the one shown is the last that could', async () => {
    const { html, text } = await schemeWorker.ask('jobCard', asked);
    show(html, text);
  });
}

function show(html: string, text: string): void {
  batch(() => {
    jobCardSheet.html.value = html;
    jobCardSheet.text.value = text;
    jobCardSheet.problem.value = null;
  });
}

/** Hands the card over as a file. */
export function saveCard(kind: 'html' | 'text'): void {
  const [content, type, name] = kind === 'html' ? [jobCardSheet.html.peek(), 'text/html', 'job-card.html'] : [jobCardSheet.text.peek(), 'text/plain', 'job-card.txt'];
  download(new Blob([content], { type: `${type};charset=utf-8` }), name);
}

/** Prints the card as it stands in its frame. */
export function printCard(frame: HTMLIFrameElement | null): void {
  const page = frame?.contentWindow;
  if (page === null || page === undefined) {
    schemeStage.problem.value = { title: 'The card could not be printed', text: 'Save it as HTML and print that file from the browser.', place: {} };
    return;
  }
  page.focus();
  page.print();
}
