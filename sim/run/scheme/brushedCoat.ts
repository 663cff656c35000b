import type { MoistAir } from '../../air/moistAir.ts';
import type { PanelSpec, StepSpec } from '../../job/schema.ts';
import type { Mix } from '../../mix/mix.ts';
import type { Panel } from '../../panel/panel.ts';
import type { PlannedCoat } from '../../scheme/planned.ts';
import { scaled, within } from '../../scheme/spread.ts';
import { filmLawOf } from '../filmLaw.ts';
import { dryEvenFilm } from './evenFilm.ts';

/** What a brushed coat is worked out from. */
export interface BrushedParts {
  readonly step: Extract<StepSpec, { readonly kind: 'brush' }>;
  readonly mix: Mix;
  readonly air: MoistAir;
  readonly panel: Panel;
  readonly backing: PanelSpec['backing'];
  readonly area_m2: number;
}

/**
 * A brushed coat: its dry film is stated, with its spread; wet film, liquid and drying follow. Left out: what soaks into the cloth,
 * which lies within the stated film.
 */
export function brushedCoat({ step, mix, air, panel, backing, area_m2 }: BrushedParts): Omit<PlannedCoat, 'layer' | 'mixId' | 'colour' | 'paste_kg_m3'> {
  const stated_m = step.dry_um * 1e-6;
  const dry_m = within(stated_m, (stated_m * step.within_percent) / 100);
  const wet_m = scaled(dry_m, 1 / mix.volumeSolidsFraction);
  const landedFraction = 1 - step.loss_percent / 100;
  const drying = dryEvenFilm({ law: filmLawOf({ mix, air, panel, backing }), wet_m: wet_m.value, solidsFraction: mix.volumeSolidsFraction, fastFraction: mix.fast.volumeFraction });
  return {
    mix,
    coatId: null,
    setUpName: null,
    wet_m,
    dry_m,
    filmOrigin: { kind: 'typed', words: `stated: ${step.dry_um} µm dry, ± ${step.within_percent} %` },
    weight_kg_m2: scaled(dry_m, mix.finish.solidsDensity_kg_m3.value),
    landedFraction,
    liquid_m3: scaled(wet_m, area_m2 / landedFraction),
    spray_s: 0,
    touchDry_s: drying.touchDry_s,
    recoat_s: drying.recoat_s,
    dryOrigin: { kind: 'model', words: 'an even film of the stated thickness, laid at once on the bare backing, in the job’s air; recoat is taken as 18 % of solvent left (assumed)' },
  };
}
