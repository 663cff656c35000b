import {
  CELSIUS_0_K,
  answerToday, cupByWord, CrosscoatError, finishById, jobOfToday, parseRatio, partDensities, serialiseJob, thinnerById, todayJson, todayText, USUAL_TODAY,
  genericMixSpec, type BackingWord, type TodayQuestion, type UnitSystem,
} from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { quantityOf, wholeNumber } from './optionValues.ts';
import { statedAir, statedTemperature_C, type AirWords } from './statedAir.ts';

/** Options of `crosscoat today` as commander gives them. */
export interface TodayOptions extends AirWords {
  readonly finish?: string;
  readonly thinner?: string;
  readonly ratio?: string;
  readonly cup?: string;
  readonly seconds?: string;
  readonly area?: string;
  readonly dry?: string;
  readonly coats?: string;
  readonly slope?: string;
  readonly backing?: BackingWord;
  readonly surface?: string;
  readonly liquid?: string;
  readonly afternoon?: string;
  readonly sanded?: string;
  readonly lands?: string;
  readonly working?: true;
  readonly job?: true;
  readonly units: UnitSystem;
  readonly json?: true;
}


/** Answers the front sheet, or prints its answer as a job. @returns the exit code. */
export async function today(io: Io, options: TodayOptions): Promise<number> {
  if (options.job === true && options.json === true) throw new CrosscoatError('schema', '--job and --json both say what is printed; give one of them');
  const stated = statedQuestion(options);
  const answer = answerToday({ ...USUAL_TODAY, ...stated });
  if (options.job === true) await io.out(serialiseJob(jobOfToday(answer)));
  else if (options.json === true) await io.out(`${JSON.stringify(todayJson(answer, options.units), null, 2)}\n`);
  else await io.out(todayText(answer, options.units, { working: options.working === true, stated: new Set(Object.keys(stated)) }));
  return EXIT.done;
}

/** What the options state; the rest is usual. */
function statedQuestion(options: TodayOptions): Partial<TodayQuestion> {
  const air = statedAir(options);
  return {
    temperature_K: air.temperature_C + CELSIUS_0_K,
    humidityFraction: air.humidity_percent / 100,
    ...(options.altitude === undefined ? {} : { altitude_m: air.altitude_m }),
    ...(options.speed === undefined ? {} : { airSpeed_m_s: air.speed_m_s }),
    ...(options.finish === undefined ? {} : { finish: named('--finish', () => finishById(options.finish as string)).id }),
    ...(options.thinner === undefined ? {} : { thinner: named('--thinner', () => thinnerById(options.thinner as string)).id }),
    ...ratioOf(options),
    ...cupOf(options),
    ...(options.area === undefined ? {} : { area_m2: quantityOf('--area', options.area.replace(/(m|ft|in)2$/, '$1²'), ['area', 'm²', '4m2 or 40ft2']) }),
    ...(options.dry === undefined ? {} : { dry_m: quantityOf('--dry', options.dry, ['length', 'µm', '25um or 1mil']) }),
    ...(options.coats === undefined ? {} : { coats: wholeNumber('--coats', options.coats, 1, 60) }),
    ...(options.slope === undefined ? {} : { tilt_rad: quantityOf('--slope', options.slope, ['angle', 'deg', '90deg']) }),
    ...(options.backing === undefined ? {} : { backing: options.backing }),
    ...(options.surface === undefined ? {} : { surface_K: temperature_K('--surface', options.surface) }),
    ...(options.liquid === undefined ? {} : { liquid_K: temperature_K('--liquid', options.liquid) }),
    ...(options.afternoon === undefined ? {} : { afternoon_K: temperature_K('--afternoon', options.afternoon) }),
    ...(options.sanded === undefined ? {} : { sanded_m: quantityOf('--sanded', options.sanded, ['length', 'µm', '3um or 0.1mil']) }),
    ...(options.lands === undefined ? {} : { efficiencyFraction: quantityOf('--lands', options.lands, ['ratio', '%', '65%']) }),
  };
}

function ratioOf({ finish, thinner, ratio }: TodayOptions): Partial<TodayQuestion> {
  if (ratio === undefined) return {};
  const spec = genericMixSpec(finish ?? USUAL_TODAY.finish, thinner ?? USUAL_TODAY.thinner, 1);
  const { thinnerPerFinish, retarderFraction } = parseRatio(ratio, partDensities(spec), 'volume', { pointer: '--ratio' });
  return { thinnerRatio: thinnerPerFinish, ...(retarderFraction > 0 ? { retarderFraction } : {}) };
}

function cupOf({ cup, seconds }: TodayOptions): Partial<TodayQuestion> {
  if (seconds !== undefined && cup === undefined) throw new CrosscoatError('schema', `--seconds = "${seconds}" says nothing without its cup; give --cup too, such as --cup ford4`);
  return {
    ...(cup === undefined ? {} : { cup: named('--cup', () => cupByWord(cup)).id }),
    ...(seconds === undefined ? {} : { seconds: quantityOf('--seconds', seconds, ['time', 's', '24']) }),
  };
}

function temperature_K(option: string, text: string): number {
  return statedTemperature_C(option, text) + CELSIUS_0_K;
}

/** What an option names; an unknown word is told with the option. */
function named<Entry>(option: string, find: () => Entry): Entry {
  try {
    return find();
  } catch (error) {
    if (error instanceof CrosscoatError) throw new CrosscoatError(error.code, `${option}: ${error.message}`);
    throw error;
  }
}
