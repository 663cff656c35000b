import type { JSX } from 'preact';
import { about, aboutPercent, shown, shownPpm, publishedLimitWords, type ReportedVapour } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';

/** Every solvent of a coat: how much, at its worst with the fan on and with everything shut in, and the published limits. */
export function SolventTable({ reported }: { readonly reported: ReportedVapour }): JSX.Element {
  const { shut, course } = reported;
  const units = state.units.value;
  return (
    <div class="scheme-vapour-scroll" tabIndex={0} role="region" aria-label="Vapour by solvent">
      <table>
        <thead>
          <tr>
            <th scope="col">Solvent</th><th scope="col">Used</th><th scope="col">At the worst</th><th scope="col">All of it, shut in</th><th scope="col">of lower explosive limit, shut in</th>
            <th scope="col" class="words">Lower explosive limit, lowest first</th><th scope="col" class="words">Exposure limit, lowest first</th>
          </tr>
        </thead>
        <tbody>
          {shut.parts.map((part) => {
            const own = course.solvents.find((each) => each.solvent.id === part.solvent.id);
            return (
              <tr key={part.solvent.id}>
                <th scope="row">{part.solvent.name}</th>
                <td>{shown(part.liquid_m3, 'volume', units)}</td>
                <td>{shownPpm(Math.max(0, ...(own?.airFraction ?? [])))}</td>
                <td>{shownPpm(part.airFraction)}{part.timesLimit === null ? '' : `, ${about(part.timesLimit)} × limit`}</td>
                <td>{aboutPercent(part.lelFraction)}</td>
                <td class="words">{publishedLimitWords(part.explosive, (share) => `${Number((share * 100).toFixed(2))} %`)}</td>
                <td class="words">{publishedLimitWords(part.exposure, shownPpm)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
