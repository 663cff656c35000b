import type { JSX } from 'preact';
import { closeStep } from '../../../app/document.ts';
import { openCardFile } from '../../../app/setups/cardFiles.ts';
import { EXAMPLE_READINGS, putReadings, readingsText, typeReadings } from '../../../app/setups/cardReadings.ts';
import { FieldNote } from '../../fields/FieldNote.tsx';
import { CardNumberField } from './CardNumberField.tsx';

/** Readings across the fan as text, or from a file. @param problem what the text's reader found wrong with it. */
export function ReadingsForm({ setUp, problem }: { readonly setUp: number; readonly problem: string | null }): JSX.Element {
  const readings = readingsText(setUp);
  const wrong = readings.problem ?? problem;
  return (
    <section class="form" aria-label="Readings across the fan">
      <h2>Readings across the fan</h2>
      <CardNumberField setUp={setUp} measure="distance_mm" label="Gun to card" hint="While the card was sprayed. Empty: the distance at which the set-up's fan was read." />
      <div class="field field-wide">
        <label for="card-readings">Place and film, one reading a line</label>
        <textarea
          id="card-readings"
          class="setups-readings"
          spellcheck={false}
          value={readings.text}
          placeholder={EXAMPLE_READINGS}
          aria-invalid={wrong !== null}
          aria-describedby="card-readings-note"
          onInput={(event) => typeReadings(setUp, event.currentTarget.value)}
          onBlur={closeStep}
        />
        <FieldNote
          id="card-readings-note"
          problem={wrong}
          hint="The first line names the columns with their units: x_mm or x_in, then film_um, film_mil, mass_g or any measure in proportion, such as shade. At least 7 readings, from bare paper to bare paper."
        />
      </div>
      <div class="actions">
        <label class="file-button">
          Open readings or a photograph
          <input
            class="hidden-words"
            type="file"
            accept=".csv,.txt,text/csv,text/plain,image/png,image/jpeg"
            onChange={(event) => {
              const [file] = event.currentTarget.files ?? [];
              // The same file can be chosen again after it was changed.
              event.currentTarget.value = '';
              if (file !== undefined) void openCardFile(file);
            }}
          />
        </label>
        {readings.text === '' ? <button type="button" onClick={() => putReadings('Example readings', EXAMPLE_READINGS)}>Put the example in</button> : null}
      </div>
      <p class="soft">Or drop a file anywhere on this sheet. It stays in this browser: nothing is uploaded.</p>
    </section>
  );
}
