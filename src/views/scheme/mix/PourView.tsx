import type { JSX } from 'preact';
import { potSvg, pourRows, type ReportedMixing } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';

/** Marks of the pot, drawn and as a table. */
export function PourView({ mixing }: { readonly mixing: ReportedMixing }): JSX.Element | null {
  const units = state.units.value;
  const rows = pourRows(mixing, units);
  if (mixing.fill === null || rows.length === 0) return null;
  return (
    <div class="scheme-mix-pour">
      <figure dangerouslySetInnerHTML={{ __html: potSvg(mixing.fill, units, 'sheet-pot') }} />
      <div class="scheme-mix-scroll" role="region" aria-label="What to pour" tabIndex={0}>
        <table class="scheme-mix-table">
          <caption>One pot, poured in this order</caption>
          <thead><tr><th scope="col">Part</th><th scope="col">Volume</th><th scope="col">Weight</th><th scope="col">Fill to</th><th scope="col">Scale shows</th></tr></thead>
          <tbody>{rows.map(({ part, volume, weight, mark, scale }) => <tr key={part}><th scope="row">{part}</th><td>{volume}</td><td>{weight}</td><td>{mark}</td><td>{scale}</td></tr>)}</tbody>
        </table>
      </div>
    </div>
  );
}
