import type { StateKey } from './state.ts';

/** `file`: in the job file and in this browser. `browser`: in this browser only. `nowhere`: gone on reload. */
export type KeptIn = 'file' | 'browser' | 'nowhere';

/** Where each key of the state is kept. A key without a row does not compile. */
export const keptIn: Readonly<Record<StateKey, KeptIn>> = {
  job: 'file',
  past: 'nowhere',
  future: 'nowhere',
  drafts: 'browser',
  coatId: 'browser',
  stage: 'browser',
  field: 'browser',
  drawnOver: 'browser',
  units: 'browser',
  theme: 'browser',
  sections: 'browser',
  foldedCautions: 'browser',
  practice: 'browser',
  setUps: 'browser',
  film: 'nowhere',
  verdict: 'nowhere',
  replay: 'nowhere',
  replay_s: 'nowhere',
  playing: 'nowhere',
  playSpeed: 'nowhere',
  inTime: 'nowhere',
  filmTime_s: 'nowhere',
  timePlaying: 'nowhere',
  timeSpeed: 'browser',
  momentField: 'browser',
  life: 'nowhere',
  moment: 'nowhere',
  lifeVerdict: 'nowhere',
  chosenFault: 'nowhere',
  chosenStrokes: 'nowhere',
  probe_m: 'nowhere',
  strokesAt: 'nowhere',
  jobProblem: 'nowhere',
  notice: 'nowhere',
  storageProblem: 'nowhere',
  working: 'nowhere',
};
