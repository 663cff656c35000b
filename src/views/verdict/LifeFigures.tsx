import type { JSX } from 'preact';
import { LIFE_LIMITS, type LifeFigures as Figures } from '../../../sim/index.ts';
import { lifeRows } from '../../app/lifeRows.ts';
import { state } from '../../app/state.ts';
import { clockText } from '../../app/timeWords.ts';
import type { LifeReply } from '../../worker/protocol.ts';

function waitsOf({ watched_s, touchDry_s, recoat_s }: LifeReply): Pick<Figures, 'watched_s' | 'touchDry_s' | 'recoat_s'> {
  return { watched_s, touchDry_s, recoat_s };
}

/** What the film goes through, in figures against their bands, while the reader looks at it in time. */
export function LifeFigures(): JSX.Element | null {
  const film = state.film.value;
  if (!state.inTime.value || film === null) return null;
  const life = state.lifeVerdict.value;
  if (life === null || life.version !== film.version) return <p class="soft" role="status">Watching the film for faults in time…</p>;
  // The slider's watch goes on until recoat, the judge's ends when the film has set.
  const watch = state.life.value;
  const figures = watch?.version === film.version && watch.isWhole ? { ...life.verdict.figures, ...waitsOf(watch) } : life.verdict.figures;
  return (
    <section class="figures" data-testid="life-figures">
      <h2>In time</h2>
      <table class="life-figures">
        <caption>From trigger on; the gun is put away after {clockText(figures.sprayed_s)}</caption>
        <tbody>
          {lifeRows(figures, film.setting.target.life, state.units.value).map(({ name, value, band }) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              <td>{value}{band === '' ? null : <span class="life-band soft">{band}</span>}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="soft">{LIFE_LIMITS}</p>
    </section>
  );
}
