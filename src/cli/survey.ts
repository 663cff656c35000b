import {
  CrosscoatError, judgeAlone, judgeSurvey, parseJob, parseSurveyReadings, samplingJson, samplingNumbers, samplingWords, surveyJson, surveyText,
  type FilmUnit, type Job, type ReportedSurvey, type RuleSpec, type SamplingUnit, type SurveyAsked, type UnitSystem, type Warning,
} from '../../sim/index.ts';
import { EXIT } from './exitCodes.ts';
import type { Io } from './io.ts';
import { nameOf, readText, type TextFile } from './readText.ts';
import { isBare, noUnit, statedQuantity } from './surveyQuantity.ts';
import { RULE_CHOICES, ruleAsked, type RuleOptions } from './surveyRule.ts';

/** Options of `crosscoat survey` as commander gives them. */
export interface SurveyOptions extends RuleOptions {
  readonly survey?: string;
  readonly unit?: FilmUnit;
  readonly spotMeans?: true;
  readonly density?: string;
  readonly solids?: string;
  readonly plan?: true;
  readonly area?: string;
  readonly units: UnitSystem;
  readonly strict?: true;
  readonly json?: true;
}

/** A job file may hold the readings too. */
const READINGS: TextFile = { what: 'file of readings or job file', mostBytes: 200e6, advice: 'a survey keeps twenty thousand readings' };

/** Judges readings from a file, or the surveys of a job, by a rule; or prints how many readings a rule asks for. @returns the exit code. */
export async function survey(io: Io, path: string | undefined, options: SurveyOptions): Promise<number> {
  if (options.plan === true) return planned(io, path, options);
  if (path === undefined) throw new CrosscoatError('not-found', 'survey needs a file of readings (CSV) or a job file, or --plan with --area and --rule');
  if (options.area !== undefined) throw new CrosscoatError('not-found', '--area goes with --plan');
  const text = await readText(io, path, READINGS);
  const isJob = /^\uFEFF?\s*\{/.test(text);
  const judged = isJob ? surveysOf(parseJob(text, nameOf(path)).job, options) : [readingsOf(text, path, options)];
  const [only] = judged;
  if (options.json === true) await io.out(`${JSON.stringify(only !== undefined && judged.length === 1 ? surveyJson(only) : { surveys: judged.map(surveyJson) }, null, 2)}\n`);
  else await io.out(judged.map((each) => surveyText(each, options.units)).join('\n'));
  return options.strict === true && judged.some(isOpenOrFails) ? EXIT.faults : EXIT.done;
}

/** A pass on areas of fewer than five spots is not the rule's whole answer. */
function isOpenOrFails({ judged: { answer, grouping } }: ReportedSurvey): boolean {
  return answer !== 'pass' || (grouping !== null && grouping.shortAreas > 0);
}

function surveysOf(job: Job, options: SurveyOptions): ReportedSurvey[] {
  const surveys = job.surveys ?? [];
  const ids = surveys.map(({ id }) => id).join(', ');
  if (surveys.length === 0) throw new CrosscoatError('not-found', 'the job has no survey; give a file of readings (CSV), or take the survey in the app');
  const chosen = surveys.filter(({ id }) => options.survey === undefined || id === options.survey);
  if (chosen.length === 0) throw new CrosscoatError('not-found', `--survey = "${options.survey ?? ''}" is not in the job (it has ${ids}); give one of these`);
  const stray = (['unit', 'spotMeans', 'density', 'solids'] as const).find((key) => options[key] !== undefined);
  if (stray !== undefined) throw new CrosscoatError('not-found', `--${stray === 'spotMeans' ? 'spot-means' : stray} is for a file of readings; a survey of a job states its own`);
  const rule = ruleAsked(options);
  return chosen.map((each) => judgeSurvey(job, rule === null ? each : { ...each, rule }));
}

function readingsOf(text: string, path: string, options: SurveyOptions): ReportedSurvey {
  if (options.survey !== undefined) throw new CrosscoatError('not-found', '--survey is for a job file; these are readings');
  const rule = ruleAsked(options);
  if (rule === null) throw new CrosscoatError('not-found', `--rule is missing; say what judges the readings: --rule ${Object.keys(RULE_CHOICES).join('|')}`);
  const { readings, warnings } = parseSurveyReadings(text, nameOf(path), { unit: options.unit, unitAdvice: 'give --unit um|mil|mm' });
  checkTaken(readings, options);
  const asked = { name: nameOf(path), rule, readings: options.spotMeans === true ? asSpotMeans(readings) : readings, ...taken(options) };
  const reported = judgeAlone(asked);
  return { ...reported, warnings: [...warnings, ...singleValueNote(options, rule), ...reported.warnings] };
}

/** Coupons and combs say their dry film only by a figure that is stated beside them. */
function checkTaken(readings: ReportedReadings, { density, solids }: SurveyOptions): void {
  const first = (kind: ReportedReadings[number]['kind']): number => readings.findIndex((reading) => reading.kind === kind) + 1;
  const [coupon, comb] = [first('coupon'), first('comb')];
  if (coupon > 0 && density === undefined) throw new CrosscoatError('not-found', `reading ${coupon} is a coupon, whose weight gives a film only by the density of the dry film; state it, such as --density 1300kg/m3`);
  if (comb > 0 && solids === undefined) throw new CrosscoatError('not-found', `reading ${comb} is a wet-film comb, which gives a dry film only by the solids of the mix as sprayed, by volume; state them, such as --solids 20%`);
}

type ReportedReadings = SurveyAsked['readings'];

function asSpotMeans(readings: ReportedReadings): ReportedReadings {
  return readings.map((reading, i) => ({ ...reading, spot: reading.spot ?? String(i + 1) }));
}

function taken({ density, solids }: SurveyOptions): { readonly dryDensity_kg_m3?: number; readonly solids_percent?: number } {
  return {
    ...(density === undefined ? {} : { dryDensity_kg_m3: densityOf(density) }),
    ...(solids === undefined ? {} : { solids_percent: solidsOf(solids) }),
  };
}

function solidsOf(text: string): number {
  const fraction = statedQuantity('--solids', text, ['ratio', '%', '20%']);
  if (fraction >= 0.001 && fraction <= 1) return fraction * 100;
  throw new CrosscoatError('range', `--solids = "${text}" is not from 0.1 to 100 %; give the solids of the mix as sprayed, by volume`);
}

/** kg/m³, or g/cm³ and kg/L, which are the same. */
function densityOf(text: string): number {
  if (isBare(text)) throw noUnit('--density', text, 'kg/m3, g/cm3 or kg/L', '1300kg/m3 or 1.3g/cm3');
  const parts = /^(\d+\.?\d*|\.\d+)\s*(kg\/m[3³]|g\/cm[3³]|kg\/l)?$/i.exec(text.trim());
  const value = Number(parts?.[1] ?? NaN) * (/^(g|kg\/l)/i.test(parts?.[2] ?? '') ? 1000 : 1);
  if (value >= 500 && value <= 5000) return value;
  throw new CrosscoatError('range', `--density = "${text}" is not from 500 to 5000 kg/m³; give the density of the dry film, such as 1300kg/m3 or 1.3g/cm3`);
}

function singleValueNote({ nominal }: SurveyOptions, { kind }: RuleSpec): Warning[] {
  if (kind !== 'spots-areas' || nominal === undefined) return [];
  return [{ code: 'defaults-used', text: `A single value, ${nominal}, is specified; it stands for 20 % to each side of it.`, place: {} }];
}

/** How many readings a rule's own table asks for. */
async function planned(io: Io, path: string | undefined, options: SurveyOptions): Promise<number> {
  if (path !== undefined) throw new CrosscoatError('not-found', `--plan reads no file; leave ${path} out`);
  if (options.area === undefined || options.rule === undefined) throw new CrosscoatError('not-found', '--plan needs --area and --rule, such as --plan --area 2800ft2 --rule pa2');
  const area_m2 = statedQuantity('--area', options.area, ['area', 'm²', '30m2 or 300ft2']);
  const unit: SamplingUnit = /(ft|in|'|")[²2]?\s*$/i.test(options.area.normalize('NFKC')) ? 'ft2' : 'm2';
  const numbers = samplingNumbers(RULE_CHOICES[options.rule], area_m2, unit);
  if (options.json === true) await io.out(`${JSON.stringify({ rule: options.rule, area_m2: Number(area_m2.toPrecision(12)), ...samplingJson(numbers) }, null, 2)}\n`);
  else await io.out(`${samplingWords(numbers)}${numbers.repeats === 0 ? '' : `, of which ${numbers.repeats} may be taken again`}.\n${numbers.source}.\n`);
  return EXIT.done;
}
