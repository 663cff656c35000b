import { MEASURES } from '../../job/measures.ts';
import type { CoatSpec, Job } from '../../job/schema.ts';
import { coatOf } from '../settle.ts';
import { criterionOf } from './criteria.ts';
import type { Drill } from './drill.ts';

/** Id of every drill made from a job. */
const OWN_ID = 'own';
/** Long enough for a usual film to run, or to stop running, s. */
const WATCH_S = 240;

/**
 * A drill from a coat of a job: its plan says what is meant, and every measure counts. Recordings
 * are left out of the drill's copy of the job, so coats beneath are laid by their plans.
 * @throws CrosscoatError `not-found` for a coat that the job has not.
 */
export function ownDrill(job: Job, coatId: string): Drill {
  const { id, name } = coatOf(job, coatId);
  return {
    id: OWN_ID,
    title: name,
    task: 'Spray this coat of your job as its plan means it.',
    criterion: criterionOf('As the coat’s plan and target say', MEASURES),
    evidence: 'The technique of every stroke, and the film beside the one that was planned.',
    source: 'Plan and target are the job’s own. The limits: common practice and, where there is none, Assumed.',
    caution: 'The product data sheet and the approved process come before any plan made here.',
    job: () => withoutRecordings(job),
    coat: id,
    counts: [...MEASURES],
    watch_s: WATCH_S,
    wait_s: 0,
    guides: true,
  };
}

function withoutRecordings(job: Job): Job {
  return { ...job, coats: job.coats.map(withoutRecording), recordings: [] };
}

function withoutRecording(coat: CoatSpec): CoatSpec {
  const copy = { ...coat };
  delete copy.recording;
  return copy;
}
