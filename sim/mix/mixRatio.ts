import { CrosscoatError, type Place } from '../base/errors.ts';
import { MOST_THINNER } from './makeMix.ts';

/** How far a finish is thinned, by volume, as the job states it. */
export interface MixRatio {
  /** Volumes of thinner, retarder included, to one of finish; 0 to 10. */
  readonly thinnerPerFinish: number;
  /** Share of that thinner which is retarder, 0 to 1. */
  readonly retarderFraction: number;
}

/** Densities of what is poured, kg/m³. */
export interface PartDensities {
  readonly finish_kg_m3: number;
  readonly thinner_kg_m3: number;
  /** That of the thinner where there is no retarder. */
  readonly retarder_kg_m3: number;
}

/** Finish, thinner and retarder in proportion. */
type Parts = readonly [finish: number, thinner: number, retarder: number];

const EXAMPLES = 'write finish:thinner such as 4:1, finish:thinner:retarder such as 8:1:1, 1 part in 4, 150 % of the finish, or 10 % of the total';

/**
 * Reads a ratio as people write it. The first figure of `4:1` and `8:1:1` is the finish, the second the
 * thinner, the third the retarder; a hardener is none of them. `1 part in 4` is one part of thinner in four of
 * the whole mix, `1 part to 4` one to four of finish. `150 %`, `reduce 150 %` and `thin 50 %` are of the finish;
 * a bare per cent below 100 could be of the finish or of the total and is refused.
 * @param densities turn parts by weight into volumes; used where the text or `by` says weight.
 * @param by what the parts are where the text itself (`4:1 by weight`) does not say.
 * @throws CrosscoatError `unit` for a text that is no ratio or may mean two, `range` for more than ten of thinner to one.
 */
export function parseRatio(text: string, densities: PartDensities, by: 'volume' | 'weight' = 'volume', place: Place = {}): MixRatio {
  const plain = text.normalize('NFKC').replaceAll('−', '-').toLowerCase().trim();
  const stated = /\s*\bby (volume|weight|mass)$/.exec(plain);
  const body = stated === null ? plain : plain.slice(0, stated.index).trim();
  const isWeight = stated === null ? by === 'weight' : stated[1] !== 'volume';
  const refuse = refusal(text, place);
  if (body.includes(',')) refuse('holds a comma, which means decimals in some places and thousands in others; write 2.5:1');
  if (body.includes('-')) refuse('holds a minus; every part is 0 or more');
  const parts = partsOf(body, refuse);
  return ratioOf(isWeight ? volumesOf(parts, densities) : parts, refuse);
}

/** Volumes of finish, thinner and retarder of one volume of mix; they add to 1. */
export function partFractions({ thinnerPerFinish, retarderFraction }: MixRatio): { readonly finish: number; readonly thinner: number; readonly retarder: number } {
  const whole = 1 + thinnerPerFinish;
  const retarder = (thinnerPerFinish * retarderFraction) / whole;
  return { finish: 1 / whole, thinner: thinnerPerFinish / whole - retarder, retarder };
}

type Refuse = (why: string, code?: 'unit' | 'range') => never;

function refusal(text: string, place: Place): Refuse {
  const where = place.pointer === undefined ? '' : `${place.pointer}: `;
  const quoted = text.length > 40 ? `${text.slice(0, 39)}…` : text;
  return (why, code = 'unit') => {
    throw new CrosscoatError(code, `${where}ratio "${quoted}" ${why}`, place);
  };
}

const NUMBER = String.raw`(\d+(?:\.\d*)?|\.\d+)`;
const COLONS = new RegExp(`^${NUMBER}(?: *: *${NUMBER})(?: *: *${NUMBER})?$`);
const PART_IN = new RegExp(String.raw`^${NUMBER} parts?(?: of thinner)? (in|to) ${NUMBER}(?: parts?)?(?: of (?:finish|mix))?$`);
const PER_CENT = new RegExp(String.raw`^(reduce|reduced|thin|thinned)?(?: by)? *${NUMBER} *(?:%|percent|per cent)(?: of (?:the )?(finish|total|mix|whole))?$`);

function partsOf(body: string, refuse: Refuse): Parts {
  const colons = COLONS.exec(body);
  if (colons !== null) return [Number(colons[1]), Number(colons[2]), Number(colons[3] ?? 0)];
  const partIn = PART_IN.exec(body);
  if (partIn !== null) return partsIn(Number(partIn[1]), partIn[2] as string, Number(partIn[3]), refuse);
  const perCent = PER_CENT.exec(body);
  if (perCent !== null) return percentParts(Number(perCent[2]) / 100, perCent[3] ?? (perCent[1] === undefined ? '' : 'finish'), refuse);
  if (/^[\d.]+ *: *[\d.]+ *: *[\d.]+ *:/.test(body)) return refuse('has more than three parts; finish, thinner and retarder are known: mix a two-part finish by its own sheet first');
  if (/^[\d.]+ *\/ *[\d.]+$/.test(body)) return refuse('may be a share or two parts; write 4:1 for four of finish to one of thinner, or 1 part in 4');
  if (/^[\d.]+$/.test(body)) return refuse(`is one number; ${EXAMPLES}`);
  return refuse(`is no ratio; ${EXAMPLES}`);
}

function partsIn(thinner: number, word: string, of: number, refuse: Refuse): Parts {
  if (word === 'to') return [of, thinner, 0];
  if (!(thinner < of)) refuse('leaves no finish in the mix; the second number is the whole and must be larger than the first');
  return [of - thinner, thinner, 0];
}

function percentParts(fraction: number, of: string, refuse: Refuse): Parts {
  const percent = Number((fraction * 100).toPrecision(12));
  if (of === 'finish' || (of === '' && fraction >= 1)) return [1, fraction, 0];
  if (of === '') return refuse(`may be of the finish or of the total; write ${percent} % of the finish, or ${percent} % of the total`);
  if (!(fraction < 1)) refuse('leaves no finish in the mix; a share of the total is below 100 %');
  return [1 - fraction, fraction, 0];
}

function volumesOf([finish, thinner, retarder]: Parts, densities: PartDensities): Parts {
  return [finish / densities.finish_kg_m3, thinner / densities.thinner_kg_m3, retarder / densities.retarder_kg_m3];
}

/** What the digits of written parts leave of a sum. */
const ROUNDING = 1e-9;

function ratioOf([finish, thinner, retarder]: Parts, refuse: Refuse): MixRatio {
  if (!(finish > 0)) refuse('has no finish in it; the first figure is the finish and is above 0');
  const stated = (thinner + retarder) / finish;
  if (!(stated <= MOST_THINNER * (1 + ROUNDING))) refuse(`is more than ${MOST_THINNER} volumes of thinner to one of finish; the first figure is the finish, so four of finish to one of thinner is 4:1`, 'range');
  return { thinnerPerFinish: Math.min(stated, MOST_THINNER), retarderFraction: retarder === 0 ? 0 : retarder / (thinner + retarder) };
}
