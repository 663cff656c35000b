import type { JSX } from 'preact';
import type { FitPasses } from '../../../../sim/index.ts';
import { lookAt } from '../../../app/setups/setUps.ts';
import { FIT_LIMITS_OF, type FitPrefs } from '../../../app/setups/setUpsPrefs.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';

const BY_WORDS: readonly (readonly [FitPrefs['by'], string])[] = [['dry', 'Dry film of all coats'], ['weight', 'Weight of all coats'], ['target', 'The coat’s own target']];
const PASSES_WORDS: readonly (readonly [FitPasses, string])[] = [['either', 'Single or cross, as it comes'], ['single', 'Single coats'], ['cross', 'Cross coats']];

/** The wish: film, coats, and what the hand, the clock and the gun's distance allow. */
export function WishForm(): JSX.Element {
  const { fit } = state.setUps.value;
  const set = (changed: Partial<FitPrefs>): void => lookAt({ fit: { ...fit, ...changed } });
  return (
    <form class="setups-fields" onSubmit={(event) => event.preventDefault()}>
      <ChoiceField id="fit-by" label="Wished for" value={fit.by} options={BY_WORDS} choose={(by) => set({ by })} />
      {fit.by === 'dry' ? <WishNumber label="Dry film, all coats" unitKey="dry_um" set={set} /> : null}
      {fit.by === 'weight' ? <WishNumber label="Weight of the dry film, all coats" unitKey="weight_g_m2" set={set} /> : null}
      {fit.by === 'target' ? null : <WishNumber label="Coats, all alike" unitKey="coats" set={set} isWhole />}
      <ChoiceField id="fit-passes" label="Passes" value={fit.passes} options={PASSES_WORDS} choose={(passes) => set({ passes })} />
      <WishNumber label="Gun no nearer than" unitKey="nearest_mm" set={set} />
      <WishNumber label="Gun no farther than" unitKey="farthest_mm" set={set} />
      <WishNumber label="Hand no slower than" unitKey="slowest_m_s" set={set} />
      <WishNumber label="Hand no faster than" unitKey="fastest_m_s" set={set} />
      <WishNumber label="Longest time for a coat" unitKey="most_min" set={set} hint="0 for no limit." />
    </form>
  );
}

interface WishNumberProps {
  readonly label: string;
  readonly unitKey: keyof typeof FIT_LIMITS_OF;
  readonly set: (changed: Partial<FitPrefs>) => void;
  readonly isWhole?: boolean;
  readonly hint?: string;
}

function WishNumber({ label, unitKey, set, isWhole = false, hint }: WishNumberProps): JSX.Element {
  const [low, high] = FIT_LIMITS_OF[unitKey];
  return <ViewNumberField id={`fit-${unitKey}`} label={label} unitKey={unitKey} value={state.setUps.value.fit[unitKey]} low={low} high={high} isWhole={isWhole} {...(hint === undefined ? {} : { hint })} set={(value) => set({ [unitKey]: value })} />;
}
