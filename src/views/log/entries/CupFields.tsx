import type { JSX } from 'preact';
import { CELSIUS_0_K, CUPS, shownTemperature, type ReportedEntry } from '../../../../sim/index.ts';
import { chooseCup, entryCup, isHalfTyped } from '../../../app/log/entryFields.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { GroupNumber } from './EntryBoxes.tsx';

/** Seconds in a cup, with the temperature of the liquid: one says nothing without the other. */
export function CupFields({ plan }: Pick<ReportedEntry, 'plan'>): JSX.Element {
  const { cup } = plan;
  const name = CUPS.find(({ id }) => id === cup?.kind)?.name;
  const planned = cup === null ? undefined : `With the mix stands ${cup.seconds} s in the ${name ?? cup.kind} at ${shownTemperature(cup.temperature_C + CELSIUS_0_K, state.units.value)}.`;
  return (
    <fieldset class="log-entries-group">
      <legend>Cup</legend>
      <ChoiceField id="entry-cup-kind" label="Which cup" value={entryCup(cup?.kind ?? null)} options={CUPS.map((each) => [each.id, each.name] as const)} choose={chooseCup} />
      <GroupNumber group="cup" name="seconds" label="Cup seconds" hint={planned} />
      <GroupNumber group="cup" name="temperature_C" label="Liquid in the cup" />
      <p role="status" class="log-entries-found">{isHalfTyped('cup') ? 'Kept as typed; it counts once seconds and temperature are both there.' : ''}</p>
    </fieldset>
  );
}
