import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import { cardPhoto, dropPhoto, followPhoto, setPhotoPrefs } from '../../../app/setups/cardPhoto.ts';
import { PHOTO_SIDE_MM } from '../../../app/setups/setUpsPrefs.ts';
import { state } from '../../../app/state.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { ViewNumberField } from '../../fields/ViewNumberField.tsx';
import { PhotoCorners } from './PhotoCorners.tsx';
import { PhotoRead } from './PhotoRead.tsx';

/** A photograph of the card: squared up by its corners, read, and shown as film. */
export function PhotoForm(): JSX.Element | null {
  useEffect(followPhoto, []);
  const photo = cardPhoto.photo.value;
  const corners = cardPhoto.corners.value;
  if (photo === null || corners === null) return null;
  return (
    <section class="form setups-photo" aria-label="Photograph of the card">
      <h2>Photograph</h2>
      <p>It is read in this browser and is not uploaded. The picture itself is not kept: once its readings are used, they are in the job.</p>
      <div class="setups-pictures">
        <PhotoCorners photo={photo} corners={corners} move={(moved) => (cardPhoto.corners.value = moved)} />
        <PhotoRead />
      </div>
      <PhotoFields />
      <div class="actions">
        <button type="button" onClick={dropPhoto}>Put the photograph away</button>
      </div>
    </section>
  );
}

/** What the photograph does not say of itself. */
function PhotoFields(): JSX.Element {
  const { width_mm, height_mm, kind, along } = state.setUps.value.photo;
  const side = { unitKey: 'side_mm', ...PHOTO_SIDE_MM };
  return (
    <div class="setups-fields">
      <ViewNumberField id="photo-width" label="Between left and right corners" {...side} value={width_mm} set={(value) => setPhotoPrefs({ width_mm: value })} />
      <ViewNumberField id="photo-height" label="Between lower and upper corners" {...side} value={height_mm} set={(value) => setPhotoPrefs({ height_mm: value })} />
      <ChoiceField
        id="photo-kind"
        label="Sprayed as"
        value={kind}
        options={[['burst', 'a short burst, the gun standing still'], ['stroke', 'a stroke']]}
        choose={(value) => setPhotoPrefs({ kind: value })}
      />
      {kind === 'burst' ? null : (
        <ChoiceField
          id="photo-along"
          label="The stroke ran"
          value={along}
          options={[['x', 'from side to side'], ['y', 'up or down']]}
          choose={(value) => setPhotoPrefs({ along: value })}
        />
      )}
    </div>
  );
}
