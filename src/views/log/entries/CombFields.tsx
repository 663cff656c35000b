import type { JSX } from 'preact';
import { combWords, shown, type LogEntrySpec } from '../../../../sim/index.ts';
import { addComb, COMB_BOXES, combText, removeItem, typeComb } from '../../../app/log/listFields.ts';
import { state } from '../../../app/state.ts';
import { NumberBox } from '../../fields/NumberBox.tsx';

/** Readings of the wet-film comb: always two teeth. */
export function CombFields({ entry, planned_um }: { readonly entry: LogEntrySpec; readonly planned_um: number | null }): JSX.Element {
  const units = state.units.value;
  return (
    <fieldset class="log-entries-group">
      <legend>Wet-film comb</legend>
      <p>
        Set it square at once after spraying, on a rigid place. The film lies between the last wetted tooth and the next, dry one. No tooth wetted: 0 as the first figure. Every tooth wetted: leave the second empty.
        {planned_um === null ? '' : ` The plan asks for ${shown(planned_um * 1e-6, 'film', units)} wet.`}
      </p>
      {entry.combs.length === 0 ? null : (
        <ul class="log-entries-items">
          {entry.combs.map((comb, k) => (
            <li key={k}>
              <span>{combWords(comb, units)}{comb.x_mm === undefined || comb.y_mm === undefined ? '' : `, ${shown(comb.x_mm / 1000, 'length', units)} right, ${shown(comb.y_mm / 1000, 'length', units)} up`}</span>
              <button type="button" aria-label={`Remove comb reading ${k + 1}`} onClick={() => removeItem('combs', k, 'Remove a comb reading')}>Remove</button>
            </li>
          ))}
        </ul>
      )}
      {COMB_BOXES.slice(0, 2).map((box) => <CombBox key={box.name} {...box} />)}
      <details class="log-entries-more">
        <summary>Where on the panel</summary>
        {COMB_BOXES.slice(2).map((box) => <CombBox key={box.name} {...box} />)}
      </details>
      <button type="button" onClick={addComb}>Add this comb reading</button>
    </fieldset>
  );
}

function CombBox({ name, label }: (typeof COMB_BOXES)[number]): JSX.Element {
  const { text, unit, problem } = combText(name);
  return <NumberBox id={`entry-comb-${name}`} label={label} text={text} unit={unit} problem={problem} hint={undefined} type={(typed) => typeComb(name, typed)} leave={() => undefined} />;
}
