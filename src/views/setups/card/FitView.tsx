import type { JSX } from 'preact';
import { roundedText, shownUnit, type FitFamily } from '../../../../sim/index.ts';
import { chooseFamily, type FamilyChoice } from '../../../app/setups/cardAnswer.ts';
import { evidenceText, filmUnitWords, fitRows, fitSentence } from '../../../app/setups/fitRows.ts';
import { state } from '../../../app/state.ts';
import { CardFit } from '../../../charts/CardFit.tsx';
import type { FitReply } from '../../../worker/cardMessages.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FAMILY_WORDS } from '../../gun/familyWords.ts';

export interface FitViewProps {
  readonly reply: FitReply;
  readonly choice: FamilyChoice;
}

/** Readings with the curve fitted to them, its numbers, and the families that were tried. */
export function FitView({ reply, choice }: FitViewProps): JSX.Element {
  const units = state.units.value;
  const { fit: { readings, fits, tied, chosen, intervals }, fitted, curvePlace_m, curveFilm } = reply;
  const unit = filmUnitWords(readings.unit);
  const best = fits[0];
  return (
    <section class="setups-told" aria-label="Fit of the readings">
      <h2>The fan</h2>
      <CardFit
        card={{ place_m: readings.place_m, film: readings.film, fitted, curvePlace_m, curveFilm }}
        unit={shownUnit('length', units)}
        filmName={unit === '' ? 'film, in proportion' : `reading, ${unit}`}
        sentence={fitSentence(FAMILY_WORDS[chosen.family], chosen, units)}
      />
      <ChoiceField
        id="card-family"
        label="Film across the fan"
        value={choice}
        options={[
          ['best', `Best fit: ${best === undefined ? 'none' : FAMILY_WORDS[best.family]}`],
          ...fits.map(({ family }) => [family, FAMILY_WORDS[family]] as const),
          ['table', 'As measured: the readings themselves, less fog'],
        ]}
        hint={tieWords(best?.family, tied)}
        choose={chooseFamily}
      />
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Numbers of the fit">
        <table class="setups-table">
          <caption>{FAMILY_WORDS[chosen.family]}, with 95 % intervals</caption>
          <thead><tr><th scope="col">Number</th><th scope="col">Fitted</th><th scope="col">95 % interval</th></tr></thead>
          <tbody>
            {fitRows(chosen, intervals, readings.unit, units).map(({ name, value, interval }) => (
              <tr key={name}><th scope="row">{name}</th><td>{value}</td><td>{interval === '' ? 'not known' : interval}</td></tr>
            ))}
          </tbody>
        </table>
      </div>
      <details class="more">
        <summary>Families that were tried</summary>
        <div class="scroll-box" tabIndex={0} role="region" aria-label="Families that were tried">
          <table class="setups-table">
            <caption>Best first, by AICc: the lower, the better, and each free number has its price</caption>
            <thead><tr><th scope="col">Family</th><th scope="col">AICc</th><th scope="col">Behind</th><th scope="col">Weight</th><th scope="col">Left over{unit === '' ? '' : `, ${unit}`}</th></tr></thead>
            <tbody>
              {fits.map((fit) => {
                const { aicc, behind, weight } = evidenceText(fit);
                return <tr key={fit.family}><th scope="row">{FAMILY_WORDS[fit.family]}</th><td>{aicc}</td><td>{behind}</td><td>{weight}</td><td>{roundedText(fit.rms)}</td></tr>;
              })}
            </tbody>
          </table>
        </div>
      </details>
    </section>
  );
}

/** What is said where readings cannot tell families apart. */
function tieWords(best: FitFamily | undefined, tied: readonly FitFamily[]): string {
  if (best === undefined || tied.length === 0) return 'The best family stands alone by AICc.';
  return `These readings cannot tell it from: ${tied.map((family) => FAMILY_WORDS[family]).join('; ')}.`;
}
