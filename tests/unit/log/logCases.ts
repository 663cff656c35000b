import type { LogEntrySpec } from '../../../sim/job/schema.ts';

/** An entry as somebody might have made it. */
export const ENTRY: LogEntrySpec = {
  id: 'entry-1',
  kind: 'coat',
  name: 'Second clear',
  step: 'clear-2',
  panels: ['left-side'],
  started: '2026-05-04T15:40+02:00',
  ended: '2026-05-04T16:04+02:00',
  who: 'Runa Feldmark',
  product: { name: 'clear dope', batch: 'CD-0412' },
  cup: { kind: 'ford-4', seconds: 24, temperature_C: 20.5 },
  airStart: { temperature_C: 20.6, humidity_percent: 54 },
  combs: [{ low_um: 75, high_um: 100 }],
  faults: [],
  photos: [],
  history: [],
};

export const NOON = { at: '2026-05-04T12:00+02:00', who: 'Runa Feldmark' };
