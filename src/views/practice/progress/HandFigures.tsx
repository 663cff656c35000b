import type { JSX } from 'preact';
import type { HandSample, UnitSystem } from '../../../../sim/index.ts';
import { handFigures } from './handFigures.ts';
import type { PersonalHand } from './progressData.ts';

export interface HandFiguresProps {
  readonly hand: PersonalHand;
  readonly system: UnitSystem;
  readonly onUseHand: (sample: HandSample) => void;
}

/** How a trainee's hand strays, over all their sessions. */
export function HandFigures({ hand, system, onUseHand }: HandFiguresProps): JSX.Element {
  const { sample, sessions } = hand;
  const isKnown = sample.distance_m.count > 0;
  return (
    <section class="progress-hand" aria-labelledby="progress-hand">
      <h2 id="progress-hand">This hand</h2>
      <p>From {sessions === 1 ? 'one session' : `${sessions} sessions`}, against what each drill asked for.</p>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Figures of this hand">
        <table>
          <thead>
            <tr><th scope="col"><span class="hidden-words">Error</span></th><th scope="col">On average</th><th scope="col">Spread</th><th scope="col">Lasts</th><th scope="col">Over</th></tr>
          </thead>
          <tbody>
            {handFigures(hand, system).map(({ title, mean, spread, lasts_s, lasts_m }) => (
              <tr key={title}><th scope="row">{title}</th><td>{mean}</td><td>{spread}</td><td>{lasts_s}</td><td>{lasts_m}</td></tr>
            ))}
          </tbody>
        </table>
      </div>
      <p class="soft">Spread: one standard deviation. Lasts, over: the time and the travel after which one error tells little about the next.</p>
      <button type="button" disabled={!isKnown} onClick={() => onUseHand(sample)}>Use as the hand of this coat</button>
      {isKnown ? null : <p class="soft">No strokes long enough to know the hand by. Spray a drill first.</p>}
    </section>
  );
}
