import { CrosscoatError, LONGEST_PHOTO, type LogEntrySpec } from '../../../sim/index.ts';
import { freshId } from '../freshId.ts';
import { problemOf } from '../problem.ts';
import { openPhoto } from '../setups/photoFile.ts';
import { changeEntry } from './entryChange.ts';
import { logStage, openEntry } from './log.ts';

/** A photograph as an entry keeps it. */
export type PhotoSpec = LogEntrySpec['photos'][number];

/** Most photographs of an entry, as the schema has them. */
export const MOST_PHOTOS = 12;

/** Longest side, px, and quality, tried in turn until the picture is short enough. Assumed: 1280 px still show a run or a comb's teeth. */
const TRIES: readonly (readonly [side_px: number, quality: number])[] = [
  [1280, 0.82], [1280, 0.7], [1280, 0.55], [1024, 0.6], [800, 0.6], [640, 0.55], [480, 0.5],
];

/**
 * A photograph drawn anew, at most 1280 px along a side, as a JPEG short enough for the job file. Only pixels go through: what the
 * camera wrote beside them (place, time, device) is gone.
 * @throws CrosscoatError for a file that is no picture, is too large, or does not get short enough.
 */
export async function shrinkPhoto(file: File, id: string): Promise<PhotoSpec> {
  const { canvas } = await openPhoto(file);
  for (const [side_px, quality] of TRIES) {
    const scale = Math.min(1, side_px / Math.max(canvas.width, canvas.height));
    const [width, height] = [Math.max(1, Math.round(canvas.width * scale)), Math.max(1, Math.round(canvas.height * scale))];
    const jpeg = jpegOf(canvas, width, height, quality);
    if (jpeg !== null && jpeg.length <= LONGEST_PHOTO) return { id, name: file.name.replace(/\.[^.]*$/, '').slice(0, 200), width, height, jpeg };
  }
  throw new CrosscoatError('limit', `${file.name} does not get shorter than ${LONGEST_PHOTO / 1000} thousand letters even at 480 px; crop it to what it should show`, { file: file.name });
}

/** Base64 of a JPEG; null where the browser makes none. */
function jpegOf(from: HTMLCanvasElement, width: number, height: number, quality: number): string | null {
  const small = document.createElement('canvas');
  small.width = width;
  small.height = height;
  const context = small.getContext('2d');
  if (context === null) return null;
  context.imageSmoothingQuality = 'high';
  context.drawImage(from, 0, 0, width, height);
  const [head, body] = small.toDataURL('image/jpeg', quality).split(',');
  return head === 'data:image/jpeg;base64' && body !== undefined ? body : null;
}

/** Adds photographs to the open entry, each shrunk. Those that are refused are told with the reason; the others are added. */
export async function addPhotos(files: readonly File[]): Promise<void> {
  const refused: string[] = [];
  const meant = openEntry.peek()?.id;
  for (const file of files) {
    try {
      const photos = openEntry.peek()?.photos ?? [];
      if (photos.length >= MOST_PHOTOS) throw new CrosscoatError('limit', `${file.name}: an entry holds ${MOST_PHOTOS} photographs; remove one first`, { file: file.name });
      const photo = await shrinkPhoto(file, freshId('photo', photos.map(({ id }) => id)));
      // Another entry was opened meanwhile: the photograph is not that one's.
      if (openEntry.peek()?.id !== meant) throw new CrosscoatError('cancelled', `${file.name}: another entry was opened while it was read; add it again there`, { file: file.name });
      changeEntry('Add a photograph', `/photos/${openEntry.peek()?.photos.length ?? 0}`, photo);
    } catch (thrown) {
      refused.push(problemOf('', thrown).text);
    }
  }
  if (refused.length > 0) logStage.problem.value = { title: refused.length === 1 ? 'A photograph was not added' : `${refused.length} photographs were not added`, text: refused.join(' '), place: {} };
}
