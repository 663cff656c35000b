import type { JSX } from 'preact';
import { whatIfSentence, type UnitSystem, type WhatIfHabit } from '../../../../sim/index.ts';
import type { DebriefReply, WhatIfReply } from '../../../worker/protocol.ts';
import { FilmMap } from './FilmMap.tsx';
import { wholeBox } from './mapBox.ts';
import { PanelInk } from './MapInk.tsx';

const HABIT_WORDS: Readonly<Record<WhatIfHabit, string>> = {
  'even-speed': 'Speed even',
  'no-arc': 'Gun square, no arc',
  'even-distance': 'Distance even',
  'right-overlap': 'Overlap as meant',
  'trigger-past-edge': 'Trigger past the edge',
};

export interface WhatIfCardsProps {
  readonly debrief: DebriefReply;
  readonly whatIfs: readonly WhatIfReply[];
  readonly isBusy: boolean;
  readonly units: UnitSystem;
}

/** The same session, sprayed again by the model without one habit: a card each. */
export function WhatIfCards({ debrief, whatIfs, isBusy, units }: WhatIfCardsProps): JSX.Element | null {
  const answered = whatIfs.filter(({ id }) => id === debrief.id);
  if (answered.length === 0 && !isBusy) return null;
  const { panel, panelGrid } = debrief.reported.coat.setting;
  return (
    <section class="debrief-part" aria-label="What if" aria-busy={isBusy}>
      <h2>What if</h2>
      <p class="soft" role="status">{isBusy ? 'Spraying again without each habit…' : ''}</p>
      <div class="debrief-cards">
        {answered.map(({ reported, field }) => (
          <article key={reported.habit} class="debrief-card" data-testid={`what-if-${reported.habit}`}>
            <h3>{HABIT_WORDS[reported.habit]}</h3>
            {reported.strokes === 0 ? null : (
              <FilmMap field={field} cover={panelGrid.cover} box={wholeBox(panel)} label={`${HABIT_WORDS[reported.habit]}: ${field.title}`} most_px={200} over={(place) => <PanelInk panel={panel} place={place} />} />
            )}
            <p>{whatIfSentence(reported, debrief.reported, units)}</p>
          </article>
        ))}
      </div>
    </section>
  );
}
