import type { JSX } from 'preact';
import { lostPaint_m3, shown, shownPercent, type PaintAccount } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';

/** Where the liquid went. */
export function PaintSplit({ account }: { readonly account: PaintAccount }): JSX.Element {
  const row = (name: string, value_m3: number): JSX.Element => (
    <div class="split-row">
      <dt>{name}</dt>
      <dd>
        {shown(value_m3, 'volume', state.units.value)}
        <span class="soft">{account.sprayed_m3 > 0 ? shownPercent(value_m3 / account.sprayed_m3) : ''}</span>
      </dd>
    </div>
  );
  return (
    <details class="paint">
      <summary>
        Liquid: {shown(account.sprayed_m3, 'volume', state.units.value)} sprayed,{' '}
        {shown(lostPaint_m3(account), 'volume', state.units.value)} lost
      </summary>
      <dl>
        {row('On the panel', account.landed_m3)}
        {row('Fog, never landed', account.fog_m3)}
        {row('Beside the panel', account.missed_m3)}
        {row('Dried off in flight', account.flight_m3)}
      </dl>
    </details>
  );
}
