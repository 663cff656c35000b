import type { JSX } from 'preact';
import { shown, shownPercent, type PhotoFan } from '../../../../sim/index.ts';
import { cardPhoto, takePhotoReadings } from '../../../app/setups/cardPhoto.ts';
import { state } from '../../../app/state.ts';
import { FilmMapPicture } from './FilmMapPicture.tsx';

/** What was read between the corners: film as a map, the fan's measures, and a button that takes its readings over. */
export function PhotoRead(): JSX.Element {
  const { reply, problem, working } = cardPhoto;
  const fan = reply.value;
  if (problem.value !== null) return <p class="setups-answer" role="alert"><span class="wrong">{problem.value.title}: {problem.value.text}</span></p>;
  if (fan === null) return <p role="status">{working.value ? 'Reading the photograph…' : ''}</p>;
  return (
    <div class="photo-read" aria-busy={working.value}>
      <FilmMapPicture map={fan.map} />
      <p role="status">{spotSentence(fan)}</p>
      {fan.warnings.length === 0 ? null : <ul class="plain-list setups-faults">{fan.warnings.map(({ text }) => <li key={text}>{text}</li>)}</ul>}
      <p class="soft">Darkness shows film in proportion only: the flow, foil or comb says how much.</p>
      <button type="button" class="act" disabled={working.value} onClick={takePhotoReadings}>Use these readings</button>
    </div>
  );
}

function spotSentence({ spot, fullFraction }: PhotoFan): string {
  const units = state.units.value;
  const depth = spot.depth_m === null ? '' : ` and ${shown(spot.depth_m, 'length', units)} deep`;
  const bend = spot.bendFraction === null ? '' : `; its ends bend by ${shownPercent(Math.abs(spot.bendFraction))} of its depth`;
  const flutter = spot.widthVariationFraction === null ? '' : `; its width varies by ${shownPercent(spot.widthVariationFraction)} along the travel`;
  const full = fullFraction > 0 ? `; ${shownPercent(fullFraction)} of it is too dark to show film in proportion` : '';
  return `The fan is ${shown(spot.width_m, 'length', units)} wide${depth}, its long axis at ${wholeDegrees(spot.angle_rad)} on the card${bend}${flutter}${full}.`;
}

/** Finer ones would claim more than a hand-held photograph shows; half a turn either way is the same axis. */
function wholeDegrees(angle_rad: number): string {
  return `${Math.round((angle_rad * 180) / Math.PI) || 0}°`;
}
