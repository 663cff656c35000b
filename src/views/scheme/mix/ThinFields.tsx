import type { JSX } from 'preact';
import { shortRatio, specRatio } from '../../../../sim/index.ts';
import { askMix, sheetMix, sheetRatio } from '../../../app/scheme/mixSheet.ts';
import { state } from '../../../app/state.ts';
import { ButtonRow } from '../../fields/ButtonRow.tsx';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { CUP_CHOICES } from '../../mix/choices.ts';
import { MixNumber } from './MixNumber.tsx';
import { RatioBox } from './RatioBox.tsx';

const BY_WORDS = [['volume', 'By volume'], ['weight', 'By weight']] as const;

/** Four fields to an answer: ratio, cup, seconds wanted, temperature. */
export function ThinFields(): JSX.Element {
  const { ratio, by, cup } = state.scheme.value.mix;
  const [spec, read] = [sheetMix.value, sheetRatio.value];
  const own = spec === null ? '' : shortRatio(specRatio(spec));
  return (
    <form class="form" onSubmit={(event) => event.preventDefault()}>
      <RatioBox
        id="mix-ratio"
        label="Ratio"
        text={ratio}
        placeholder={own}
        problem={read !== null && 'problem' in read ? read.problem : null}
        hint={`Finish first: 4:1, 8:1:1 with retarder last, 1 part in 4, 150 % of the finish, 10 % of the total. Empty: the job’s own, ${own} by volume.`}
        type={(text) => askMix({ ratio: text })}
      />
      <ButtonRow label="Parts of the ratio are" value={by} options={BY_WORDS} choose={(next) => askMix({ by: next })} />
      <ChoiceField id="mix-cup" label="Cup" value={cup} options={CUP_CHOICES} choose={(next) => askMix({ cup: next })} />
      <MixNumber name="wanted_s" label="Seconds wanted for the gun" hint="From the data sheet or the gun’s own. Common practice for lacquer: 18 to 24 s in the Zahn cup No. 2; seconds mean nothing without their cup." />
      <MixNumber name="liquid_C" label="Temperature of the liquid" />
    </form>
  );
}
