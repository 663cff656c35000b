import type { JSX } from 'preact';
import { shown, shownPercent, type ReportedCoat } from '../../../sim/index.ts';
import { coat as coatSpec, setUp as setUpSpec } from '../../app/document.ts';
import { unitOfKey, typedText } from '../../app/units.ts';
import { state } from '../../app/state.ts';

/** The figures that the verdict stands on, for paper. */
export function Assumptions({ coat }: { readonly coat: ReportedCoat }): JSX.Element {
  const system = state.units.value;
  const { fan, transfer, drops, volumeSolidsFraction } = coat.setting.setUp;
  const { plan } = coatSpec.value;
  const rate = setUpSpec.value.fluidRate_mL_min;
  const length = (value_m: number): string => shown(value_m, 'length', system);
  const rows: readonly (readonly [string, string])[] = [
    ['Fan', `${length(fan.width_m)} × ${length(fan.depth_m)} at ${length(fan.atDistance_m)}, ${fan.profile.family}`],
    ['Fluid rate', `${typedText(rate, 'fluidRate_mL_min', system)} ${unitOfKey('fluidRate_mL_min', system)}`],
    ['Volume solids', shownPercent(volumeSolidsFraction)],
    ['Solids that land', `${shownPercent(transfer.efficiencyFraction)} at ${length(transfer.atDistance_m)}`],
    ['Mean drop', `${Math.round(drops.meanDiameter_m * 1e6)} µm, thinner's speed ${drops.solventSpeedRatio} (n-butyl acetate 1)`],
    ['Meant', `${shownPercent(plan.overlap_percent / 100)} overlap, ${shown(plan.speed_m_s, 'speed', system)}, ${length(plan.distance_mm / 1000)}${plan.cross ? ', cross coat' : ''}`],
  ];
  return (
    <>
      <h2>Assumptions</h2>
      <table>
        <tbody>{rows.map(([name, value]) => <tr key={name}><th scope="row">{name}</th><td>{value}</td></tr>)}</tbody>
      </table>
    </>
  );
}
