import type { PointFilm, Sensitivities, Sensitivity } from '../verdict/workingWindow.ts';
import { roundedText, shown, shownPercent, shownTemperatureStep, type UnitSystem } from './units.ts';

/** Changes that are told: less is not felt, seen or measured. Assumed. */
const TOLD_FILM = 0.005;
const TOLD_SHARE = 0.005;
const TOLD_RUN_M = 0.1e-3;
const TOLD_RIPPLE_M = 0.05e-6;
const TOLD_STEP_K = 0.05;

/** What one step of each axis changes, a sentence each: `25 mm farther: 11 % less film, dry share up from 2 % to 6 %.` */
export function sensitivityWords({ before, steps }: Pick<Sensitivities, 'before' | 'steps'>, system: UnitSystem): string[] {
  return steps.map((step) => `${stepWords(step, system)}: ${changeWords(before, step, system)}.`);
}

/** The step itself: `25 mm farther`, `10 % slower`, `3 °C warmer`. */
function stepWords({ axis, by, value }: Sensitivity, system: UnitSystem): string {
  const share = () => shownPercent(Math.abs(by) / (value - by));
  const more = by > 0;
  switch (axis) {
    case 'distance':
      return `${shown(Math.abs(by), 'length', system)} ${more ? 'farther' : 'nearer'}`;
    case 'speed':
      return `${share()} ${more ? 'faster' : 'slower'}`;
    case 'overlap':
      return `${roundedText(Math.abs(by) * 100)} points ${more ? 'more' : 'less'} overlap`;
    case 'fluid':
      return `${share()} ${more ? 'more' : 'less'} fluid`;
    case 'thinner':
      return `${share()} ${more ? 'more' : 'less'} thinner`;
    case 'temperature':
      return `${shownTemperatureStep(Math.abs(by), system)} ${more ? 'warmer' : 'colder'}`;
    case 'humidity':
      return `${roundedText(Math.abs(by) * 100)} points of humidity ${more ? 'more' : 'less'}`;
  }
}

function changeWords(before: PointFilm, { after, filmRatio }: Sensitivity, system: UnitSystem): string {
  const changes = [
    Math.abs(filmRatio - 1) < TOLD_FILM ? '' : `${shownPercent(Math.abs(filmRatio - 1))} ${filmRatio < 1 ? 'less' : 'more'} film`,
    moved('dry share', before.dryFraction, after.dryFraction, TOLD_SHARE, shownPercent),
    moved('slide', before.run_m, after.run_m, TOLD_RUN_M, (value) => shown(value, 'length', system)),
    moved('ripple', before.peel_m, after.peel_m, TOLD_RIPPLE_M, (value) => shown(value, 'film', system)),
    moved('margin to the dew point', before.blushMargin_K, after.blushMargin_K, TOLD_STEP_K, (value) => shownTemperatureStep(value, system)),
  ].filter((text) => text !== '');
  const told = changes.length === 0 ? 'nothing that shows' : changes.join(', ');
  return after.distanceInRange ? told : `${told}; a guess, outside the distances for which the fan may be believed`;
}

/** A figure before and after, where the difference is worth telling. */
function moved(name: string, before: number, after: number, least: number, words: (value: number) => string): string {
  if (!(Math.abs(after - before) >= least)) return '';
  return `${name} ${after > before ? 'up' : 'down'} from ${words(before)} to ${words(after)}`;
}
