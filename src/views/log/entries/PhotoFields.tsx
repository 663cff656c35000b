import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { LogEntrySpec } from '../../../../sim/index.ts';
import { removeItem } from '../../../app/log/listFields.ts';
import { addPhotos, MOST_PHOTOS } from '../../../app/log/shrinkPhoto.ts';
import { EntryWords } from './EntryBoxes.tsx';

/** Photographs of the entry, each kept small. */
export function PhotoFields({ entry }: { readonly entry: LogEntrySpec }): JSX.Element {
  const [busy, setBusy] = useState(false);
  const take = async (input: HTMLInputElement): Promise<void> => {
    const files = [...(input.files ?? [])];
    input.value = '';
    setBusy(true);
    await addPhotos(files);
    setBusy(false);
  };
  return (
    <fieldset class="log-entries-group" aria-busy={busy}>
      <legend>Photographs</legend>
      {entry.photos.map((photo, k) => (
        <div key={photo.id} class="log-entries-item" role="group" aria-label={`Photograph ${k + 1}`}>
          <img class="log-entries-photo" src={`data:image/jpeg;base64,${photo.jpeg}`} width={photo.width} height={photo.height} alt={photo.name === '' ? `Photograph ${k + 1}` : photo.name} />
          <EntryWords at={['photos', k, 'name']} label="What it shows" longest={200} isOptional={false} />
          <button type="button" aria-label={`Remove photograph ${k + 1}`} onClick={() => removeItem('photos', k, 'Remove a photograph')}>Remove</button>
        </div>
      ))}
      <div class="field field-wide">
        <label for="entry-photo-add">Take or choose photographs</label>
        <input
          id="entry-photo-add"
          class="log-entries-file"
          type="file"
          accept="image/jpeg,image/png"
          capture="environment"
          multiple
          disabled={busy || entry.photos.length >= MOST_PHOTOS}
          aria-describedby="entry-photo-note"
          onChange={(event) => void take(event.currentTarget)}
        />
        <span class="field-note" id="entry-photo-note">JPEG or PNG, at most {MOST_PHOTOS}. Each is drawn anew, at most 1280 pixels along a side, and kept in the job file. Place, time and device that a camera writes into its files do not come along. The history keeps no removed picture, only its digest.</span>
        <span role="status">{busy ? 'Making it smaller…' : ''}</span>
      </div>
    </fieldset>
  );
}
