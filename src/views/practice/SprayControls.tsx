import type { JSX } from 'preact';
import { AIR_ONLY, fluidShare } from '../../../sim/index.ts';
import type { SprayRoom } from '../../app/practice/sprayRoom.ts';
import { finishNow, lookAtThrown, room, startAgain, thrownAway } from '../../app/practice/underway.ts';
import { clockText } from '../../app/timeWords.ts';
import { ScaleText } from './ScaleText.tsx';

/** Time that can be let pass at one press, min. */
const WAITS_MIN = [1, 5, 15] as const;
const SECONDS_PER_MINUTE = 60;

/** The session's clock, the trigger as it stands, and what ends or forwards the session. */
export function SprayControls(): JSX.Element {
  const now = room.value;
  const phase = now?.phase.value ?? 'aiming';
  const isSprayed = phase !== 'aiming';
  return (
    <div class="spray-controls">
      <p class="spray-phase" role="status" data-phase={phase}>{phaseWords(now)}</p>
      <TriggerTwin now={now} />
      <div class="actions">
        <button type="button" class="act" disabled={phase !== 'spraying'} onClick={finishNow}>Finish and debrief</button>
        <button type="button" disabled={!isSprayed} onClick={startAgain}>Start again</button>
        {thrownAway.value.length === 0 || isSprayed ? null : <button type="button" onClick={lookAtThrown}>Look through the last one after all</button>}
      </div>
      <div class="actions" role="group" aria-label="Let time pass">
        <span class="spray-waits">Let pass</span>
        {WAITS_MIN.map((minutes) => (
          <button key={minutes} type="button" disabled={phase !== 'spraying'} onClick={() => now?.letTimePass(minutes * SECONDS_PER_MINUTE)}>{minutes} min</button>
        ))}
      </div>
      <ScaleText now={now} />
      <p class="spray-cost soft" data-p95={now?.costs.p95_ms.toFixed(2) ?? ''} data-share={now?.costs.share.toFixed(4) ?? ''} data-rows={now?.rows.count ?? 0}>
        {now === null || !isSprayed ? '' : costWords(now)}
      </p>
    </div>
  );
}

function phaseWords(now: SprayRoom | null): string {
  if (now === null) return 'The panel is being hung…';
  const clock = clockText(now.clock_s.value);
  switch (now.phase.value) {
    case 'aiming':
      return 'Aim beside the panel, move, then pull the trigger.';
    case 'spraying':
      return clock;
    case 'passing':
      return `Time passes… ${clock}`;
    case 'full':
      return 'The session is full and goes to the debrief.';
  }
}

function costWords(now: SprayRoom): string {
  // Read with the clock, so that it is written again as time goes on.
  void now.clock_s.value;
  return `${now.rows.count} samples; the film takes ${(100 * now.costs.share).toFixed(0)} % of the time, ${now.costs.p95_ms.toFixed(1)} ms of a frame, and is ${now.lag_s.toFixed(1)} s behind the hand.`;
}

/** What the hiss says, to be seen: how far the trigger is pulled; and a mark that changes with each tick of the pace. */
function TriggerTwin({ now }: { readonly now: SprayRoom | null }): JSX.Element {
  const trigger = now?.trigger.value ?? 0;
  const ticks = now?.ticks.value ?? 0;
  return (
    <p class="trigger-twin" data-trigger={trigger}>
      <span>{trigger === 0 ? 'Trigger off' : trigger <= AIR_ONLY ? 'Air only' : trigger < 1 ? `Spray, ${Math.round(100 * fluidShare(trigger))} % open` : 'Spray'}</span>
      <span class="trigger-bar" aria-hidden="true"><span style={{ width: `${100 * trigger}%` }} /></span>
      {ticks === 0 ? null : <span class={ticks % 2 === 0 ? 'pace-tick even' : 'pace-tick'} aria-hidden="true" />}
    </p>
  );
}
