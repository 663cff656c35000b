import { BALANCE_REMINDER } from './amountsWords.ts';
import { CLIMATE_STATEMENT } from './climateWords.ts';
import type { TodayAnswer, TodayPart, TodaySprayed } from '../scheme/today.ts';
import { bothFilms, drainSeconds, ratioText, shownKinematic, sprayedAt } from './todayFigures.ts';
import { roundedText, shown, shownAngle, shownLiquid, shownPercent, shownTemperature, shownTime, type UnitSystem } from './units.ts';

/** How an answer comes about. */
export interface Working {
  readonly formula: readonly string[];
  readonly inputs: readonly (readonly [name: string, value: string])[];
  readonly sources: readonly string[];
  readonly limits: readonly string[];
}

const FROM_WORDS: Readonly<Record<TodaySprayed['from'], string>> = { typed: 'as typed', recommended: 'the middle of what is recommended', assumed: 'assumed' };

/** How one answer of the front sheet comes about: formula, what was put in, whose it is, and where it ends. */
export function todayWorking(answer: TodayAnswer, part: TodayPart, system: UnitSystem): Working {
  return WORKINGS[part](answer, system);
}

const WORKINGS: Readonly<Record<TodayPart, (answer: TodayAnswer, system: UnitSystem) => Working>> = {
  climate: climateWorking,
  thinning: thinningWorking,
  film: filmWorking,
  hold: holdWorking,
  next: nextWorking,
  amounts: amountsWorking,
};

function climateWorking({ climate, mix, thinning, question }: TodayAnswer, system: UnitSystem): Working {
  const { air, film_K, faces } = climate.answer;
  return {
    formula: [
      'Heat that the air gives the wet film = heat that its solvents take as they leave; the film stands where the two are equal.',
      'Margin = film temperature - dew point. Below 0, water can fall into the film and whiten it.',
    ],
    inputs: [
      ['air', `${shownTemperature(air.temperature_K, system)}, ${shownPercent(air.relativeHumidityFraction)} humidity`],
      ['dew point', shownTemperature(air.dewPoint_K, system)],
      ['wet film of this mix', `${shownTemperature(film_K, system)}, ${faces === 2 ? 'two faces taking heat' : 'one face taking heat'}`],
      ['surface of the part', climate.surface_K === null ? 'not measured' : `${shownTemperature(climate.surface_K, system)}, as typed`],
      ['mix', `${mix.finish.name}, with ${question.thinner} thinner ${sprayedAt(thinning.sprayed)}`],
    ],
    sources: [
      'Moist air: ASHRAE Handbook, Fundamentals (2017), chapter 1. Film: W. K. Lewis, the wet bulb of solvents, Trans. ASME 44 (1922).',
      ...climate.verdict.rules.map(({ rule }) => rule.source),
    ],
    limits: [
      'The film is a lower bound: nothing lends it heat but the air, so on metal or board it is warmer.',
      'The thinner is an invented blend that stands for its kind; the maker’s own differs.',
      CLIMATE_STATEMENT,
    ],
  };
}

function thinningWorking({ thinning, mix }: TodayAnswer, system: UnitSystem): Working {
  const { cup, viscosity_m2_s, liquid_K, afternoon_K, sensitivity_K, sprayCup, read_s, thinnerRatio } = thinning;
  const cupFormula = cup.form === 'linear' ? `ν = ${cup.a} (t - ${cup.b})` : `ν = ${cup.a} t - ${cup.b}/t`;
  return {
    formula: [
      `${cup.name}: ${cupFormula}, ν in mm²/s, t in s.`,
      'Thinning: ln ν falls in a straight line with the share of thinner in the mix.',
      'Temperature: ln(ν2/ν1) = B (1/T2 - 1/T1), T in kelvin.',
    ],
    inputs: [
      ['reading', read_s === null ? 'none' : `${drainSeconds(read_s)} in the ${cup.name} at ${shownTemperature(liquid_K, system)}`],
      ['viscosity', shownKinematic(viscosity_m2_s)],
      ['at', `${ratioText(thinnerRatio)}, finish to thinner`],
      ['B', `${roundedText(sensitivity_K.value)} K (${roundedText(sensitivity_K.low)} to ${roundedText(sensitivity_K.high)} K)`],
      ['this afternoon', shownTemperature(afternoon_K, system)],
    ],
    sources: [
      `Cup: ${cup.source}; holds from ${cup.least_s} to ${cup.most_s} s.`,
      `Seconds for spraying: 18 to 24 s in the ${sprayCup.name}, common practice for lacquer-type finishes; the cup holds from ${sprayCup.least_s} s.`,
      `Viscosity of the finish: ${mix.finish.viscositySource}`,
    ],
    limits: [
      'The slope is the finish’s usual one, not yours: the textbook rules for blends lie up to tenfold apart for a polymer in thinner. Two readings of your own at two ratios (stage Scheme, sheet Mix) go before it.',
      'Seconds without the cup’s name mean nothing; outside a cup’s range no figure is given.',
      'The data sheet’s own thinning goes first. Never warm a solvent over a flame or a bare element.',
    ],
  };
}

function filmWorking({ film, mix, thinning, question }: TodayAnswer, system: UnitSystem): Working {
  const { value, low, high, source } = mix.finish.volumeSolidsFraction;
  return {
    formula: ['wet = dry · (1 + R) / VS, R thinner to one of finish, VS volume solids of the finish in the can.', `${bothFilms(film.coatDry_m, 'dry', system)} · (1 + ${roundedText(mix.thinnerRatio)}) / ${roundedText(value)} = ${bothFilms(film.coatWet_m, 'wet', system)}`],
    inputs: [
      ['dry film wanted, all coats', bothFilms(question.dry_m, 'dry', system)],
      ['coats', `${film.coats}${question.coats === null ? ', the fewest that hold on this side' : ', as typed'}`],
      ['thinner to one of finish', `${roundedText(mix.thinnerRatio)}, ${FROM_WORDS[thinning.sprayed.from]}`],
      ['volume solids in the can', `${shownPercent(value)} (${shownPercent(low)} to ${shownPercent(high)})`],
      ['sanded off', shown(question.sanded_m, 'film', system)],
    ],
    sources: ['Film from wet comb readings: ASTM D4414, ISO 2808 method 1A.', `Volume solids: ${source}.`, 'Pass, single and double coat: FAA AC 43.13-1B, paragraph 2-20.'],
    limits: [
      'By volume: solids by weight are another figure. Volumes are taken to add.',
      'The wet film is as mixed; what leaves in flight makes a comb read less. The comb is read within seconds, and on open cloth no gauge reads.',
    ],
  };
}

function holdWorking({ hold, mix, question }: TodayAnswer, system: UnitSystem): Working {
  const { value, low, high, source } = mix.finish.yieldStress_Pa;
  return {
    formula: ['Film that holds = yield stress / (density · g · sin slope).', 'The trade’s films for an upright side are divided by sin slope, as the pull is (ours).'],
    inputs: [
      ['wet film of one coat', bothFilms(hold.wet_m, 'wet', system)],
      ['slope from level', shownAngle(question.tilt_rad)],
      ['yield stress', `${roundedText(value)} Pa (${roundedText(low)} to ${roundedText(high)} Pa)`],
      ['density of the mix', `${roundedText(mix.density_kg_m3)} kg/m³`],
    ],
    sources: [`Yield stress: ${source}.`, 'Working coat, limit and sag: common practice, reported for spray lacquers on an upright side.'],
    limits: [
      'It is the even film. A run starts where film gathers: an edge, a stopped gun, a slow turn. The stage Strokes lays and watches it.',
      'Colder air makes the same film run more, as the solvent leaves more slowly. Face down, drips are not modelled.',
    ],
  };
}

function nextWorking({ next, film, climate }: TodayAnswer, system: UnitSystem): Working {
  const { air } = climate.answer;
  return {
    formula: [
      'Trade: wait today = wait stated for 70 °F · 2^((70 - T)/10), T in °F.',
      'Model: solvent leaves the film by the air at first, then by diffusion through it; dry to touch at 1000 Pa s, ready at 18 % of solvent left.',
      'Earliest = the longer of the two.',
    ],
    inputs: [
      ['air', `${shownTemperature(air.temperature_K, system)}, ${shown(air.speed_m_s, 'speed', system)} over the panel`],
      ['trade’s factor', roundedText(next.ruleRatio)],
      ['model’s first evaporation, factor', roundedText(next.modelRatio)],
      ['wet film of one coat', bothFilms(film.coatWet_m, 'wet', system)],
    ],
    sources: [
      'FAA AC 43.13-1B, paragraph 2-21: each 10 °F changes drying time "by 100 percent"; doubling and halving is the sensible reading.',
      'Ready for another coat at 18 % of solvent: Assumed, so that a usual cross coat has stood about the circular’s hour at 70 °F.',
    ],
    limits: [
      'One coat laid at once on a bare backing: a coat beneath holds solvent and makes it longer, a draught makes it shorter.',
      `It felt dry and was not: a film is cool to the cheek while solvent leaves it. Watched for ${shownTime(next.watched_s)} at most.`,
      'The product sheet’s times go first.',
    ],
  };
}

function amountsWorking({ amounts, film, mix, thinning, question }: TodayAnswer, system: UnitSystem): Working {
  const { landed_m3, mix_m3, pot_m3 } = amounts;
  return {
    formula: [
      'Liquid = area · wet film of all coats / share that lands + what stays in cup and gun.',
      `${shown(question.area_m2, 'panel-area', system)} · ${bothFilms(film.allWet_m, 'wet', system)} = ${shownLiquid(landed_m3, system)}; / ${roundedText(question.efficiencyFraction)} + ${shownLiquid(pot_m3, system)} = ${shownLiquid(mix_m3, system)}`,
      'Weight = dry film · density of the dry film.',
    ],
    inputs: [
      ['area', shown(question.area_m2, 'panel-area', system)],
      ['share that lands', shownPercent(question.efficiencyFraction)],
      ['left in cup and gun', `${shownLiquid(pot_m3 / amounts.coats, system)} a coat`],
      ['thinner to one of finish', `${roundedText(mix.thinnerRatio)}, ${FROM_WORDS[thinning.sprayed.from]}`],
      ['density of the dry film', `${roundedText(mix.finish.solidsDensity_kg_m3.value)} kg/m³`],
    ],
    sources: [
      'Share that lands: 65 % at least for a low-pressure gun, FAA airframe handbook, chapter on finishing.',
      `Weight of a coat: ${amounts.publishedSource}.`,
      `Density of the dry film: ${mix.finish.solidsDensity_kg_m3.source}.`,
      'Left in cup and gun: Assumed, 30 mL at each coat.',
    ],
    limits: [
      'On narrow parts and open structure less lands than on a plate: half lost is not rare.',
      'Weigh a cloth coupon before and after a coat: it is the better figure.',
      BALANCE_REMINDER,
    ],
  };
}
