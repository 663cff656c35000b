import type { JSX } from 'preact';
import { cardNumberText, leaveCardNumber, typeCardNumber, type CardNumber } from '../../../app/setups/cardParts.ts';
import { NumberBox } from '../../fields/NumberBox.tsx';

export interface CardNumberFieldProps {
  readonly setUp: number;
  readonly measure: CardNumber;
  readonly label: string;
  readonly hint: string;
}

/** A number of the card that may be left out: an empty box says nothing. */
export function CardNumberField({ setUp, measure, label, hint }: CardNumberFieldProps): JSX.Element {
  const { text, unit, problem } = cardNumberText(setUp, measure);
  return (
    <NumberBox
      id={`card-${measure}`}
      label={label}
      text={text}
      unit={unit}
      problem={problem}
      hint={hint}
      type={(typed) => typeCardNumber(setUp, measure, label, typed)}
      leave={() => leaveCardNumber(setUp, measure)}
    />
  );
}
