import type { JSX } from 'preact';
import { leaveField } from '../../../app/fieldText.ts';
import { roomText, stateRoom, typeRoom, type RoomKey } from '../../../app/scheme/vapourSheet.ts';
import { state } from '../../../app/state.ts';
import { NumberBox } from '../../fields/NumberBox.tsx';

/** The room and its fan: they stand in the job. */
export function RoomFields(): JSX.Element {
  const isStated = state.job.value.room !== undefined;
  return (
    <section aria-labelledby="vapour-room">
      <h2 id="vapour-room">Room and fan</h2>
      {isStated ? null : (
        <p>
          No room is stated: a double garage without a fan is assumed. Type your own, or{' '}
          <button type="button" onClick={stateRoom}>keep this one in the job</button>
        </p>
      )}
      <div class="scheme-vapour-fields">
        <RoomField name="volume_m3" label="Room" hint="Length × width × height of the space that shares its air" />
        <RoomField name="fresh_m3_h" label="Outside air that the fan brings" hint="As measured at the filters; a fan’s plate promises more" />
        <RoomField name="face_m2" label="Open face of the booth" hint="Empty where it is no booth" />
        <RoomField name="mixing" label="Factor for uneven mixing" hint="1 perfect; 3 to 10 is usual, 10 where air stands still in corners" />
      </div>
    </section>
  );
}

function RoomField({ name, label, hint }: { readonly name: RoomKey; readonly label: string; readonly hint: string }): JSX.Element {
  const field = roomText(name);
  return (
    <NumberBox
      id={`room-${name}`}
      label={label}
      text={field.text}
      unit={field.unit}
      problem={field.problem === null ? null : `${field.problem}. The figures are of the last good value.`}
      hint={hint}
      type={(text) => typeRoom(name, label, text)}
      leave={() => leaveField(field.id)}
    />
  );
}
