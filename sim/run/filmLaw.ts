import { evaporationLaw } from '../air/evaporationLaw.ts';
import { makeFilmLaw } from '../film/makeLaw.ts';
import type { FilmLaw } from '../film/law.ts';
import { backingById } from '../materials/backings.ts';
import { viscosity_Pa_s } from '../mix/viscosity.ts';
import type { Panel } from '../panel/panel.ts';
import type { CoatSetting } from './result.ts';

/** How a coat's film dries, flows and levels: its mix, the day's air, the panel's backing and attitude. */
export function filmLawOf({ mix, air, panel, backing }: Pick<CoatSetting, 'mix' | 'air' | 'backing'> & { readonly panel: Pick<Panel, 'attitude'> }): FilmLaw {
  const { finish } = mix;
  const under = backingById(backing);
  return makeFilmLaw({
    evaporation: evaporationLaw(air, mix),
    viscosity: (solids, temperature_K) => viscosity_Pa_s(mix.viscosity, solids, temperature_K),
    density_kg_m3: mix.density_kg_m3,
    surfaceTension_N_m: finish.surfaceTension_N_m.value,
    yieldStress_Pa: finish.yieldStress_Pa.value,
    setDiffusivity_m2_s: finish.setDiffusivity_m2_s.value,
    diffusivityFall: finish.diffusivityFall.value,
    fastFraction: mix.fast.volumeFraction,
    faces: under.faces,
    backingHeat_J_m2_K: under.arealHeat_J_m2_K.value,
    tilt_rad: panel.attitude.tilt_rad,
    down_rad: panel.attitude.down_rad,
  });
}
