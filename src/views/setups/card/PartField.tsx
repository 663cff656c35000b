import type { JSX } from 'preact';
import { partText, leavePart, typePart, type CardGroup } from '../../../app/setups/cardParts.ts';
import { NumberBox } from '../../fields/NumberBox.tsx';

export interface PartFieldProps {
  /** Place in the job of the set-up whose card it is. */
  readonly setUp: number;
  readonly group: CardGroup;
  readonly measure: string;
  readonly label: string;
  readonly hint?: string;
}

/** One measure of the card. It counts as soon as its group is whole; until then it is kept as typed. */
export function PartField({ setUp, group, measure, label, hint }: PartFieldProps): JSX.Element {
  const { text, unit, problem } = partText(setUp, group, measure);
  return (
    <NumberBox
      id={['card', ...group.at, measure].join('-')}
      label={label}
      text={text}
      unit={unit}
      problem={problem}
      hint={hint}
      type={(typed) => typePart(setUp, group, measure, label, typed)}
      leave={() => leavePart(setUp, group)}
    />
  );
}
