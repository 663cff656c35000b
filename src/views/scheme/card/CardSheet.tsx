import './card.css';
import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { followCard, jobCardSheet, printCard, saveCard } from '../../../app/scheme/jobCardSheet.ts';
import { shownScheme } from '../../../app/scheme/scheme.ts';
import { Notice } from '../../frame/Notices.tsx';

/** One sheet for the wall: every step with its mix, gun, film, wait and cautions, a page a day. */
export function CardSheet(): JSX.Element {
  const frame = useRef<HTMLIFrameElement>(null);
  useEffect(followCard, []);
  const { html, problem, working } = jobCardSheet;
  if (shownScheme.value === null) return <p>No scheme yet: begin one on the sheet Steps, and its job card stands here.</p>;
  return (
    <section class="scheme-card" aria-labelledby="card-head">
      <h2 id="card-head">Job card</h2>
      <p>Every step with its mix and cup seconds, gun, first stroke, film, wait and boxes to fill by hand; a page a day, cautions at its foot. It records nothing by itself and certifies nothing.</p>
      <div class="actions">
        <button type="button" class="act" disabled={html.value === ''} onClick={() => printCard(frame.current)}>Print</button>
        <button type="button" disabled={html.value === ''} onClick={() => saveCard('html')}>Save as HTML</button>
        <button type="button" disabled={html.value === ''} onClick={() => saveCard('text')}>Save as text</button>
        <p role="status">{working.value ? 'Writing the card…' : ''}</p>
      </div>
      {problem.value === null ? null : <Notice problem={problem.value} dismiss={() => (problem.value = null)} />}
      {html.value === '' ? null : <iframe ref={frame} class="scheme-card-page" title="Job card as it prints" sandbox="allow-same-origin allow-modals" srcdoc={html.value} />}
    </section>
  );
}
