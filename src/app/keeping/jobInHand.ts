import { effect } from '@preact/signals';
import type { InHand } from '../../storage/inHand.ts';
import { startJobKeeper, type JobKeeper } from '../../storage/jobKeeper.ts';
import { jobNews } from '../../storage/jobNews.ts';
import type { JobStore, KeptJob } from '../../storage/jobStore.ts';
import { state } from '../state.ts';
import { keeping } from './keeping.ts';
import { tellStorage } from './tellStorage.ts';

function inHand(): InHand {
  return { id: state.jobId.peek(), job: state.job.peek(), drafts: state.drafts.peek() };
}

/** Keeps the job in hand from now on; `kept` is what it was restored from, null where it was not. */
export function keepJob(store: JobStore, kept: KeptJob | null): JobKeeper {
  const keeper = startJobKeeper(store, jobNews(), {
    inHand,
    isHidden: () => document.hidden,
    failed: (why) => tellStorage('job', why),
    kept: () => {
      if (state.past.peek().some(({ replaces }) => replaces === undefined)) look();
    },
    keepAside: async (late, there) => (await import('./keepAside.ts')).keepAside(late, there),
    takeOver: async (there, isClean) => (await import('./otherWindows.ts')).takeOver(there, isClean),
    removed: () => void import('./otherWindows.ts').then(({ tellRemoved }) => tellRemoved()),
    openElsewhere: () => void import('./otherWindows.ts').then(({ tellOpenElsewhere }) => tellOpenElsewhere()),
  });
  keeping.now = { keeper, store };
  if (kept !== null) {
    keeper.hold(inHand(), kept.head.revision);
    keeper.ask();
    look();
  }
  let isFirst = true;
  effect(() => {
    void [state.jobId.value, state.job.value, state.drafts.value];
    if (!isFirst) keeper.changed();
    isFirst = false;
  });
  return keeper;
}

/** Not on a first visit, where there is nothing to lose yet. */
function look(): void {
  void import('./room.ts').then(({ lookAtRoom }) => lookAtRoom());
}
