import type { JSX } from 'preact';
import { shown, shownNumber, shownPercent, shownUnit, type Target, type Verdict } from '../../../sim/index.ts';
import { state } from '../../app/state.ts';

export interface KeyFiguresProps {
  readonly figures: Pick<Verdict, 'wet' | 'dry' | 'inTargetFraction'>;
  readonly target: Target;
}

/** Film, wet and dry, and how it stands to its target. */
export function KeyFigures({ figures: all, target }: KeyFiguresProps): JSX.Element {
  const system = state.units.value;
  const film = (value_m: number): string => shownNumber(value_m, 'film', system);
  const band = (['wet', 'dry'] as const).map((kind) => {
    if (kind !== target.film) return '';
    return `${film(target.minFraction * target.thickness_m)} to ${film(target.maxFraction * target.thickness_m)}`;
  });
  const rows = (['wet', 'dry'] as const).map((kind, i) => {
    const figures = all[kind];
    return (
      <tr key={kind}>
        <th scope="row">{kind}</th>
        <td data-testid={`${kind}-mean`}>{film(figures.mean_m)}</td>
        <td>{film(figures.min_m)}</td>
        <td>{film(figures.max_m)}</td>
        <td>{shownPercent(figures.cv)}</td>
        <td>{band[i]}</td>
      </tr>
    );
  });
  return (
    <section class="figures">
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Film figures">
        <table>
          <caption>Film over the panel, {shownUnit('film', system).name}</caption>
          <thead>
            <tr>
              <td />
              <th scope="col">mean</th>
              <th scope="col">least</th>
              <th scope="col">most</th>
              <th scope="col"><abbr title="coefficient of variation: standard deviation over mean">CV</abbr></th>
              <th scope="col">band</th>
            </tr>
          </thead>
          <tbody>{rows}</tbody>
        </table>
      </div>
      <p class="in-target">
        <strong data-testid="in-target">{shownPercent(all.inTargetFraction)}</strong> of the panel inside the limits of the{' '}
        {shown(target.thickness_m, 'film', system)} {target.film} target
        <svg class="share-bar" viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
          <rect class="share-all" width="100" height="4" />
          <rect class="share-part" width={all.inTargetFraction * 100} height="4" />
        </svg>
      </p>
    </section>
  );
}
