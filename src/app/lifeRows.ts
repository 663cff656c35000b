import { shown, shownTemperatureStep, type LifeFigures, type LifeLimits, type UnitSystem } from '../../sim/index.ts';
import { clockText } from './timeWords.ts';

/** A figure of a film's life; `band` is empty where nothing is judged by it. */
export interface LifeRow {
  readonly name: string;
  readonly value: string;
  readonly band: string;
}

/** What a film goes through, in rows; bands are those by which its faults are found. */
export function lifeRows(figures: LifeFigures, limits: LifeLimits, system: UnitSystem): readonly LifeRow[] {
  const seen = (at_s: number | null): string => (at_s === null ? `not within ${clockText(figures.watched_s)}` : clockText(at_s));
  const film = (value_m: number): string => shown(value_m, 'film', system);
  const rows: LifeRow[] = [
    { name: 'Dry to touch after', value: seen(figures.touchDry_s), band: '' },
    { name: 'Ready for another coat after', value: seen(figures.recoat_s), band: '' },
    { name: 'Coldest wet film against dew point', value: marginText(figures.blushMargin_K, system), band: `above ${shownTemperatureStep(limits.blush_K, system)}` },
    {
      name: 'Longest way that film moved',
      value: figures.longestRun_m > 0 ? shown(figures.longestRun_m, 'length', system) : 'none moved',
      band: `up to ${shown(limits.run_m, 'length', system)} where film gathers`,
    },
    { name: 'Ripple left, on average', value: film(figures.peel_m), band: `up to ${film(limits.peel_m)} anywhere` },
    { name: 'Dry film of all coats, on average', value: film(figures.dry_m), band: `up to ${film(limits.thick_m)} anywhere` },
    { name: 'Its weight', value: shown(figures.weight_kg_m2, 'areal-weight', system), band: '' },
  ];
  if (figures.ranOff_m3 > 0) rows.splice(4, 0, { name: 'Ran off the panel', value: shown(figures.ranOff_m3, 'volume', system), band: '' });
  return rows;
}

function marginText(margin_K: number, system: UnitSystem): string {
  if (!Number.isFinite(margin_K)) return 'no film';
  return `${shownTemperatureStep(Math.abs(margin_K), system)} ${margin_K < 0 ? 'below' : 'above'}`;
}
