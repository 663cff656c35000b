import type { TodayAnswer, TodayQuestion } from '../scheme/today.ts';
import { bothFilms, ratioText, sprayedAt } from './todayFigures.ts';
import { shown, shownAngle, shownPercent, shownTemperature, shownTemperatureStep, type UnitSystem } from './units.ts';

const BACKING_TAKEN: Readonly<Record<TodayQuestion['backing'], string>> = { 'open-cloth': 'open cloth', 'thin-sheet': 'thin metal sheet', 'thick-board': 'thick board' };

/** Each number of the question that nobody stated, in words: what the answers take as usual. */
export function todayTaken({ question, mix, thinning }: TodayAnswer, stated: ReadonlySet<string>, system: UnitSystem): readonly string[] {
  const words: Readonly<Partial<Record<keyof TodayQuestion, string>>> = {
    finish: mix.finish.name,
    thinner: `${question.thinner} thinner`,
    thinnerRatio: ratioTaken(thinning),
    seconds: 'no cup reading',
    area_m2: shown(question.area_m2, 'panel-area', system),
    dry_m: bothFilms(question.dry_m, 'dry', system),
    coats: 'as few coats as hold',
    tilt_rad: question.tilt_rad === Math.PI / 2 ? 'an upright side' : `a side ${shownAngle(question.tilt_rad)} from level`,
    backing: BACKING_TAKEN[question.backing],
    surface_K: question.surface_K === null ? 'the part’s surface not measured' : `the part’s surface at ${shownTemperature(question.surface_K, system)}`,
    liquid_K: question.liquid_K === null ? 'liquid as warm as the air' : `liquid at ${shownTemperature(question.liquid_K, system)}`,
    afternoon_K: question.afternoon_K === null ? `${shownTemperatureStep(5, system)} warmer this afternoon` : `${shownTemperature(question.afternoon_K, system)} this afternoon`,
    sanded_m: `${shown(question.sanded_m, 'film', system)} sanded off`,
    efficiencyFraction: `${shownPercent(question.efficiencyFraction)} of the solids landing`,
  };
  return Object.entries(words).filter(([key]) => !stated.has(key)).map(([, text]) => text);
}

/** Thinning that nobody typed: what film, coats and amounts are worked out with, and what was read is taken to be. */
function ratioTaken({ sprayed, read_s, refusal, thinnerRatio }: TodayAnswer['thinning']): string {
  const worked = `film, coats and amounts ${sprayedAt(sprayed)}, finish to thinner by volume`;
  return read_s === null || refusal !== null ? worked : `${worked}; the mix that was read taken as ${ratioText(thinnerRatio)}`;
}
