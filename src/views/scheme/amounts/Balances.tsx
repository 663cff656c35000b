import type { JSX } from 'preact';
import { BALANCE_REMINDER, balanceSentence, balanceWorking, type AmountsAnswer, type PanelBalance } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';

/** Where the added weight acts about each hinge line. */
export function Balances({ answer: { balances } }: { readonly answer: AmountsAnswer }): JSX.Element {
  return (
    <section aria-labelledby="amounts-balance">
      <h2 id="amounts-balance">Balance about the hinge line</h2>
      {balances === null ? <p role="status">Laying the coats to find where their weight acts…</p> : null}
      {balances?.length === 0 ? <p>No panel of this scheme has a hinge line. For a moving surface, give the job file’s panel two points on it as hinge_mm; the weight’s moment about it is then worked out.</p> : null}
      {balances?.map((each) => <Balance key={each.panel.id} found={each} />)}
      <p><strong>{BALANCE_REMINDER}</strong></p>
    </section>
  );
}

function Balance({ found }: { readonly found: PanelBalance }): JSX.Element {
  const units = state.units.value;
  return (
    <div class="scheme-amounts-balance">
      <Drawing found={found} />
      <div>
        <p data-testid="balance">{balanceSentence(found, units)}</p>
        <details>
          <summary>How the balance is worked out</summary>
          <p>{balanceWorking(found)} Cells of 10 mm; sums over them.</p>
        </details>
      </div>
    </div>
  );
}

/** Room around the outline, share of the panel's longer side. */
const MARGIN = 0.08;

/** The outline, the hinge line with its points 1 and 2, the centre of the added weight and its arm. The page draws y downward. */
function Drawing({ found: { panel, hinge_m, balance } }: { readonly found: PanelBalance }): JSX.Element {
  const size = Math.max(panel.width_m, panel.height_m);
  const places = [...hinge_m, balance.centre_m, [0, 0], [panel.width_m, panel.height_m]] as const;
  const [left, right] = [Math.min(...places.map(([x]) => x)), Math.max(...places.map(([x]) => x))];
  const [low, high] = [Math.min(...places.map(([, y]) => y)), Math.max(...places.map(([, y]) => y))];
  const margin = MARGIN * size;
  const unit = Math.max(right - left, high - low) / 100;
  const at = ([x, y]: readonly [number, number]): string => `${x} ${-y}`;
  const ring = (corners: ArrayLike<number>): string => `M${Array.from({ length: corners.length / 2 }, (_, i) => at([corners[2 * i] as number, corners[2 * i + 1] as number])).join('L')}Z`;
  const { centre_m, foot_m } = balance;
  return (
    <svg class="scheme-amounts-drawing" viewBox={`${left - margin} ${-high - margin} ${right - left + 2 * margin} ${high - low + 2 * margin}`} role="img" aria-label={`${panel.name}: outline, hinge line, and the centre of the added weight ${balance.side === 'on the line' ? 'on it' : `to its ${balance.side}`}`}>
      <path class="outline" d={[panel.outline, ...panel.holes].map(ring).join('')} />
      <path class="hinge" d={`M${at(hinge_m[0])}L${at(hinge_m[1])}`} />
      <path class="arm" d={`M${at(foot_m)}L${at(centre_m)}`} />
      <circle class="centre" cx={centre_m[0]} cy={-centre_m[1]} r={2.2 * unit} />
      {hinge_m.map(([x, y], i) => <text key={i} x={x + 1.5 * unit} y={-y + (i === 0 ? -1.5 : 6) * unit} font-size={6 * unit}>{i + 1}</text>)}
    </svg>
  );
}
