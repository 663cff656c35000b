import { handsSetting, sprayHands } from '../../sim/index.ts';
import type { Handlers } from './serve.ts';

/** What the worker does for many hands: a share of them at a time, so that two workers can go halves and the page can leave off. */
export function makeHandsHandlers(): Pick<Handlers, 'hands'> {
  return {
    hands: ({ job, coat, setUp, strokes, ...options }) => {
      const setting = handsSetting(job, coat, setUp, strokes);
      const tally = sprayHands(setting, options);
      return Promise.resolve({ reply: { tally, speed_m_s: setting.plan.speed_m_s } });
    },
  };
}
