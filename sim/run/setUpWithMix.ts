import type { MoistAir } from '../air/moistAir.ts';
import { dropRatio } from '../gun/atomise.ts';
import type { SetUp } from '../gun/setUp.ts';
import { vapourPressure_Pa } from '../materials/solvent.ts';
import type { Mix } from '../mix/mix.ts';
import { viscosity_Pa_s } from '../mix/viscosity.ts';

/** Temperature of the tables of relative evaporation rate, K. */
const TABLE_K = 293.15;

/**
 * A set-up with a mix in its cup: solids and solvent speed are the mix's, the speed scaled by the vapour
 * pressure of the day's warmth over that at 20 °C, and the drops are as coarse as the mix's viscosity
 * makes them at the day's temperature.
 */
export function setUpWithMix(stated: SetUp, mix: Mix, air: MoistAir): SetUp {
  const { capPressure_Pa, fluidRate_m3_s, drops } = stated;
  const liquid = { capPressure_Pa, fluidRate_m3_s, density_kg_m3: mix.density_kg_m3, surfaceTension_N_m: mix.finish.surfaceTension_N_m.value };
  const viscosity = viscosity_Pa_s(mix.viscosity, mix.volumeSolidsFraction, air.temperature_K);
  const ratio = dropRatio({ ...liquid, viscosity_Pa_s: viscosity }, { ...liquid, capPressure_Pa: drops.atPressure_Pa, viscosity_Pa_s: drops.atViscosity_Pa_s });
  return {
    ...stated,
    volumeSolidsFraction: mix.volumeSolidsFraction,
    drops: { ...drops, meanDiameter_m: drops.meanDiameter_m * ratio, solventSpeedRatio: mix.solventSpeedRatio * warmthRatio(mix, air.temperature_K) },
  };
}

/** Vapour pressure of a mix's solvents at a temperature over that at 20 °C, each in its share of the speed. */
function warmthRatio({ solvents, solventSpeedRatio }: Mix, temperature_K: number): number {
  if (!(solventSpeedRatio > 0)) return 1;
  return solvents.reduce((sum, { solvent, volumeFraction }) => {
    const share = (volumeFraction * solvent.relativeEvaporation.value) / solventSpeedRatio;
    return sum + (share * vapourPressure_Pa(solvent, temperature_K)) / vapourPressure_Pa(solvent, TABLE_K);
  }, 0);
}
