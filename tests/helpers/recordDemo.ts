import { DEMO_HAND_COAT, DEMO_RECORDING, DEMO_RECORD_FILE, demoJobWithSession } from '../../sim/job/demo.ts';
import { parseJob } from '../../sim/job/parse.ts';
import type { Job, LogEntrySpec, SurveySpec } from '../../sim/job/schema.ts';
import { sha256Of } from '../../sim/log/digest.ts';
import { signed } from '../../sim/log/signing.ts';
import { filmsAtPlaces } from '../../sim/run/placeFilms.ts';
import { recordingOf } from '../../sim/run/recordingOf.ts';
import { settleCoat } from '../../sim/run/settle.ts';
import { strokesOf } from '../../sim/run/strokes.ts';
import { demoSessionText } from './sessionDemo.ts';

/** Where the record lies, from the top of the checkout. */
export const DEMO_RECORD_PATH = `sim/job/${DEMO_RECORD_FILE}`;

/** Invented: the coat came out with less film than the model says, as a gun whose transfer nobody has measured may. */
export const DEMO_BIAS = 0.88;
/** Invented, %: what gauge and place add to each reading. */
const ERRORS = [1.5, -2.5, 3, -1, 2, -3, 0.5, -0.5, 2.5, -2, 1, -1.5, 3.5, -3.5, 0, 1.2, -2.2, 2.8, -0.8, 0.4];
/** Readings of the gauge and of the balance come in such steps. */
const GAUGE_UM = 0.1;
const BALANCE_G = 0.01;

/** Feet of the aluminium tabs, mm: five rows of four, clear of the inspection ring and of the outline's rim. */
const TABS: readonly (readonly [x: number, y: number])[] = [280, 480, 680, 880, 1080].flatMap((y) => [60, 200, 340, 460].map((x) => [x, y] as const));

/** Places all over the panel, for its mean. */
const EVEN_PLACES = Array.from({ length: 21 }, (_, row) => 230 + 45 * row).flatMap((y) => Array.from({ length: 10 }, (_, column) => [50 + 45 * column, y] as const));

/** Where the wet film was combed, mm. */
const COMBED: readonly (readonly [x: number, y: number])[] = [[60, 560], [460, 680], [340, 880]];
const TOOTH_UM = 25;

/** Invented people; the numbers of their certificates are as invented as they are. */
const TRAINEE = { who: 'Runa Feldmark, trainee', certificate: undefined };
const HELPER = { who: 'Tove Askelund, trainee', certificate: undefined };
const LEADER = { who: 'Oskar Brandlind, workshop leader', certificate: 'invented W-017' };

const CLEAR = { name: 'Clear dope, club stock', batch: 'CD-0412', shelfLife: '2027-03-31' };
const THINNER = { name: 'General thinner, club stock', batch: 'GT-118', shelfLife: '2027-06-30' };

/** What the demo's log says, before it is signed. */
function entries(job: Job): unknown[] {
  const wet_um = predicted_um(job, COMBED).wet;
  const panels = ['left-side'];
  return [
    {
      id: 'first-clear', kind: 'coat', name: 'First clear, brushed until the cloth is translucent', step: 'clear-1', panels,
      started: '2026-05-04T12:00+02:00', ended: '2026-05-04T12:25+02:00', ...TRAINEE, product: CLEAR, thinner: THINNER, ratio: '4:1',
      cup: { kind: 'ford-4', seconds: 24, temperature_C: 20.5 }, used_mL: 320,
      airStart: { temperature_C: 20.6, humidity_percent: 54, surface_C: 20.2 }, airEnd: { temperature_C: 20.9, humidity_percent: 53 },
    },
    {
      id: 'second-clear', kind: 'coat', name: 'Second clear, brushed across the first', step: 'clear-2', panels,
      started: '2026-05-04T15:40+02:00', ended: '2026-05-04T16:04+02:00', ...HELPER, product: CLEAR, thinner: THINNER, ratio: '4:1',
      cup: { kind: 'ford-4', seconds: 23, temperature_C: 21.5 }, used_mL: 330,
      airStart: { temperature_C: 21.9, humidity_percent: 50, surface_C: 21.6 }, airEnd: { temperature_C: 21.8, humidity_percent: 50 },
      waited_min: 195,
      history: [{ at: '2026-05-04T16:20+02:00', who: HELPER.who, what: '/cup/seconds', before: '32' }],
    },
    {
      id: 'tapes', kind: 'fix', name: 'Tapes, patches, inspection ring, drain grommets', step: 'tapes', panels,
      started: '2026-05-06T09:30+02:00', ended: '2026-05-06T10:35+02:00', ...TRAINEE, product: CLEAR,
      notes: 'Nothing on 5 May: rain, 92 % at dawn. Tapes laid in wet dope and brushed over.',
    },
    {
      id: 'third-clear', kind: 'coat', name: 'Third clear, cross coat', step: 'clear-3', coat: DEMO_HAND_COAT, panels,
      started: '2026-05-06T13:40+02:00', ended: '2026-05-06T13:52+02:00', ...TRAINEE, product: CLEAR, thinner: THINNER, ratio: '3:1',
      cup: { kind: 'zahn-2', seconds: 31, temperature_C: 22 }, used_mL: 240,
      airStart: { temperature_C: 22.5, humidity_percent: 40, surface_C: 22 }, airEnd: { temperature_C: 22.7, humidity_percent: 39 },
      setUp: 'low-pressure', gun: 'Fan 200 mm at 200 mm, fluid as for the test card', recording: DEMO_RECORDING,
      combs: COMBED.map(([x_mm, y_mm], i) => ({ ...teethAround((wet_um[i] as number) * DEMO_BIAS), x_mm, y_mm })),
      faults: [{ what: 'Run', where: 'below the inspection ring, x 300 y 480 mm', done: 'The gun stood still there for most of a second. Left to dry, then levelled wet.' }],
      waited_min: 185,
      notes: 'Combed on tabs of sheet metal, within ten seconds.',
    },
    {
      id: 'levelled-run', kind: 'rework', name: 'Run below the inspection ring levelled', panels,
      started: '2026-05-07T08:05+02:00', ended: '2026-05-07T08:20+02:00', ...TRAINEE, sanding: { grit: 400, wet: true },
      faults: [{ what: 'Run', where: 'below the inspection ring', done: 'Level again by eye and finger; no cloth laid bare.' }],
    },
  ];
}

/** Two surveys of the third clear, before they are signed: metal tabs on the panel, and coupons of cloth beside it. */
function surveys(job: Job): unknown[] {
  const films_um = predicted_um(job, TABS).dry;
  const even_um = predicted_um(job, EVEN_PLACES).dry;
  const mean_um = even_um.reduce((sum, film) => sum + film, 0) / even_um.length;
  return [
    {
      id: 'third-clear-tabs', name: 'Third clear on metal tabs', panel: 'left-side', coats: [DEMO_HAND_COAT],
      at: '2026-05-07T09:10+02:00', ...LEADER, gauge: 'Eddy-current gauge, invented; zeroed on a bare tab, checked on a 25 µm foil before and after',
      rule: { kind: 'mean-80', nominal_um: 12 },
      readings: TABS.map(([x_mm, y_mm], i) => ({ kind: 'metal', dry_um: stepped((films_um[i] as number) * DEMO_BIAS * error(i), GAUGE_UM), x_mm, y_mm, spot: `tab ${i + 1}` })),
      notes: 'Tabs of 0.5 mm aluminium stuck to the cloth before the coat and pulled off after it. ISO 19840 leaves out nominal films below 40 µm: its rule is only borrowed here.',
    },
    {
      id: 'third-clear-coupons', name: 'Third clear by coupons', panel: 'left-side', coats: [DEMO_HAND_COAT],
      at: '2026-05-07T09:40+02:00', ...HELPER, gauge: `Balance of ${BALANCE_G} g; cloth of 200 mm by 200 mm, one face coated, weighed the day before and a night after`,
      rule: { kind: 'shop', name: 'Club sheet of the third clear (invented)', meanMin_um: 15, eachMin_um: 12 },
      readings: [1, -2, 2, -1, 0].map((percent, i) => {
        const before_g = 4.4 + 0.03 * i;
        const gain_g = mean_um * 1e-6 * DEMO_BIAS * (1 + percent / 100) * DRY_KG_M3 * COUPON_CM2 * 1e-4 * 1000;
        return { kind: 'coupon', before_g: stepped(before_g, BALANCE_G), after_g: stepped(before_g + gain_g, BALANCE_G), area_cm2: COUPON_CM2, spot: `coupon ${i + 1}` };
      }),
    },
  ];
}

const COUPON_CM2 = 400;
/** Density of the dry film of the demo's mix, as the materials have it for clear dope. */
const DRY_KG_M3 = 1250;

/** Film at some places by the model, as the hand laid it. */
function predicted_um(job: Job, places: readonly (readonly [x: number, y: number])[]): { readonly wet: number[]; readonly dry: number[] } {
  const setting = settleCoat(job, DEMO_HAND_COAT);
  const strokes = strokesOf(setting, recordingOf(job, setting.coat));
  const { wet_m, solids_m } = filmsAtPlaces(setting, strokes, Float64Array.from(places.flatMap(([x, y]) => [x / 1000, y / 1000])));
  return { wet: [...wet_m].map((film) => film * 1e6), dry: [...solids_m].map((film) => film * 1e6) };
}

/** The teeth of a comb of 25 µm steps between which a film lies. */
function teethAround(film_um: number): { readonly low_um: number; readonly high_um: number } {
  const low_um = TOOTH_UM * Math.floor(film_um / TOOTH_UM);
  return { low_um, high_um: low_um + TOOTH_UM };
}

function error(i: number): number {
  return 1 + (ERRORS[i] as number) / 100;
}

function stepped(value: number, step: number): number {
  return Number((Math.round(value / step) * step).toFixed(2));
}

/** The demo's log and surveys: invented people, a film that is short of the model's by a known share. Two coats and one survey are signed. */
export function demoRecord(): { log: LogEntrySpec[]; surveys: SurveySpec[] } {
  const plain = demoJobWithSession(demoSessionText());
  const { job } = parseJob({ ...plain, log: entries(plain), surveys: surveys(plain) });
  const recordingSha256 = sha256Of(demoSessionText());
  const by = { who: LEADER.who, certificate: LEADER.certificate };
  const seen = (at: string) => ({ at, ...by, words: 'Seen and found as written.' });
  return {
    log: job.log!.map((entry) => (entry.step === 'clear-1' || entry.step === 'clear-2' ? signed(entry, seen('2026-05-04T16:30+02:00')) : entry.step === 'clear-3' ? signed(entry, { ...seen('2026-05-07T09:15+02:00'), recordingSha256 }) : entry)),
    surveys: job.surveys!.map((survey) => (survey.id === 'third-clear-tabs' ? signed(survey, seen('2026-05-07T09:20+02:00')) : survey)),
  };
}

/** As the file has it. */
export function demoRecordText(): string {
  return `${JSON.stringify(demoRecord(), null, 1)}\n`;
}
