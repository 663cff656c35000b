/** A film of the column: what it is called there, its kind, thickness, and how much of the width it covers. */
export interface ColumnFilm {
  readonly letter: string;
  readonly name: string;
  readonly layer: string;
  readonly film_m: number;
  /** 0 to 1. */
  readonly share: number;
}

/** A film as it is drawn: y down from the top of the drawing. */
export interface ColumnBox extends ColumnFilm {
  readonly y: number;
  readonly height: number;
  readonly width: number;
  /** Whether its letter fits inside. */
  readonly hasLetter: boolean;
}

export interface ColumnLayout {
  readonly boxes: readonly ColumnBox[];
  /** Height of all films. */
  readonly height: number;
  /** Ticks of the ruler beside it, in the reader's unit. */
  readonly ticks: readonly { readonly y: number; readonly text: string }[];
}

/** Least height in which a letter of 16 px stands. */
const LETTER_PX = 18;
const USUAL_PX = 380;
const TALLEST_PX = 900;

/**
 * Films to one scale, the first at the foot. The column is as tall as its thinnest film needs for its
 * letter, within limits.
 * @param unit_m one unit of the ruler. @param width of a film that covers all.
 */
export function layerColumn(films: readonly ColumnFilm[], unit_m: number, width: number): ColumnLayout {
  const total_m = films.reduce((sum, { film_m }) => sum + film_m, 0);
  if (!(total_m > 0)) return { boxes: [], height: 0, ticks: [] };
  const thinnest_m = Math.min(...films.map(({ film_m }) => film_m));
  const height = Math.min(TALLEST_PX, Math.max(USUAL_PX, (LETTER_PX * total_m) / thinnest_m));
  const scale = height / total_m;
  let y = height;
  const boxes = films.map((film) => {
    const tall = film.film_m * scale;
    y -= tall;
    return { ...film, y, height: tall, width: width * film.share, hasLetter: tall >= LETTER_PX - 0.5 };
  });
  const step = tickStep(total_m / unit_m);
  const count = Math.floor(total_m / unit_m / step + 1e-9);
  const ticks = Array.from({ length: count + 1 }, (_, k) => ({ y: height - k * step * unit_m * scale, text: String(Number((k * step).toPrecision(6))) }));
  return { boxes, height, ticks };
}

/** 1, 2 or 5 of a power of ten, for four to ten ticks. */
function tickStep(length: number): number {
  const power = 10 ** Math.floor(Math.log10(length / 4));
  return [5, 2, 1].map((each) => each * power).find((each) => length / each >= 4) ?? power;
}
