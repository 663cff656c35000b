import type { JSX } from 'preact';
import { about, aboutPercent, limitSentences, shown, shownPpm, type ReportedVapour } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';

/** Every solvent of a coat: how much, at its worst with the fan on and with everything shut in; the published limits in a fold below. */
export function SolventTable({ reported }: { readonly reported: ReportedVapour }): JSX.Element {
  const { shut, course } = reported;
  const units = state.units.value;
  return (
    <>
      <div class="scheme-vapour-scroll scheme-vapour-solvents" tabIndex={0} role="region" aria-label="Vapour by solvent">
        <table>
          <thead>
            <tr>{['Solvent', 'times its exposure limit, shut in', 'Used', 'At the worst', 'All of it, shut in', 'of lower explosive limit, shut in'].map((text) => <th key={text} scope="col">{text}</th>)}</tr>
          </thead>
          <tbody>
            {shut.parts.map((part) => {
              const own = course.solvents.find((each) => each.solvent.id === part.solvent.id);
              return (
                <tr key={part.solvent.id}>
                  <th scope="row">{part.solvent.name}</th>
                  <td>{part.timesLimit === null ? 'no limit known here' : about(part.timesLimit)}</td>
                  <td>{shown(part.liquid_m3, 'volume', units)}</td>
                  <td>{shownPpm(Math.max(0, ...(own?.airFraction ?? [])))}</td>
                  <td>{shownPpm(part.airFraction)}</td>
                  <td>{aboutPercent(part.lelFraction)}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <details>
        <summary>Published limits of each solvent, lowest first, and who says so</summary>
        <ul>{limitSentences(shut.parts).map((text) => <li key={text}>{text}</li>)}</ul>
      </details>
    </>
  );
}
