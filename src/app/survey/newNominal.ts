import { shown, type CoatSpec } from '../../../sim/index.ts';
import { reported } from '../reported.ts';
import { state } from '../state.ts';

/** The dry film that a new survey of a coat would ask for, and where that comes from; null where nobody has said it. */
export interface NominalFilm {
  readonly um: number | null;
  readonly from: string;
}

/** The film that the coat's target names, where that is dry; else what the plan comes to, where its film is at hand. */
export function nominalOfCoat(coat: CoatSpec): NominalFilm {
  if (coat.target.film === 'dry') return { um: coat.target.thickness_um, from: 'The coat\'s target, dry film.' };
  const wet = shown(coat.target.thickness_um * 1e-6, 'film', state.units.value);
  const laid = reported.value;
  if (laid === null || laid.setting.coat.id !== coat.id) return { um: null, from: `The coat's target is ${wet} of wet film: type the dry film that the data sheet asks for.` };
  return { um: Number((laid.verdict.dry.mean_m * 1e6).toPrecision(2)), from: `The mean dry film that the model predicts for the coat, to two figures; its target is ${wet} of wet film. Better: what the data sheet asks for.` };
}
