import './jobs.css';
import type { ComponentType, JSX } from 'preact';
import { useEffect, useMemo } from 'preact/hooks';
import { jobs, lookAtJobs, startJobs, stopJobs } from '../../app/jobs/jobs.ts';
import { JOBS_TABS, type JobsTab } from '../../app/jobs/jobsPrefs.ts';
import { state } from '../../app/state.ts';
import { OverStage } from '../frame/OverStage.tsx';
import { ListSheet } from './ListSheet.tsx';
import { RoomSheet } from './RoomSheet.tsx';
import { ZipSheet } from './ZipSheet.tsx';

const TAB_WORDS: Readonly<Record<JobsTab, string>> = { list: 'Jobs', zip: 'Export and restore', room: 'Storage' };

/** The jobs of this browser: found, opened, put away, exported and restored. */
export function JobsStage({ close }: { readonly close: () => void }): JSX.Element {
  useEffect(() => {
    void startJobs();
    return () => void stopJobs();
  }, []);
  const told = jobs.told.value;
  useEffect(holdFocus, [told]);
  const sheets = useMemo((): Readonly<Record<JobsTab, ComponentType>> => ({ list: () => <ListSheet close={close} />, zip: ZipSheet, room: RoomSheet }), [close]);
  return (
    <OverStage name="jobs" title="Jobs" close={close} problem={jobs.problem} words={TAB_WORDS} tabs={JOBS_TABS} shown={state.jobs.value.tab} show={(tab) => lookAtJobs({ tab })} sheets={sheets}>
      <p class="jobs-told" role="status">{told}</p>
    </OverStage>
  );
}

/** What was pressed may be gone by what it did: the focus then goes to the chosen job, so that keys still reach the sheet. */
function holdFocus(): void {
  if (document.activeElement !== document.body) return;
  (document.querySelector<HTMLElement>('.jobs-row[aria-expanded="true"]') ?? document.querySelector<HTMLElement>('.jobs'))?.focus();
}
