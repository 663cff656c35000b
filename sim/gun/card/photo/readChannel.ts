import { blockMeans, blockMedians, type Blocks } from './blocks.ts';
import { type BareEdges, flattenLight, PAPER_UNEVEN, type PaperLight } from './flattenLight.ts';
import type { PhotoPlaces } from './lightSurface.ts';
import type { Channel } from './squareUp.ts';

/** Assumed: absorbance above which the paper is called full: darkness then lags behind film by 13 % and more (`darknessLag`). */
export const FULL_ABSORBANCE = 1;
/** Share of the blocks with film that are at most as dark as what is called the darkest, so that one odd block is not it. */
const TOP_SHARE = 0.98;
const FILM_SIGMAS = 5;
/** Below the light of the darkest byte but black. */
export const LEAST_LIGHT = 1e-4;

/** One colour set against its own bare paper. */
export interface ReadChannel {
  readonly channel: Channel;
  readonly paper: PaperLight;
  /** Absorbance by block. */
  readonly darkness: Float64Array;
  readonly leastFilm: number;
  readonly top: number;
  /** Share of the bare paper that is as bright, and of the spot that is as dark, as a picture can hold. */
  readonly whiteFraction: number;
  readonly blackFraction: number;
  /** How much film it tells apart. */
  readonly worth: number;
  /** Light of bare paper, mean over the card. */
  readonly paperLight: number;
}

/** What the colours of a card have in common. */
export interface CardBlocks {
  readonly blocks: Blocks;
  /** Where the blocks' middles stand on the photograph. */
  readonly places: PhotoPlaces;
  readonly blockOfCell: Uint32Array;
  readonly edges: BareEdges;
}

/** @throws CrosscoatError what `flattenLight` throws. */
export function readChannel(channel: Channel, { places, blockOfCell, blocks, edges }: CardBlocks): ReadChannel {
  const light = blockMedians(channel.light, blockOfCell, blocks).map((value) => Math.log(Math.max(LEAST_LIGHT, value)));
  const paper = flattenLight(light, places, blocks, edges);
  const darkness = paper.darkness.map((value) => value / Math.LN10);
  const leastFilm = Math.max(PAPER_UNEVEN, FILM_SIGMAS * paper.noise) / Math.LN10;
  const isFilm = Uint8Array.from(darkness, (value) => (value > leastFilm ? 1 : 0));
  const films = darkness.filter((value) => value > leastFilm).sort();
  const top = films[Math.floor(TOP_SHARE * (films.length - 1))] ?? 0;
  const full = films.filter((value) => value > FULL_ABSORBANCE).length / Math.max(1, films.length);
  return {
    channel, paper, darkness, leastFilm, top,
    whiteFraction: meanWhere(blockMeans(channel.white, blockOfCell, blocks), paper.isBare),
    blackFraction: meanWhere(blockMeans(channel.black, blockOfCell, blocks), isFilm),
    worth: Math.min(FULL_ABSORBANCE, top) * (1 - full),
    paperLight: darkness.reduce((sum, value, block) => sum + Math.exp((light[block] as number) + value * Math.LN10), 0) / darkness.length,
  };
}

/** Mean over the blocks that are marked; 0 where none is. */
function meanWhere(values: Float64Array, marked: Uint8Array): number {
  const chosen = values.filter((_, block) => marked[block] === 1);
  return chosen.length === 0 ? 0 : chosen.reduce((sum, value) => sum + value, 0) / chosen.length;
}
