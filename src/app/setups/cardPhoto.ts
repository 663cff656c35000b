import { batch, computed, effect, signal, untracked } from '@preact/signals';
import type { PhotoFan, PhotoTask } from '../../../sim/index.ts';
import { isDropped } from '../../worker/client.ts';
import { latestOnly } from '../latest.ts';
import { problemOf, type Problem } from '../problem.ts';
import { state } from '../state.ts';
import { firstCorners, type Corners } from './corners.ts';
import { putReadings } from './cardReadings.ts';
import { openPhoto, photoPixels, type OpenPhoto } from './photoFile.ts';
import { photoReadingsText } from './photoReadings.ts';
import { askPool } from './pool.ts';
import { lookAt, setUps } from './setUps.ts';
import type { PhotoPrefs } from './setUpsPrefs.ts';

/** A handle that is being dragged rests this long before the photograph is read again. */
const REST_MS = 250;

/** The photograph in view and what was read from it; kept nowhere, since only its readings belong to the job. */
export const cardPhoto = {
  photo: signal<OpenPhoto | null>(null),
  corners: signal<Corners | null>(null),
  reply: signal<PhotoFan | null>(null),
  /** Why nothing could be read between the corners. */
  problem: signal<Problem | null>(null),
  working: signal(false),
  /** The readings last taken over, and the shape that no readings across the fan show. */
  used: signal<{ readonly text: string; readonly fan: PhotoFan } | null>(null),
};

/** Opens a photograph; one that cannot be opened changes nothing. */
export async function takePhoto(file: File): Promise<void> {
  try {
    const photo = await openPhoto(file);
    batch(() => {
      cardPhoto.photo.value = photo;
      cardPhoto.corners.value = firstCorners(photo.canvas.width, photo.canvas.height);
      cardPhoto.reply.value = null;
      cardPhoto.problem.value = null;
      setUps.problem.value = null;
    });
  } catch (thrown) {
    setUps.problem.value = problemOf(`${file.name} was not opened; nothing was changed`, thrown);
  }
}

/** Takes the photograph's readings over as the card's, one step of undo. */
export function takePhotoReadings(): void {
  const fan = cardPhoto.reply.peek();
  if (fan === null) return;
  const text = photoReadingsText(fan);
  cardPhoto.used.value = { text, fan };
  putReadings('Readings of a photograph', text);
}

/** Lets go of the photograph. */
export function dropPhoto(): void {
  batch(() => {
    cardPhoto.photo.value = null;
    cardPhoto.corners.value = null;
    cardPhoto.reply.value = null;
    cardPhoto.problem.value = null;
  });
}

/** Changes what is said of the photograph. */
export function setPhotoPrefs(changed: Partial<PhotoPrefs>): void {
  lookAt({ photo: { ...state.setUps.peek().photo, ...changed } });
}

/** Another sheet looked at leaves the photograph as it was read. */
const prefs = computed(() => state.setUps.value.photo);

interface AskedPhoto {
  readonly photo: OpenPhoto;
  readonly task: PhotoTask;
}

/** Reads the photograph again whenever it, its corners or what is said of it have come to rest. @returns what stops that. */
export function followPhoto(): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = effect(() => {
    const [photo, corners] = [cardPhoto.photo.value, cardPhoto.corners.value];
    const said = prefs.value;
    clearTimeout(timer);
    if (photo === null || corners === null) return;
    untracked(() => (cardPhoto.working.value = true));
    timer = setTimeout(() => read({ photo, task: photoTask(corners, said) }), REST_MS);
  });
  return () => {
    clearTimeout(timer);
    stop();
    cardPhoto.working.value = false;
  };
}

export function photoTask(corners: Corners, { width_mm, height_mm, kind, along }: PhotoPrefs): PhotoTask {
  return {
    corners,
    size_m: [width_mm / 1000, height_mm / 1000],
    kind,
    ...(kind === 'stroke' ? { strokeAlong: along } : {}),
  };
}

const read = latestOnly(async ({ photo, task }: AskedPhoto) => {
  const isShown = (): boolean => cardPhoto.photo.peek() === photo;
  try {
    const rgba = photoPixels(photo);
    const { width, height } = photo.canvas;
    const reply = await askPool(1, 'cardPhoto', { photo: { rgba, width, height }, task }, [rgba.buffer]);
    if (!isShown()) return;
    batch(() => {
      cardPhoto.reply.value = reply;
      cardPhoto.problem.value = null;
    });
  } catch (thrown) {
    if (isDropped(thrown) || !isShown()) return;
    batch(() => {
      cardPhoto.reply.value = null;
      cardPhoto.problem.value = problemOf('Nothing was read from the photograph', thrown);
    });
  } finally {
    cardPhoto.working.value = false;
  }
});
