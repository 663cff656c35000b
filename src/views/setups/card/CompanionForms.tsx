import type { ComponentChildren, JSX } from 'preact';
import { CAUGHT, clearPart, COMB, FOIL, isBegun, MOST_WIDTHS, widthRow, type CardGroup } from '../../../app/setups/cardParts.ts';
import { state } from '../../../app/state.ts';
import { CardNumberField } from './CardNumberField.tsx';
import { PartField } from './PartField.tsx';

export interface CompanionProps {
  readonly setUp: number;
  /** What these measures come to, below them. */
  readonly children: ComponentChildren;
}

/** Liquid caught in a cup. */
export function CupForm({ setUp, children }: CompanionProps): JSX.Element {
  return (
    <Companion title="Catch cup" told="Air off, trigger full on, into a measured cup." setUp={setUp} group={CAUGHT} answer={children}>
      <PartField setUp={setUp} group={CAUGHT} measure="volume_mL" label="Caught" />
      <PartField setUp={setUp} group={CAUGHT} measure="seconds" label="Time, trigger full on" />
      <PartField setUp={setUp} group={CAUGHT} measure="volumeWithin_mL" label="Volume right within" />
      <PartField setUp={setUp} group={CAUGHT} measure="secondsWithin_s" label="Time right within" />
    </Companion>
  );
}

/** The fan's width at two distances or more. */
export function WidthsForm({ setUp, children }: CompanionProps): JSX.Element {
  const rows = state.job.value.setUps[setUp]?.card?.widths?.length ?? 0;
  const shown = Math.min(rows + 1, MOST_WIDTHS);
  return (
    <section class="form setups-companion" aria-label="Widths of the fan">
      <h3>Widths of the fan</h3>
      <p class="soft">A short burst on paper at two distances or more, measured from edge to edge.</p>
      {Array.from({ length: shown }, (_, row) => (
        <fieldset key={row} class="group">
          <legend>Burst {row + 1}</legend>
          <PartField setUp={setUp} group={widthRow(row)} measure="distance_mm" label="Gun to card" />
          <PartField setUp={setUp} group={widthRow(row)} measure="width_mm" label="Full width" />
          {isBegun(setUp, widthRow(row)) ? <button type="button" onClick={() => clearPart(setUp, widthRow(row), 'Remove a width')}>Remove burst {row + 1}</button> : null}
        </fieldset>
      ))}
      <CardNumberField setUp={setUp} measure="widthWithin_mm" label="Widths right within" hint="Paper and tape: the edge of a burst is no line." />
      <div class="setups-answer" role="status">{children}</div>
    </section>
  );
}

/** A foil weighed before and after, dry. */
export function FoilForm({ setUp, children }: CompanionProps): JSX.Element {
  return (
    <Companion title="Weighed foil" told="Wider than the fan, sprayed at the card's distance, weighed before and when fully dry." setUp={setUp} group={FOIL} answer={children}>
      <PartField setUp={setUp} group={FOIL} measure="gain_g" label="Gained, dry" />
      <PartField setUp={setUp} group={FOIL} measure="gainWithin_g" label="Weight right within" />
      <PartField setUp={setUp} group={FOIL} measure="length_mm" label="Foil along the travel" />
      <PartField setUp={setUp} group={FOIL} measure="strokes" label="Strokes over it" />
      <PartField setUp={setUp} group={FOIL} measure="speed_m_s" label="Speed" />
      <PartField setUp={setUp} group={FOIL} measure="speedWithin_percent" label="Speed right within" />
    </Companion>
  );
}

/** A wet-film comb. */
export function CombForm({ setUp, children }: CompanionProps): JSX.Element {
  return (
    <Companion title="Wet-film comb" told="Read in the middle of the fan, at once, at the card's distance." setUp={setUp} group={COMB} answer={children}>
      <PartField setUp={setUp} group={COMB} measure="low_um" label="Last tooth wetted" />
      <PartField setUp={setUp} group={COMB} measure="high_um" label="Next tooth, dry" />
      <PartField setUp={setUp} group={COMB} measure="strokes" label="Strokes on one line" />
      <PartField setUp={setUp} group={COMB} measure="speed_m_s" label="Speed" />
      <PartField setUp={setUp} group={COMB} measure="speedWithin_percent" label="Speed right within" />
    </Companion>
  );
}

interface CompanionFrame {
  readonly title: string;
  readonly told: string;
  readonly setUp: number;
  readonly group: CardGroup;
  readonly answer: ComponentChildren;
  readonly children: ComponentChildren;
}

function Companion({ title, told, setUp, group, answer, children }: CompanionFrame): JSX.Element {
  return (
    <section class="form setups-companion" aria-label={title}>
      <h3>{title}</h3>
      <p class="soft">{told}</p>
      {children}
      <div class="setups-answer" role="status">{answer}</div>
      {isBegun(setUp, group) ? <button type="button" onClick={() => clearPart(setUp, group, `Clear the ${title.toLowerCase()}`)}>Clear<span class="hidden-words"> the {title.toLowerCase()}</span></button> : null}
    </section>
  );
}
