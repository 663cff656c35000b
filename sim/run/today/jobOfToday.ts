import { CrosscoatError } from '../../base/errors.ts';
import type { Job, SchemeSpec, StepSpec } from '../../job/schema.ts';
import type { LAYERS } from '../../job/schemeSchema.ts';
import type { Finish } from '../../materials/finish.ts';
import type { TodayAnswer } from '../../scheme/today.ts';
import { speedFor } from '../planTrials.ts';
import { settleCoat } from '../settle.ts';
import { smallJob } from '../smallJob.ts';
import { todayAirSpec } from './today.ts';
import { tidy } from './todayMix.ts';

/** A panel three units wide and two high. Assumed: the shape of a tail surface. */
const WIDTH_OVER_HEIGHT = 1.5;
/** Largest panel that is drawn: more is planned as so many sides of it. */
const LARGEST_M2 = 6;
/** Cells of the grid, mm: fine on a small panel, coarse enough on a large one. */
const FINE_MM = 4;
const COARSE_MM = 8;
const COARSE_FROM_M2 = 2;

type Layer = (typeof LAYERS)[number];

const LAYER_OF: Readonly<Record<string, Layer>> = {
  'clear-dope': 'clear', 'aluminium-dope': 'aluminium', 'colour-dope': 'colour', 'lacquer': 'colour', 'enamel': 'colour', 'primer': 'primer',
};

/**
 * An answer of the front sheet as a job: one panel of the stated area as it hangs, the mix, the air, the
 * usual low-pressure gun at the speed that lays the wanted film in cross coats, and a scheme of so many coats
 * with the trade's wait. A larger area than `LARGEST_M2` is shown by one panel of that size, and
 * the job says so.
 * @throws CrosscoatError `schema` for a finish of which it is not known what layer it makes.
 */
export function jobOfToday(answer: TodayAnswer): Job {
  const { question, film } = answer;
  const job = panelJob(answer);
  const setting = settleCoat(job, 'coat', { cell_mm: 10 });
  const [coat] = job.coats as [Job['coats'][number]];
  return {
    ...job,
    coats: [{ ...coat, plan: { ...coat.plan, speed_m_s: speedFor(setting, setting.plan) } }],
    schemes: [schemeOf(answer)],
    note: noteOf(question.area_m2, film.coats),
  };
}

function panelJob({ question, mix, mixSpec, film }: TodayAnswer): Job {
  const drawn_m2 = Math.min(question.area_m2, LARGEST_M2);
  const height_mm = 1000 * Math.sqrt(drawn_m2 / WIDTH_OVER_HEIGHT);
  const job = smallJob({
    name: `From Today: ${mix.name}`.slice(0, 200),
    note: '',
    part: 'Part from Today',
    panel_mm: [tidy(height_mm * WIDTH_OVER_HEIGHT), tidy(height_mm)],
    tilt_deg: tidy((question.tilt_rad * 180) / Math.PI),
    air: todayAirSpec(question),
    mix: { ...mixSpec, id: 'mix' },
    coat: {
      id: 'coat',
      name: `Cross coat, ${mix.finish.name}`,
      plan: { cross: true },
      // The least that a job may ask for.
      target: { film: 'dry', thickness_um: Math.max(0.1, tidy(film.coatDry_m / 1e-6)) },
    },
  });
  const panels = job.part.panels.map((panel) => ({ ...panel, backing: question.backing }));
  return { ...job, cell_mm: drawn_m2 > COARSE_FROM_M2 ? COARSE_MM : FINE_MM, part: { ...job.part, panels } };
}

function schemeOf({ mix, film, next }: TodayAnswer): SchemeSpec {
  const layer = layerOf(mix.finish);
  const wait_h = tidy((next.coat?.stated_s ?? 0) / 3600);
  const steps = Array.from({ length: film.coats }, (_, i): StepSpec => ({
    kind: 'spray',
    id: `coat-${i + 1}`,
    name: `Coat ${i + 1} of ${film.coats}, ${mix.finish.name}`,
    layer,
    coat: 'coat',
    share_percent: 100,
    wait_h,
    source: next.coat === null ? 'no wait is published for this finish: state the product sheet’s' : next.coat.source,
  }));
  return { id: 'today', name: 'From Today', source: 'the front sheet’s estimate; change it to the process you follow', panels: ['panel'], sides: 1, clearCoats: 0, steps };
}

function layerOf({ id, name }: Finish): Layer {
  const layer = LAYER_OF[id];
  if (layer === undefined) throw new CrosscoatError('schema', `today: what layer ${name} (${id}) makes is not known, so no scheme is made of it; take one of ${Object.keys(LAYER_OF).join(', ')}`);
  return layer;
}

function noteOf(area_m2: number, coats: number): string {
  const head = `Made from the front sheet: ${coats} ${coats === 1 ? 'coat' : 'coats'} on ${tidy(area_m2)} m². Gun, strokes and panel shape are usual values.`;
  return area_m2 <= LARGEST_M2 ? head : `${head} The panel drawn is ${LARGEST_M2} m² of it.`;
}
