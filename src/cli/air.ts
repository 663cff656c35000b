import {
  airAnswer, airJson, airText, changedMixSpec, makeAir, makeMix, solventById,
  USUAL_RETARDER, type MixSpec, type RetardedMix, type UnitSystem,
} from '../../sim/index.ts';
import { statedMix } from './chosenMix.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { statedAir, type AirWords } from './statedAir.ts';

/** Options of `crosscoat air` as commander gives them. */
export interface AirOptions extends AirWords {
  readonly mix: string;
  readonly faces: '1' | '2';
  readonly units: UnitSystem;
  readonly json?: true;
}

const CELSIUS_0_K = 273.15;
/** Shares of retarder that are tried, % of the thinner: the middle and a little more than the usual 5 to 15 %. */
const TRIED_percent = [10, 20];

/** Says whether a film of a mix can blush in this air, and what would help. @returns the exit code. */
export async function air(io: Io, options: AirOptions): Promise<number> {
  const stated = statedAir(options);
  const room = makeAir(stated, '/air');
  const { spec, pointer } = await statedMix(io, options.mix);
  const answer = airAnswer(room, {
    mix: makeMix(spec, pointer),
    faces: options.faces === '1' ? 1 : 2,
    ceiling_K: stated.ceiling_C + CELSIUS_0_K,
    retarded: retardedMixes(spec, pointer),
  });
  await io.out(options.json === true ? `${JSON.stringify(airJson(answer), null, 2)}\n` : airText(answer, options.units));
  return EXIT.done;
}

/** The mix with more retarder than it has; none where it is not thinned. */
function retardedMixes(spec: MixSpec, pointer: string): RetardedMix[] {
  const retarder = spec.retarder?.solvent ?? USUAL_RETARDER;
  const stated = spec.thinnerPerFinish === 0 ? [] : TRIED_percent.filter((percent) => percent > (spec.retarder?.percent ?? 0));
  return stated.map((percent) => ({
    retarder: solventById(retarder).name,
    retarderFraction: percent / 100,
    mix: makeMix(changedMixSpec(spec, { retarder_percent: percent }), pointer),
  }));
}
