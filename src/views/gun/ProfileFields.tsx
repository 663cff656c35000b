import type { JSX } from 'preact';
import { changeJob } from '../../app/document.ts';
import { keepDraft } from '../../app/fieldText.ts';
import { pointerOf, withValueAt, type JobPath } from '../../app/path.ts';
import { newProfile, type Family, type Profile } from '../../app/setUpCommands.ts';
import { state } from '../../app/state.ts';
import { readTable, tableText } from '../../app/tableText.ts';
import { ChoiceField } from '../fields/ChoiceField.tsx';
import { NumberField } from '../fields/NumberField.tsx';
import { TextDraftField } from '../fields/TextDraftField.tsx';
import { FAMILY_WORDS } from './familyWords.ts';

const FAMILIES = Object.entries(FAMILY_WORDS) as readonly (readonly [family: Family, words: string])[];

export interface ProfileFieldsProps {
  readonly path: JobPath;
  readonly profile: Profile;
  readonly width_mm: number;
}

/** The film that one stroke leaves across the fan. */
export function ProfileFields({ path, profile, width_mm }: ProfileFieldsProps): JSX.Element {
  return (
    <>
      <ChoiceField
        id="profile"
        label="Film across the fan"
        value={profile.family}
        options={FAMILIES}
        choose={(family) => changeJob('Film across the fan', withValueAt(state.job.peek(), path, newProfile(family, width_mm)))}
      />
      {profile.family === 'double-beta' ? (
        <>
          <NumberField path={[...path, 'beta1']} label="Exponent across" hint="Near 2.9, half overlap lies flattest; higher is more peaked." />
          <NumberField path={[...path, 'beta2']} label="Exponent along" />
        </>
      ) : null}
      {profile.family === 'flat-top' ? <NumberField path={[...path, 'taper_mm']} label="Tapered edge" /> : null}
      {profile.family === 'table' ? (
        <TextDraftField
          pointer={pointerOf(path)}
          label="Place from the middle in mm, film; one a line"
          text={tableText(profile.place_mm, profile.film)}
          hint="Film in any unit: readings, or shade by eye from 0 to 100. Only the proportions count."
          type={(text) => typeTable(path, text)}
        />
      ) : null}
    </>
  );
}

function typeTable(path: JobPath, text: string): void {
  const read = readTable(text);
  const pointer = pointerOf(path);
  if ('problem' in read) {
    keepDraft(pointer, { text, problem: read.problem });
    return;
  }
  keepDraft(pointer, { text, problem: null });
  changeJob('Measured stroke', withValueAt(state.job.peek(), path, { family: 'table', ...read }), pointer);
}
