import { roundedText, shown, shownFluidRate, shownNumber, shownPercent, type FanOpening, type Measured, type UnitSystem } from '../../../sim/index.ts';

const DEGREES_PER_RAD = 180 / Math.PI;

/** What a catch cup comes to. @param rate m³/s. */
export function flowSentence({ value, within }: Measured, system: UnitSystem): string {
  return `Fluid rate ${shownFluidRate(value, system)}, ± ${shownFluidRate(within, system)} (${shownPercent(within / value)}).`;
}

/** What the fan's widths come to; null for one width alone. */
export function openingSentence(opening: FanOpening | null, system: UnitSystem): string {
  if (opening === null) return 'One width says how wide the fan is there; a second distance shows how it opens.';
  const { angle_rad, origin_m, range_m } = opening;
  const degrees = (rad: number): string => `${roundedText(rad * DEGREES_PER_RAD)}°`;
  const where = origin_m.value < 0 ? 'behind' : 'in front of';
  return (
    `The fan opens by ${degrees(angle_rad.value)}, ± ${degrees(angle_rad.within)}; its edges meet ${shown(Math.abs(origin_m.value), 'length', system)} ${where} the nozzle, ` +
    `± ${shown(origin_m.within, 'length', system)}; believed from ${shownNumber(range_m[0], 'length', system)} to ${shown(range_m[1], 'length', system)}.`
  );
}

/** What a foil or a comb comes to. */
export function efficiencySentence({ value, within }: Measured): string {
  return `${shownPercent(value)} of the solids land, ± ${shownPercent(within)}.`;
}
