import type { JSX } from 'preact';
import { dryingSentence, roundedText, shownPercent, shownTemperature, shownTemperatureStep, type AirAdvice } from '../../../../sim/index.ts';
import { useRetarder } from '../../../app/scheme/airSheet.ts';
import { state } from '../../../app/state.ts';

/** The figures behind the verdict, each with its working. */
export function AirFigures({ advice }: { readonly advice: AirAdvice }): JSX.Element {
  const { air, film_K, blushMargin_K, criticalHumidityFraction, faces, mix, drying } = advice.answer;
  const units = state.units.value;
  const degrees = (kelvin: number): string => shownTemperature(kelvin, units);
  const room = `${degrees(air.temperature_K)} and ${shownPercent(air.relativeHumidityFraction)}`;
  return (
    <section aria-labelledby="air-figures">
      <h2 id="air-figures">Film and dew point</h2>
      <div class="scheme-air-figures">
        <Figure name="Dew point" value={degrees(air.dewPoint_K)}>
          The temperature at which the moisture of this air is all it can hold: saturation pressure of the dew point = humidity × saturation pressure of the air. From {room}. ASHRAE Handbook, Fundamentals (2017), chapter 1, equations 5 and 6; solved to 0.001 °C. A hygrometer within 3 % moves it by about 0.8 °C (1.4 °F).
        </Figure>
        <Figure name="Wet film" value={degrees(film_K)}>
          The film as a wet bulb of its solvents: heat from the air on {faces === 2 ? 'both faces' : 'one face'} = heat of evaporation (W. K. Lewis, Trans. ASME 44, 1922; diffusion by Fuller). From {mix.name} with all its solvent still there. A lower bound: real films on metal or board are warmer, and no radiation is counted.
        </Figure>
        <Figure name="Film less dew point" value={shownTemperatureStep(blushMargin_K, units)}>
          {degrees(film_K)} less {degrees(air.dewPoint_K)}. Below 0 water can fall into the film and whiten it: blush. Above 0 it may still blush where the gun is held far off or the air blows hard on one spot.
        </Figure>
        <Figure name="Humidity at which it can blush" value={shownPercent(criticalHumidityFraction)}>
          Saturation pressure at the film over that at the air, {degrees(air.temperature_K)}. It falls as the air gets hotter: hot and humid is worse at one humidity, while warming the same air helps.
        </Figure>
        <Figure name="Waits against 70 °F (21.1 °C)" value={`× ${roundedText(drying.ruleRatio)}`}>
          {dryingSentence(drying)} The rule: AC 43.13-1B 2-21, “by 100 percent” for each 10 °F, read as doubling and halving: 2 to the power (70 − °F) / 10.
        </Figure>
      </div>
      <Retarders advice={advice} />
    </section>
  );
}

function Figure({ name, value, children }: { readonly name: string; readonly value: string; readonly children: preact.ComponentChildren }): JSX.Element {
  return (
    <div class="scheme-air-figure">
      <p><span>{name}</span> <strong>{value}</strong></p>
      <details><summary>How</summary><p>{children}</p></details>
    </div>
  );
}

/** What each step of retarder gains and costs. */
function Retarders({ advice }: { readonly advice: AirAdvice }): JSX.Element {
  const { retarders, mix } = advice.answer;
  const units = state.units.value;
  if (retarders.length === 0) return <p>No more retarder is tried: the mix {mix.thinnerRatio === 0 ? 'is not thinned' : 'holds the most that is thought well of'}.</p>;
  return (
    <>
      <h3>More retarder: {retarders[0]?.retarder}</h3>
      <div class="scroll-box" tabIndex={0} role="region" aria-label="Gain and cost of retarder">
        <table class="scheme-air-table">
          <thead><tr><th scope="col">of the thinner</th><th scope="col">wet film</th><th scope="col">film less dew point</th><th scope="col">first evaporation takes</th><td /></tr></thead>
          <tbody>
            {retarders.map(({ retarderFraction, film_K, blushMargin_K, evaporationRatio }) => (
              <tr key={retarderFraction}>
                <th scope="row">{shownPercent(retarderFraction)}</th>
                <td>{shownTemperature(film_K, units)}</td>
                <td>{shownTemperatureStep(blushMargin_K, units)}</td>
                <td>× {roundedText(evaporationRatio)}</td>
                <td><button type="button" onClick={() => useRetarder(retarderFraction * 100)}>Use {shownPercent(retarderFraction)}</button></td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p>Common practice is 5 to 15 %, never more than about 25 %: the retarder leaves last, so the film stays soft long after the first evaporation. A cup reading of the mix goes when the mix changes; take it again.</p>
    </>
  );
}
