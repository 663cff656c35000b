import type { JSX } from 'preact';
import { BACKINGS, CUPS, FINISHES, THINNERS, type BackingWord } from '../../../sim/index.ts';
import { TODAY_RANGES } from '../../app/today/todayPrefs.ts';
import { setToday } from '../../app/today/todaySheet.ts';
import { state } from '../../app/state.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { RatioField } from './RatioField.tsx';
import { ViewNumberField } from '../fields/ViewNumberField.tsx';

/** The four that give a verdict. */
export function TodayFields(): JSX.Element {
  const { finish, thinner } = state.today.value;
  return (
    <form class="form today-first" aria-label="Air and finish" onSubmit={(event) => event.preventDefault()}>
      <div class="today-group">
        <Number name="temperature_C" label="Temperature" />
        <Number name="humidity_percent" label="Humidity" />
        <ChoiceField id="today-finish" label="Finish" value={finish} options={FINISHES.map(({ id, name }) => [id, capital(name)] as const)} choose={(id) => setToday({ finish: id })} />
        <ChoiceField id="today-thinner" label="Thinner" value={thinner} options={THINNERS.map(({ id, name }) => [id, capital(name)] as const)} choose={(id) => setToday({ thinner: id })} />
      </div>
    </form>
  );
}

/** The mix in its cup, the area and the film; the rest folded away at its usual. */
export function TodayMoreFields(): JSX.Element {
  const { cup } = state.today.value;
  return (
    <form class="form today-more" aria-label="Mix, area and film" onSubmit={(event) => event.preventDefault()}>
      <div class="today-group">
        <RatioField />
        <ChoiceField id="today-cup" label="Cup" value={cup} options={CUPS.map(({ id, name }) => [id, name] as const)} choose={(id) => setToday({ cup: id })} />
        <Number name="cupseconds" label="Seconds in that cup" hint="Empty: not read." clear={() => setToday({ cupseconds: null })} />
        <Number name="area_m2" label="Area" />
        <Number name="dry_um" label="Dry film wanted, all coats" />
      </div>
      <details class="more">
        <summary>Everything else</summary>
        <Others />
      </details>
    </form>
  );
}

function Others(): JSX.Element {
  const { backing } = state.today.value;
  return (
    <div class="today-group">
      <Number name="slope_deg" label="Side from level" hint="90 upright, 0 level." />
      <Number name="coats" label="Coats" isWhole hint="Empty: the fewest that hold." clear={() => setToday({ coats: null })} />
      <ChoiceField id="today-backing" label="Under the film" value={backing} options={BACKINGS.map(({ id, name }) => [id, capital(name)] as const)} choose={(id: BackingWord) => setToday({ backing: id })} />
      <Number name="surface_C" label="Surface of the part" hint="Empty: not measured, and not judged." clear={() => setToday({ surface_C: null })} />
      <Number name="liquid_C" label="Liquid in the cup" hint="Empty: as warm as the air." clear={() => setToday({ liquid_C: null })} />
      <Number name="afternoon_C" label="Room this afternoon" hint="Empty: 5 °C (9 °F) warmer than now." clear={() => setToday({ afternoon_C: null })} />
      <Number name="retarder_percent" label="Retarder" hint="N-butyl alcohol, share of the thinner; 5 to 15 % is usual." />
      <Number name="sanded_um" label="Dry film sanded off" />
      <Number name="lands_percent" label="Solids that land" hint="Of what leaves the gun: 65 % at least for a low-pressure gun." />
      <Number name="draught_m_s" label="Air over the panel" />
      <Number name="altitude_m" label="Height above the sea" />
    </div>
  );
}

interface NumberProps {
  readonly name: keyof typeof TODAY_RANGES;
  readonly label: string;
  readonly hint?: string;
  readonly isWhole?: boolean;
  readonly clear?: () => void;
}

function Number({ name, ...rest }: NumberProps): JSX.Element {
  const [low, high] = TODAY_RANGES[name];
  const value = state.today.value[name];
  return <ViewNumberField id={`today-${name}`} unitKey={name} value={value} low={low} high={high} set={(typed) => setToday({ [name]: typed })} {...rest} />;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
