import './vapour.css';
import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import {
  about, aboutPercent, courseSentences, shutSentence, solventSentence, VAPOUR_ASSUMPTIONS, VAPOUR_CAUTIONS, VAPOUR_DECIDES, VAPOUR_STATEMENT, vapourSentence, type ReportedVapour,
} from '../../../../sim/index.ts';
import { lookAtScheme, shownScheme } from '../../../app/scheme/scheme.ts';
import { followVapour, shownVapour, vapours, vapourSheet } from '../../../app/scheme/vapourSheet.ts';
import { state } from '../../../app/state.ts';
import { VapourChart } from '../../../charts/VapourChart.tsx';
import { shownMinutes } from '../../../charts/vapourChart.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { Notice } from '../../frame/Notices.tsx';
import { AirNeeds } from './AirNeeds.tsx';
import { RoomFields } from './RoomFields.tsx';
import { SolventTable } from './SolventTable.tsx';

/** What the coats of the scheme do to the air of the room, minute by minute. An estimate, never a clearance. */
export function VapourSheet(): JSX.Element {
  useEffect(followVapour, []);
  const { problem, working } = vapourSheet;
  const reported = shownVapour.value;
  return (
    <div class="scheme-vapour">
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      {reported === null ? <p role="status">{emptyWords(working.value)}</p> : <Said reported={reported} />}
      <Cautions />
      <RoomFields />
      {reported === null ? null : <Worked reported={reported} />}
    </div>
  );
}

function emptyWords(isWorking: boolean): string {
  if (shownScheme.value === null) return 'The job has no scheme yet: begin one on the sheet Steps, and the vapour of its coats is worked out here.';
  return isWorking || vapourSheet.madeOf.value === null ? 'Working out the vapour…' : 'This scheme has no coat that lets off solvent.';
}

function Said({ reported }: { readonly reported: ReportedVapour }): JSX.Element {
  const choices = vapours.value.map(({ solvent, course }) => [solvent.stepId, `${solvent.name}: ${about(course.timesLimit[course.worstLimit] ?? 0)} × exposure limits`] as const);
  return (
    <section aria-labelledby="vapour-head">
      <h2 id="vapour-head">Vapour</h2>
      <ChoiceField id="vapour-coat" label="Coat" value={reported.solvent.stepId} options={choices} choose={(vapourStep) => lookAtScheme({ vapourStep })} />
      <p class="scheme-vapour-said" data-testid="vapour-said">{vapourSentence(reported.course)}</p>
      <p>{VAPOUR_STATEMENT} {VAPOUR_DECIDES}</p>
    </section>
  );
}

function Cautions(): JSX.Element {
  return (
    <section class="caution" aria-label="Before you spray in this room">
      <h2>Before you spray in this room</h2>
      <ul>{VAPOUR_CAUTIONS.map((text) => <li key={text}>{text}</li>)}</ul>
    </section>
  );
}

function Worked({ reported }: { readonly reported: ReportedVapour }): JSX.Element {
  const { course, solvent, shut } = reported;
  const units = state.units.value;
  const minutes = shownMinutes(course, solvent.lay_s);
  return (
    <>
      <div class="scheme-vapour-pair">
        <section aria-labelledby="vapour-minutes">
          <h2 id="vapour-minutes">By the minute</h2>
          <VapourChart explosive={course.lelFraction} exposure={course.timesLimit} minutes={minutes} layEnd={solvent.lay_s / course.step_s} label={`Multiples of the limits by the minute. ${vapourSentence(course)}`} />
          <ul>{courseSentences(course).map((text) => <li key={text}>{text}</li>)}</ul>
          <MinuteTable reported={reported} minutes={minutes} />
        </section>
        <AirNeeds reported={reported} />
      </div>
      <section aria-labelledby="vapour-solvents">
        <h2 id="vapour-solvents">By solvent</h2>
        <p>{solventSentence(solvent, units)}</p>
        <p>Fan off. {shutSentence(shut, units)}</p>
        {shut.unlimited.length === 0 ? null : <p>Not counted against the exposure limits, since none is known here: {shut.unlimited.join(', ')}.</p>}
        <SolventTable reported={reported} />
        <p>Solvents of {solvent.mixName}. Limits are as published when this was written, many from memory: look up today’s on the safety data sheet.</p>
      </section>
      <details>
        <summary>What all this rests on</summary>
        <ul>
          {VAPOUR_ASSUMPTIONS.map((text) => <li key={text}>{text}</li>)}
          <li>The coat is laid at an even rate. What misses, floats as fog or flies off the drops evaporates at once; what lands leaves as an even film of the coat’s mean thickness does in the job’s air, quick solvents and slow ones apart. Against the model of the whole film the solvent still in the film agrees within 3 % of all that is used. All of it leaves in the end.</li>
        </ul>
      </details>
    </>
  );
}

/** About a dozen rows whatever the length. */
function MinuteTable({ reported, minutes }: { readonly reported: ReportedVapour; readonly minutes: number }): JSX.Element {
  const { course } = reported;
  const every = Math.max(1, Math.ceil(minutes / 12));
  const rows = Array.from({ length: minutes }, (_, k) => k + 1).filter((minute) => minute % every === 0 || minute === 1 || minute - 1 === course.worstLel || minute - 1 === course.worstLimit);
  return (
    <details>
      <summary>As a table</summary>
      <div class="scheme-vapour-scroll" tabIndex={0} role="region" aria-label="Multiples of the limits by the minute">
        <table>
          <thead><tr><th scope="col">Minute</th><th scope="col">of lower explosive limit</th><th scope="col">times exposure limits</th></tr></thead>
          <tbody>{rows.map((minute) => (
            <tr key={minute}><th scope="row">{minute}</th><td>{aboutPercent(course.lelFraction[minute - 1] ?? 0)}</td><td>{about(course.timesLimit[minute - 1] ?? 0)}</td></tr>
          ))}</tbody>
        </table>
      </div>
    </details>
  );
}
