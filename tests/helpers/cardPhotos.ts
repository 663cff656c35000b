import { seededRandom } from '../../sim/base/noise.ts';
import type { CardCorners, CardPhoto, PixelPlace } from '../../sim/gun/card/photo/cardPhoto.ts';

/** A card to photograph: absorbance at a place from its middle, m, x right and y up. */
export interface Card {
  readonly size_m: readonly [width_m: number, height_m: number];
  readonly film: (x_m: number, y_m: number) => number;
}

/** How it is photographed. */
export interface Camera {
  readonly width: number;
  readonly height: number;
  readonly corners: CardCorners;
  /** Light lost towards the picture's corners, and by which law: cos⁴ of the angle, or the square of the distance. */
  readonly vignette: number;
  readonly vignetteLaw: 'cos4' | 'square';
  /** Linear light of bare paper by colour, 1 = the brightest that is held. */
  readonly paper: readonly [number, number, number];
  /** How strongly the film darkens each colour; 1 = as `film` says. */
  readonly strength: readonly [number, number, number];
  /** Standard deviation of the coded values, share of full scale. */
  readonly noise: number;
  /** Light that reaches the camera however thick the film, share of the paper's. */
  readonly stray: number;
  readonly seed: number;
}

/** A card in the middle of a picture of 900 × 700 pixels, seen square, evenly lit. */
export const PLAIN_CAMERA: Camera = {
  width: 900,
  height: 700,
  corners: [[50, 650], [850, 650], [850, 50], [50, 50]],
  vignette: 0,
  vignetteLaw: 'cos4',
  paper: [0.8, 0.8, 0.8],
  strength: [1, 1, 1],
  noise: 0,
  stray: 0,
  seed: 1,
};

/** Corners moved by up to a share of the sides of what they span. */
export function movedCorners(corners: CardCorners, share: number, seed: number): CardCorners {
  const random = seededRandom(seed);
  const [width, height] = [corners[1][0] - corners[0][0], corners[0][1] - corners[3][1]];
  const moved = (place: PixelPlace, [towardX, towardY]: readonly [number, number]): PixelPlace => [place[0] + random() * share * width * towardX, place[1] + random() * share * height * towardY];
  return [moved(corners[0], [1, -1]), moved(corners[1], [-1, -1]), moved(corners[2], [-1, 1]), moved(corners[3], [1, 1])];
}

/** What the card lies on: a dark table. */
const TABLE = 0.15;

/** Takes the picture: perspective, fall-off, paper, film by Beer-Lambert, stray light, noise, sRGB in 8 bits. */
export function photographed({ size_m, film }: Card, camera: Camera): CardPhoto {
  const { width, height, paper, strength, stray } = camera;
  const toCard = cardPlace(camera.corners);
  // One place for all pixels: a fresh pair for each costs more than the picture.
  const place = new Float64Array(2);
  const leftAt = lightLeft(camera);
  const gauss = gaussian(camera.seed);
  const rgba = new Uint8ClampedArray(4 * width * height);
  for (let y = 0, at = 0; y < height; y++) {
    for (let x = 0; x < width; x++, at += 4) {
      toCard(x + 0.5, y + 0.5, place);
      const u = place[0]!;
      const v = place[1]!;
      const isCard = u >= 0 && u <= 1 && v >= 0 && v <= 1;
      const absorbance = isCard ? film((u - 0.5) * size_m[0], (v - 0.5) * size_m[1]) : 0;
      const fallOff = leftAt(x, y);
      for (let c = 0; c < 3; c++) {
        const seen = absorbance === 0 ? 1 : (10 ** -(absorbance * strength[c]!) + stray) / (1 + stray);
        const light = fallOff * (isCard ? paper[c]! * seen : TABLE);
        rgba[at + c] = coded(light) + (camera.noise > 0 ? 255 * camera.noise * gauss() : 0);
      }
      rgba[at + 3] = 255;
    }
  }
  return { width, height, rgba };
}

/** The sRGB curve the other way round (IEC 61966-2-1), 0 to 255, at even steps of light: a step is less than a tenth of a byte. */
const CODED = Float64Array.from({ length: 2 ** 15 }, (_, i) => {
  const light = (i + 0.5) / 2 ** 15;
  return 255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * light ** (1 / 2.4) - 0.055);
});

/** Above 1 everything is white. */
function coded(light: number): number {
  return light >= 1 ? 255 : CODED[Math.floor(light * 2 ** 15)]!;
}

/** Share of the light that is left at a pixel. */
function lightLeft({ width, height, vignette, vignetteLaw }: Camera): (x: number, y: number) => number {
  const whole = (width / 2) ** 2 + (height / 2) ** 2;
  const atCorner = (1 - vignette) ** -0.5 - 1;
  return (x, y) => {
    const distance = ((x + 0.5 - width / 2) ** 2 + (y + 0.5 - height / 2) ** 2) / whole;
    if (vignetteLaw === 'square') return 1 - vignette * distance;
    return 1 / ((1 + distance * atCorner) * (1 + distance * atCorner));
  };
}

/**
 * From a pixel to the unit square, by the closed form of a square seen as a quadrilateral (P. Heckbert, Fundamentals of
 * Texture Mapping and Image Warping, 1989, from memory) and the adjugate of its matrix: another way than the one tested.
 */
function cardPlace([p0, p1, p2, p3]: CardCorners): (x: number, y: number, out: Float64Array) => void {
  const [dx1, dx2, sx] = [p1[0] - p2[0], p3[0] - p2[0], p0[0] - p1[0] + p2[0] - p3[0]];
  const [dy1, dy2, sy] = [p1[1] - p2[1], p3[1] - p2[1], p0[1] - p1[1] + p2[1] - p3[1]];
  const whole = dx1 * dy2 - dx2 * dy1;
  const [g, h] = [(sx * dy2 - dx2 * sy) / whole, (dx1 * sy - sx * dy1) / whole];
  const [a, b, c] = [p1[0] - p0[0] + g * p1[0], p3[0] - p0[0] + h * p3[0], p0[0]];
  const [d, e, f] = [p1[1] - p0[1] + g * p1[1], p3[1] - p0[1] + h * p3[1], p0[1]];
  return (x, y, out) => {
    const u = (e - f * h) * x + (c * h - b) * y + (b * f - c * e);
    const v = (f * g - d) * x + (a - c * g) * y + (c * d - a * f);
    const w = (d * h - e * g) * x + (b * g - a * h) * y + (a * e - b * d);
    out[0] = u / w;
    out[1] = v / w;
  };
}

/** Standard normal deviates (G. Box and M. Muller 1958), picked from as many as make their moments right to 1 %. */
const DEVIATES = (() => {
  const random = seededRandom(0);
  return Float64Array.from({ length: 2 ** 15 }, () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random()));
})();

function gaussian(seed: number): () => number {
  const random = seededRandom(seed);
  return () => DEVIATES[Math.floor(random() * DEVIATES.length)]!;
}

/** A double-beta fan to spray with. */
export interface SprayedFan {
  readonly width_m: number;
  readonly beta1: number;
  /** Absorbance at the darkest. */
  readonly peak: number;
  /** Middle of the spot from the card's, and the turn of its long axis (burst) or of the travel (stroke) from x. */
  readonly middle_m?: readonly [x_m: number, y_m: number];
  readonly turn_rad?: number;
}

/** The film of a short burst; β2 = 3. `bend_m`: how far the centre line stands to the left at the fan's ends. */
export function burstFilm({ width_m, beta1, peak, middle_m = [0, 0], turn_rad = 0 }: SprayedFan, depth_m: number, bend_m = 0): Card['film'] {
  const [cos, sin] = [Math.cos(turn_rad), Math.sin(turn_rad)];
  return (x_m, y_m) => {
    const [dx, dy] = [x_m - middle_m[0], y_m - middle_m[1]];
    const u = (dx * cos + dy * sin) / (width_m / 2);
    const t = (dy * cos - dx * sin - bend_m * u * u) / (depth_m / 2);
    const chord = 1 - u * u;
    if (!(chord > 0 && t * t < chord)) return 0;
    return peak * chord ** (beta1 - 1) * (1 - (t * t) / chord) ** 2;
  };
}

/** The film of a stroke that runs over the whole card; `flutter`: share by which its width swings along the travel. */
export function strokeFilm({ width_m, beta1, peak, middle_m = [0, 0], turn_rad = 0 }: SprayedFan, flutter = 0): Card['film'] {
  const [cos, sin] = [Math.cos(turn_rad), Math.sin(turn_rad)];
  return (x_m, y_m) => {
    const [dx, dy] = [x_m - middle_m[0], y_m - middle_m[1]];
    const along_m = dx * cos + dy * sin;
    const half_m = (width_m / 2) * (1 + flutter * Math.sin((2 * Math.PI * along_m) / 0.1));
    const u = (dy * cos - dx * sin) / half_m;
    return Math.abs(u) < 1 ? peak * (1 - u * u) ** (beta1 - 0.5) : 0;
  };
}
