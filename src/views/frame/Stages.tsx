import type { JSX } from 'preact';
import { stageMarks, type StageMark } from '../../app/stageMarks.ts';
import { openDemonstrations } from '../demonstrations/openDemonstrations.ts';
import { openLog } from '../log/openLog.ts';
import { openPractice } from '../practice/openPractice.ts';
import { openScheme } from '../scheme/openScheme.ts';
import { openSetUps } from '../setups/openSetUps.ts';
import { openSurvey } from '../survey/openSurvey.ts';
import { openToday } from '../today/openToday.ts';
import { showDoubts } from '../verdict/Doubts.tsx';
import { STAGE_NAMES, state, type StageName } from '../../app/state.ts';

const STAGE_WORDS: Readonly<Record<StageName, string>> = { part: 'Part', mix: 'Mix', air: 'Air', gun: 'Gun', strokes: 'Strokes' };

const MARK_WORDS: Readonly<Record<StageMark, string>> = {
  set: 'set',
  attention: 'needs attention',
  doubt: 'has a doubt',
  'not-yet': 'not yet',
};

/** Today stands first, and the scheme after the part. */
const SCHEME_PLACE = 3;

/** The stages of the work, in the order the trade does it. */
export function Stages(): JSX.Element {
  return (
    <nav class="stages" aria-label="Stages of the work">
      <ol>
        <Over number={1} words="Today" open={openToday} />
        {STAGE_NAMES.map((stage, i) => (
          <>
            {stage === 'mix' ? <Over number={SCHEME_PLACE} words="Scheme" open={openScheme} /> : null}
            <Stage key={stage} stage={stage} number={i + 2 + (i + 2 >= SCHEME_PLACE ? 1 : 0)} />
          </>
        ))}
        <Over number={STAGE_NAMES.length + 3} words="Set-ups" open={openSetUps} />
        <Over number={STAGE_NAMES.length + 4} words="Practice" open={openPractice} />
        <Over number={STAGE_NAMES.length + 5} words="Demonstrations" open={openDemonstrations} />
        <Over number={STAGE_NAMES.length + 6} words="Survey" open={openSurvey} />
        <Over number={STAGE_NAMES.length + 7} words="Log" open={openLog} />
      </ol>
    </nav>
  );
}

/** A stage whose form stands in the window. */
function Stage({ stage, number }: { readonly stage: StageName; readonly number: number }): JSX.Element {
  const words = STAGE_WORDS[stage];
  const mark = stageMarks.value[stage];
  return (
    <li>
      <button type="button" class="stage" aria-current={state.stage.value === stage ? 'step' : undefined} onClick={() => (state.stage.value = stage)}>
        <span class="stage-number" aria-hidden="true">{number}</span>
        <span class="stage-name">{words}</span>
        <StageSign mark={mark} />
        <span class={mark === 'set' ? 'hidden-words' : `stage-mark ${mark}`}>{MARK_WORDS[mark]}</span>
      </button>
      {mark === 'doubt' ? (
        <button type="button" class="plain" onClick={showDoubts}>see Doubts<span class="hidden-words"> of {words}</span></button>
      ) : null}
    </li>
  );
}

/** A stage that is laid over the window. */
function Over({ number, words, open }: { readonly number: number; readonly words: string; readonly open: () => Promise<void> }): JSX.Element {
  return (
    <li>
      <button type="button" class="stage" onClick={() => void open()}>
        <span class="stage-number" aria-hidden="true">{number}</span>
        <span class="stage-name">{words}</span>
      </button>
    </li>
  );
}

/** A tick, a triangle, a question or an empty ring: told apart by shape, not by colour. */
function StageSign({ mark }: { readonly mark: StageMark }): JSX.Element {
  return (
    <svg class={`stage-sign ${mark}`} viewBox="0 0 20 20" aria-hidden="true">
      {mark === 'set' ? <path d="M3 11 L8 16 L17 4" /> : null}
      {mark === 'attention' ? <path d="M10 2 L18.5 17.5 L1.5 17.5 Z M10 7.5 V12.5 M10 14.5 V15.7" /> : null}
      {mark === 'doubt' ? <path d="M6 7 A4 4 0 1 1 10 11 V13.5 M10 16 V17.5" /> : null}
      {mark === 'not-yet' ? <circle cx="10" cy="10" r="7.5" /> : null}
    </svg>
  );
}
