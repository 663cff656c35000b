import { counted } from '../../base/counted.ts';
import type { Warning } from '../../base/errors.ts';
import type { PanelSpec } from '../../job/schema.ts';
import { nearestEdge } from '../../panel/nearestEdge.ts';
import type { Panel } from '../../panel/panel.ts';
import type { FilmReading } from '../../survey/filmReading.ts';
import type { Grouping, JudgedSurvey } from '../../survey/judgedSurvey.ts';
import type { SamplingNumbers } from '../../survey/samplingNumbers.ts';

/** The panel that was read, and what lies under its film. */
export interface SurveyedPanel {
  readonly panel: Panel;
  readonly backing: PanelSpec['backing'];
}

/** Below it ISO 19840 does not claim to hold (its scope, as read on a standards shop's page), µm. */
const BORROWED_SCOPE_UM = 40;
/** A place this far off the edge is still a reading at the edge: places are noted by hand, m. */
const EDGE_M = 2e-3;

/** Why a verdict may say less than it seems to. @param films before the rule's own correction. */
export function surveyDoubts(judged: JudgedSurvey, films: readonly FilmReading[], surveyed: SurveyedPanel | null, sampling: SamplingNumbers | null): Warning[] {
  return [
    ...gaugeDoubts(films, surveyed),
    ...scopeDoubts(judged),
    ...(surveyed === null ? [] : offPanel(films, surveyed.panel)),
    ...filmDoubts(films),
    ...numberDoubts(judged, sampling),
    ...(judged.grouping === null ? [] : groupingDoubts(judged.grouping)),
  ];
}

function gaugeDoubts(films: readonly FilmReading[], surveyed: SurveyedPanel | null): Warning[] {
  const onMetal = films.filter(({ kind }) => kind === 'metal').length;
  if (onMetal === 0 || surveyed?.backing !== 'open-cloth') return [];
  return [warning('wrong-gauge', `${counted(onMetal, 'gauge reading')} on a panel of open cloth: magnetic and eddy-current gauges read nothing useful on open cloth. They count only where they were read on a metal witness sprayed alongside, or on a metal part; otherwise weigh a coupon.`)];
}

function scopeDoubts({ rule }: JudgedSurvey): Warning[] {
  if (rule.kind !== 'mean-80' || rule.nominal_um >= BORROWED_SCOPE_UM) return [];
  return [warning('rule-scope', `The nominal film, ${rule.nominal_um} µm, is below the ${BORROWED_SCOPE_UM} µm at which the scope of ISO 19840 begins; the rule is borrowed beyond it, and gauges scatter by a good share of so thin a film.`)];
}

function offPanel(films: readonly FilmReading[], panel: Panel): Warning[] {
  const off = films.filter(({ at_m }) => at_m !== null && isOff(at_m, panel));
  const [first] = off;
  if (first === undefined) return [];
  const place = first.at_m === null ? {} : { at_m: first.at_m };
  return [{ code: 'off-panel', text: `${counted(off.length, 'reading')} off the panel or in a hole of it, the first being number ${first.index + 1}; they are judged all the same. Check place and unit.`, place }];
}

function isOff([x, y]: readonly [number, number], panel: Panel): boolean {
  const isOutsideBox = x < -EDGE_M || y < -EDGE_M || x > panel.width_m + EDGE_M || y > panel.height_m + EDGE_M;
  return isOutsideBox || nearestEdge(panel, x, y).distance_m < -EDGE_M;
}

function filmDoubts(films: readonly FilmReading[]): Warning[] {
  const kinds = new Set(films.map(({ kind }) => kind));
  const unbounded = films.filter(({ high_m }) => high_m === Infinity).length;
  const below = films.filter(({ high_m }) => high_m < 0);
  return [
    ...(kinds.size < 2 ? [] : [warning('mixed-kinds', `Readings of ${kinds.size} kinds (${[...kinds].join(', ')}) are judged as one; each kind errs in its own way, so judge them apart where there are enough.`)]),
    ...(unbounded === 0 ? [] : [warning('model-limit', `${counted(unbounded, 'comb reading')} with every tooth wetted: such a reading has no upper bound and is left out of mean and spread. Use a longer comb.`)]),
    ...(below.length === 0 ? [] : [warning('below-zero', `${counted(below.length, 'reading')} below zero, the first being number ${(below[0] as FilmReading).index + 1}: set the gauge or the scale to zero on the bare piece, and read again.`)]),
  ];
}

function numberDoubts({ readings, rule }: JudgedSurvey, sampling: SamplingNumbers | null): Warning[] {
  if (sampling === null || readings.length >= sampling.readings) return [];
  // Spots that are given as means need no three readings each; their number is told with the grouping.
  if (rule.kind === 'spots-areas' && readings.length >= sampling.spots) return [];
  return [warning('few-readings', `${counted(readings.length, 'reading')}, where the rule’s own table asks for ${sampling.readings} on this panel.`)];
}

const SPOT_WORDS: Readonly<Record<Grouping['spots'], string | null>> = {
  named: null,
  threes: 'The readings name no spot: each three in order make one.',
  'means-named': 'Each spot has one reading; it is taken as the mean of that spot.',
  'means-assumed': 'The readings name no spot and are too few for an area of fifteen: each is taken as the mean of a spot. Name the spots where that is not so.',
  mixed: 'Some readings name their spot and some do not; the others are put together in order.',
};
const AREA_WORDS: Readonly<Record<Grouping['areas'], string | null>> = {
  named: null,
  fives: 'The spots name no area: each five in order make one.',
  mixed: 'Some spots name their area and some do not; of the others each five in order make one.',
};

function groupingDoubts({ spots, areas, shortSpots, shortAreas }: Grouping): Warning[] {
  const words = [SPOT_WORDS[spots], AREA_WORDS[areas]].filter((text) => text !== null);
  return [
    ...(words.length === 0 ? [] : [warning('defaults-used', words.join(' '))]),
    ...(shortSpots === 0 ? [] : [warning('few-readings', `${counted(shortSpots, 'spot')} of fewer than three readings; the rule asks for three at least.`)]),
    ...(shortAreas === 0 ? [] : [warning('few-readings', `${counted(shortAreas, 'area')} of fewer than five spots; the rule asks for five.`)]),
  ];
}

function warning(code: Warning['code'], text: string): Warning {
  return { code, text, place: {} };
}
