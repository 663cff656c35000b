import type { JSX } from 'preact';
import { askMix } from '../../../app/scheme/mixSheet.ts';
import { MIX_LIMITS_OF } from '../../../app/scheme/mixPrefs.ts';
import { state } from '../../../app/state.ts';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';

export interface MixNumberProps {
  readonly name: keyof typeof MIX_LIMITS_OF;
  readonly label: string;
  readonly hint?: string;
  readonly isWhole?: boolean;
  /** The box may be left empty: what that does. */
  readonly clear?: () => void;
}

/** One of the numbers that the sheet asks. */
export function MixNumber({ name, label, hint, isWhole = false, clear }: MixNumberProps): JSX.Element {
  const [low, high] = MIX_LIMITS_OF[name];
  return <ViewNumberField id={`mix-${name}`} label={label} unitKey={name} value={state.scheme.value.mix[name]} low={low} high={high} isWhole={isWhole} {...(hint === undefined ? {} : { hint })} {...(clear === undefined ? {} : { clear })} set={(value) => askMix({ [name]: value })} />;
}
