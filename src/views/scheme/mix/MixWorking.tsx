import type { JSX } from 'preact';
import { cupRangeWords, guessSentences, type ReportedMixing } from '../../../../sim/index.ts';

/** The working, and the textbook rules with how far they lie apart, folded away. */
export function MixWorking({ mixing: { thinning, densities, thinnerWords, mix } }: { readonly mixing: ReportedMixing }): JSX.Element {
  return (
    <section aria-label="Working">
      {thinning === null ? null : (
        <details class="more">
          <summary>First guess by the textbook rules, and how little they say</summary>
          <ul class="scheme-mix-list">{guessSentences(thinning).map((text) => <li key={text}>{text}</li>)}</ul>
        </details>
      )}
      <details class="more">
        <summary>Where these figures come from</summary>
        <ul class="scheme-mix-list">
          {thinning === null ? null : (
            <>
              <li>{cupFormula(thinning.time.cup)}, from {cupRangeWords(thinning.time.cup)}: {thinning.time.cup.source}. Outside that no figure is given.</li>
              <li>Thinning: ln ν = {thinning.law.level.toFixed(2)} − {(-thinning.law.slope).toFixed(2)} x, ν in m²/s, x the share of thinner in the mix. {thinning.origin === 'readings' ? 'From your two readings.' : mix.finish.viscositySource}</li>
              <li>Temperature: ln(ν2/ν1) = B (1/T2 − 1/T1), T in kelvin. B {thinning.sensitivity_K.low} to {thinning.sensitivity_K.high} K.</li>
            </>
          )}
          <li>Thinner: {thinnerWords}. Densities: finish {Math.round(densities.finish_kg_m3)}, thinner {Math.round(densities.thinner_kg_m3)}, retarder {Math.round(densities.retarder_kg_m3)} kg/m³, from the generic finish and handbook values, from memory: weigh a litre of your own to be sure.</li>
          <li>Volume solids as mixed = volume solids as it comes / (1 + thinner to one of finish). Wet film = dry film / volume solids as mixed. {mix.finish.volumeSolidsFraction.source}.</li>
          <li>Batch = area × wet film × coats / share that lands + what stays in pot and hose.</li>
        </ul>
      </details>
    </section>
  );
}

function cupFormula({ name, form, a, b }: { readonly name: string; readonly form: 'linear' | 'inverse'; readonly a: number; readonly b: number }): string {
  return form === 'linear' ? `${name}: ν = ${a} (t − ${b}) mm²/s` : `${name}: ν = ${a} t − ${b}/t mm²/s`;
}
