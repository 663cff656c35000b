import type { JSX } from 'preact';
import { aboutShown, faceSentence, fanSentence, SHIPYARD_RULE, type ReportedVapour } from '../../../../sim/index.ts';
import { state } from '../../../app/state.ts';

/** Outside air for the fire rule and for the lungs side by side, the booth's face, and what the fan does to the heat. */
export function AirNeeds({ reported }: { readonly reported: ReportedVapour }): JSX.Element {
  const { needed, room, face, warming_W_10K } = reported;
  const units = state.units.value;
  const flow = (value: number): string => aboutShown(value, 'air-flow', units);
  return (
    <section aria-labelledby="vapour-air">
      <h2 id="vapour-air">Outside air</h2>
      <p>Were the busiest minute, minute {needed.busiest + 1}, to go on and on, it would ask for:</p>
      <dl class="scheme-vapour-needs">
        <div><dt>25 % of the lower explosive limit (fire rule)</dt><dd>{flow(needed.quarter_m3_s)}</dd></div>
        <div><dt>10 % of it ({SHIPYARD_RULE})</dt><dd>{flow(needed.tenth_m3_s)}</dd></div>
        <div><dt>The exposure limits, mixing factor {Number(room.mixing.toPrecision(3))}</dt><dd>{flow(needed.exposure_m3_s)}</dd></div>
        <div><dt>Your fan brings</dt><dd>{flow(room.fresh_m3_s)}</dd></div>
      </dl>
      {room.fresh_m3_s < needed.exposure_m3_s ? <p>The fan does not bring the air down to the exposure limits while the coat is laid: what protects the lungs is breathing protection, with air from outside the room when over the limits.</p> : null}
      <ul>
        <li>{fanSentence(room, warming_W_10K, units)}</li>
        {face === null ? <li>No open face is stated, so no speed of the air through it.</li> : <li>{faceSentence(face, units)}</li>}
      </ul>
      <details>
        <summary>How the air is worked out</summary>
        <ul>
          <li>To a share s of the lower explosive limit L: (1/s) · (1 − L) · V / L volumes of air to one of liquid that makes V of vapour; a blend’s L by Le Chatelier, 1 / Σ (share / L). 29 CFR 1910.94(c)(6)(ii) for a quarter; WAC 296-304-03009 for a tenth.</li>
          <li>To the exposure limits: K · Σ (V / limit), K the mixing factor; ACGIH, Industrial Ventilation, from memory.</li>
          <li>V by the gas law at the job’s air; the lower of two published limits.</li>
          <li>Minute by minute: V dC/dt = source − (fan / K) · C, exact over each minute, the room clean at the coat’s start.</li>
          <li>Left out: recirculated air counts as none, filters take mist and no vapour, and coats laid before are taken as aired out.</li>
        </ul>
      </details>
    </section>
  );
}
