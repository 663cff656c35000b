import type { TodayQuestion } from '../scheme/today.ts';
import type { Mix } from '../mix/mix.ts';
import { bothFilms, ratioText } from './todayFigures.ts';
import { shown, shownAngle, shownPercent, shownTemperature, shownTemperatureStep, type UnitSystem } from './units.ts';

const BACKING_TAKEN: Readonly<Record<TodayQuestion['backing'], string>> = { 'open-cloth': 'open cloth', 'thin-sheet': 'thin metal sheet', 'thick-board': 'thick board' };

/** Each number of the question that nobody stated, in words: what the answers take as usual. */
export function todayTaken(question: TodayQuestion, mix: Mix, stated: ReadonlySet<string>, system: UnitSystem): readonly string[] {
  const words: Readonly<Partial<Record<keyof TodayQuestion, string>>> = {
    finish: mix.finish.name,
    thinner: `${question.thinner} thinner`,
    thinnerRatio: `${ratioText(question.thinnerRatio)} finish to thinner by volume`,
    seconds: 'no cup reading',
    area_m2: shown(question.area_m2, 'panel-area', system),
    dry_m: bothFilms(question.dry_m, 'dry', system),
    coats: 'as few coats as hold',
    tilt_rad: question.tilt_rad === Math.PI / 2 ? 'an upright side' : `a side ${shownAngle(question.tilt_rad)} from level`,
    backing: BACKING_TAKEN[question.backing],
    surface_K: 'part and liquid as warm as the air',
    afternoon_K: question.afternoon_K === null ? `${shownTemperatureStep(5, system)} warmer this afternoon` : `${shownTemperature(question.afternoon_K, system)} this afternoon`,
    sanded_m: `${shown(question.sanded_m, 'film', system)} sanded off`,
    efficiencyFraction: `${shownPercent(question.efficiencyFraction)} of the solids landing`,
  };
  return Object.entries(words).filter(([key]) => !stated.has(key)).map(([, text]) => text);
}
