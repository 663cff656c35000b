import { coveredVolume_m3 } from '../../deposit/coveredVolume.ts';
import type { Job } from '../../job/schema.ts';
import type { PlannedCoat } from '../../scheme/planned.ts';
import { exactly, scaled, within } from '../../scheme/spread.ts';
import { laidValues } from '../compare/laidValues.ts';
import { knownSetUp, laidWithin } from '../compare/uncertainty.ts';
import { filmLawOf } from '../filmLaw.ts';
import { layCoat } from '../lay.ts';
import { arrivingFastFraction } from '../livingCoat.ts';
import { recordingOf } from '../recordingOf.ts';
import type { CoatSetting } from '../result.ts';
import { settleCoat } from '../settle.ts';
import { strokesOf } from '../strokes.ts';
import { dryEvenFilm } from './evenFilm.ts';

/** Side of the cells on which a scheme's coats are laid, mm. Assumed: a fan of 200 mm is 20 of them wide; means agree with 2 mm cells (tested). */
const CELL_MM = 10;

/** A sprayed coat of a scheme without what only the scheme says of it, for one square metre of panel. */
export interface SprayedCoat {
  readonly setting: CoatSetting;
  readonly film: Pick<PlannedCoat, 'wet_m' | 'dry_m' | 'filmOrigin' | 'weight_kg_m2' | 'landedFraction' | 'touchDry_s' | 'recoat_s' | 'dryOrigin'>;
  /** Mixed liquid to a square metre of panel, m. */
  readonly liquid_m: PlannedCoat['liquid_m3'];
  /** Time of the strokes to a square metre, s/m². */
  readonly spray_s_m2: number;
}

/**
 * A coat of the job laid by the model with its set-up, strokes and mix (or another mix), and dried as an even film of its mean. The spread
 * is the 95 % interval that comes from how well the set-up is known.
 * @throws CrosscoatError for a coat that cannot be settled or planned.
 */
export function sprayedCoat(job: Job, coatId: string, mixId?: string): SprayedCoat {
  const sprayed = mixId === undefined ? job : jobWithMix(job, coatId, mixId);
  const setting = settleCoat(sprayed, coatId, { cell_mm: CELL_MM });
  const strokes = strokesOf(setting, recordingOf(sprayed, setting.coat));
  const laid = layCoat(setting, strokes);
  const values = laidValues(setting, laid);
  const known = knownSetUp(setting);
  const spread = laidWithin(setting, strokes, known);
  const { mix, panel, setUp } = setting;
  const solids_m3 = coveredVolume_m3(laid.film.dry_m, setting.panelGrid);
  const dry_m = within(values.dry_m, spread.dry_m);
  const drying = dryEvenFilm({
    law: filmLawOf(setting), wet_m: values.wet_m, solidsFraction: values.wet_m > 0 ? values.dry_m / values.wet_m : mix.volumeSolidsFraction, fastFraction: arrivingFastFraction(setting),
  });
  const { path } = strokes;
  const time_s = path.count > 0 ? (path.t_s[path.count - 1] as number) - (path.t_s[0] as number) : 0;
  return {
    setting,
    film: {
      wet_m: within(values.wet_m, spread.wet_m),
      dry_m,
      filmOrigin: {
        kind: 'model',
        words: `laid by the model with ${strokes.source === 'recording' ? 'the recorded strokes' : 'the planned strokes'}; mean over panel ${panel.name}, 95 % interval from how well the set-up is known${known.known.assumed.length > 0 ? ', most of it assumed as not measured' : ''}`,
      },
      weight_kg_m2: scaled(dry_m, mix.finish.solidsDensity_kg_m3.value),
      landedFraction: values.sprayed_m3 > 0 ? solids_m3 / (values.sprayed_m3 * setUp.volumeSolidsFraction) : 0,
      touchDry_s: drying.touchDry_s,
      recoat_s: drying.recoat_s,
      dryOrigin: { kind: 'model', words: 'an even film of the coat’s mean, laid at once on the bare backing, in the job’s air; recoat is taken as 18 % of solvent left (assumed)' },
    },
    liquid_m: values.sprayed_m3 > 0 ? scaled(within(values.sprayed_m3, spread.sprayed_m3), 1 / panel.area_m2) : exactly(0),
    spray_s_m2: time_s / panel.area_m2,
  };
}

export function jobWithMix(job: Job, coatId: string, mix: string): Job {
  return { ...job, coats: job.coats.map((coat) => (coat.id === coatId ? { ...coat, mix } : coat)) };
}
