import type { SetUpSpec } from '../../job/schema.ts';
import type { ProvedKey, ProvedNumber } from './provedNumber.ts';

/** Half 95 % intervals that a card found, by key, in the key's unit. */
export type ProvedWithin = Partial<Readonly<Record<ProvedKey, number>>>;

/** What differs between a set-up as stated and as proved, and every number that was measured although it came out the same. */
export function provedChanges(before: SetUpSpec, after: SetUpSpec, within: ProvedWithin): ProvedNumber[] {
  const [from, to] = [numbersOf(before), numbersOf(after)];
  return KEYS.flatMap((key) => {
    const value = to[key];
    if (value === null || (value === from[key] && within[key] === undefined)) return [];
    return [{ key, from: from[key], to: value, within: within[key] ?? null }];
  });
}

const KEYS: readonly ProvedKey[] = [
  'width_mm', 'depth_mm', 'atDistance_mm', 'origin_mm', 'profile', 'beta1', 'taper_mm',
  'fluidRate_mL_min', 'efficiency_percent', 'efficiencyAtDistance_mm', 'nearest_mm', 'farthest_mm',
];

function numbersOf({ fan, fluidRate_mL_min, transfer, distanceRange_mm }: SetUpSpec): Readonly<Record<ProvedKey, number | string | null>> {
  const { profile } = fan;
  return {
    width_mm: fan.width_mm,
    depth_mm: fan.depth_mm,
    atDistance_mm: fan.atDistance_mm,
    origin_mm: fan.origin_mm ?? 0,
    profile: profile.family,
    beta1: profile.family === 'double-beta' ? profile.beta1 : null,
    taper_mm: profile.family === 'flat-top' ? profile.taper_mm : null,
    fluidRate_mL_min,
    efficiency_percent: transfer.efficiency_percent,
    efficiencyAtDistance_mm: transfer.atDistance_mm,
    nearest_mm: distanceRange_mm[0],
    farthest_mm: distanceRange_mm[1],
  };
}
