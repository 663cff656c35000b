import type { Page } from '@playwright/test';

/** A job as the browser keeps it, read past the app. */
export interface KeptJobRow {
  readonly id: string;
  readonly name: string;
  readonly revision: number;
  readonly changedAt: string;
  /** The job without its long parts. */
  readonly main: { readonly coats: readonly { readonly plan: { readonly overlap_percent: number } }[] };
}

/** The jobs of this browser, the newest write first. */
export async function keptJobs(page: Page): Promise<readonly KeptJobRow[]> {
  return page.evaluate(async () => {
    const whenDone = <T>(request: IDBRequest<T>): Promise<T> => new Promise((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error ?? new Error('no answer'));
    });
    const database = await whenDone(indexedDB.open('crosscoat'));
    const reading = database.transaction(['jobs', 'jobParts']);
    const heads = (await whenDone(reading.objectStore('jobs').getAll())) as Omit<KeptJobRow, 'main'>[];
    const rows = await Promise.all(heads.map(async (head) => ({ ...head, main: ((await whenDone(reading.objectStore('jobParts').get([head.id, 'main']))) as { job: KeptJobRow['main'] }).job })));
    database.close();
    return rows.sort((a, b) => b.revision - a.revision);
  });
}

/** The overlap of the first coat of every kept job, the newest write first. */
export async function keptOverlaps(page: Page): Promise<readonly (number | undefined)[]> {
  return (await keptJobs(page)).map(({ main }) => main.coats[0]?.plan.overlap_percent);
}

/** Removes a job as another window would, and tells the windows. */
export async function removeElsewhere(page: Page, id: string): Promise<void> {
  await page.evaluate(async (gone) => {
    const open = indexedDB.open('crosscoat');
    await new Promise((resolve) => (open.onsuccess = resolve));
    const writing = open.result.transaction(['jobs', 'jobParts'], 'readwrite');
    writing.objectStore('jobs').delete(gone);
    writing.objectStore('jobParts').delete(IDBKeyRange.bound([gone], [gone, []]));
    await new Promise((resolve) => (writing.oncomplete = resolve));
    open.result.close();
    const channel = new BroadcastChannel('crosscoat-jobs');
    channel.postMessage({ id: gone, revision: null });
    channel.close();
  }, id);
}
