import './fit.css';
import type { JSX } from 'preact';
import { ESTIMATE_STATEMENT, FIT_LIMITS, fitSentence, obstacleWords, proposalHead, proposalSentences, relaxationWords, type ReportedFit } from '../../../../sim/index.ts';
import { fitSheet, isFitOutOfDate, startFit, stopFit, useProposal } from '../../../app/setups/fitSheet.ts';
import { state } from '../../../app/state.ts';
import { Notice } from '../../frame/Notices.tsx';
import { WishForm } from './WishForm.tsx';

/** Set-ups and plans worked out for a wished film, with the most room first; or what stands in the way. */
export function FitSheet(): JSX.Element {
  const { fit, problem, working } = fitSheet;
  const found = fit.value;
  return (
    <div class="setups-fit">
      <WishForm />
      <div class="actions">
        {working.value
          ? <button type="button" onClick={stopFit}>Leave off</button>
          : <button type="button" class="act" onClick={() => void startFit()}>Work it out</button>}
        <p role="status">{working.value ? 'Looking through set-ups, distances, overlaps, fluid and thinner…' : ''}</p>
      </div>
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      {found === null ? null : (
        <>
          {isFitOutOfDate.value ? <p role="status"><strong>This is of the job or the wish as it was.</strong> Work it out again.</p> : null}
          <Found fit={found} />
          <p class="soft">{FIT_LIMITS} {ESTIMATE_STATEMENT}</p>
        </>
      )}
    </div>
  );
}

function Found({ fit }: { readonly fit: ReportedFit }): JSX.Element {
  const units = state.units.value;
  return (
    <section aria-labelledby="fit-head">
      <h2 id="fit-head">{fit.proposals.length === 0 ? 'Nothing meets the wish' : 'Ways to lay it'}</h2>
      <p>{fitSentence(fit, units)}</p>
      <ol class="fit-ways">
        {fit.proposals.map((proposal, i) => (
          <li key={proposalHead(proposal)}>
            <h3>{proposalHead(proposal)}</h3>
            {proposalSentences(fit, proposal, units).map((text) => <p key={text}>{text}</p>)}
            <button type="button" disabled={isFitOutOfDate.value} onClick={() => useProposal(i)}>Use this for the coat</button>
          </li>
        ))}
      </ol>
      {fit.nearest === null ? null : <Missed fit={fit} nearest={fit.nearest} />}
      {fit.leftOut.length === 0 ? null : <ul class="setups-sentences" aria-label="Set-ups left out">{fit.leftOut.map((text) => <li key={text}>{text}</li>)}</ul>}
    </section>
  );
}

function Missed({ fit, nearest }: { readonly fit: ReportedFit; readonly nearest: NonNullable<ReportedFit['nearest']> }): JSX.Element {
  const units = state.units.value;
  return (
    <>
      <h3>In the way</h3>
      <ul class="setups-sentences">{fit.obstacles.map((obstacle) => <li key={obstacle.limit}>{obstacleWords(obstacle, nearest, units)}</li>)}</ul>
      <h3>What would help, one at a time</h3>
      <ul class="setups-sentences">{fit.relaxations.map((one) => <li key={JSON.stringify(one.relaxed)}>{relaxationWords(one, units)}</li>)}</ul>
      <h3>Nearest to it: {proposalHead(nearest)}</h3>
      {proposalSentences(fit, nearest, units).map((text) => <p key={text}>{text}</p>)}
    </>
  );
}
